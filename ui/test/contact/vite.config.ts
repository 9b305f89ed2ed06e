import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';
import { languages } from '../../build/languages.ts';

/** For tests: the page that shows exercises side by side and times them. */
export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [svelte({ configFile: '../../svelte.config.js' }), languages()],
  define: { __TEST_BRIDGE__: 'false' },
  build: { outDir: '../../dist-contact', emptyOutDir: true, assetsInlineLimit: 0 },
});
