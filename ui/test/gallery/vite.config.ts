import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';
import { languages } from '../../build/languages.ts';

/** For tests: the page with every figure and entry. */
export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [svelte({ configFile: '../../svelte.config.js' }), languages()],
  define: { __TEST_BRIDGE__: 'false' },
  build: { assetsInlineLimit: 0 },
});
