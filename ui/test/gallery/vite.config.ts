import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';

/** Test only: the page of every picture and every way to answer. */
export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [svelte({ configFile: '../../svelte.config.js' })],
  define: { __TEST_BRIDGE__: 'false' },
  build: { assetsInlineLimit: 0 },
});
