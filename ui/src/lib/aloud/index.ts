export { blockWords, entryWords } from './blocks';
export { default as ReadAloud } from './ReadAloud.svelte';
export { inTurn } from './speakable';
