import { sayFromProgram } from './words.svelte';

export function strandWords(strand: string): string {
  return sayFromProgram(`strand-${strand}`);
}
