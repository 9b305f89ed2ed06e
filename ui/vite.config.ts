import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [svelte()],
  // The door for tests in a browser; left out of what is shipped.
  define: { __TEST_BRIDGE__: JSON.stringify(process.env.TEST_BRIDGE === '1') },
  // The oldest engines we run in: WebKitGTK of Debian 12 and Android's WebView 111.
  build: {
    target: ['safari16.4', 'chrome111'],
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  // The message files live outside this folder; development only.
  server: { fs: { allow: ['..'] } },
  ...(process.env.VITEST ? { resolve: { conditions: ['browser'] } } : {}),
  test: {
    environment: 'happy-dom',
    include: ['src/**/*.test.ts', 'test/**/*.test.ts'],
    setupFiles: ['test/setup.ts'],
  },
});
