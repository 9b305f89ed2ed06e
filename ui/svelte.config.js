import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';
import { classHash } from './build/class-hash.js';

export default {
  preprocess: vitePreprocess({ script: false, style: false }),
  compilerOptions: { cssHash: classHash, runes: true },
};
