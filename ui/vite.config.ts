import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';
import { languages } from './build/languages.ts';
import { tooOld } from './build/too-old.ts';

const catalogue = fileURLToPath(new URL('../shared/catalogue/', import.meta.url));

/** How many concepts the built-in catalogue has for each grade. */
function conceptsByGrade(): Record<number, number> {
  const counts: Record<number, number> = {};
  for (const name of readdirSync(catalogue)) {
    const grade = /^grade-(\d)\.toml$/.exec(name)?.[1];
    if (grade === undefined) continue;
    const text = readFileSync(catalogue + name, 'utf8');
    counts[Number(grade)] = text.match(/^\[\[concept\]\]/gm)?.length ?? 0;
  }
  return counts;
}

export default defineConfig({
  // A school puts the pages into any folder.
  ...(process.env.WEB === '1' ? { base: './' } : {}),
  plugins: [svelte(), languages(), tooOld()],
  // The door for tests in a browser; left out of what is shipped.
  define: {
    __TEST_BRIDGE__: JSON.stringify(process.env.TEST_BRIDGE === '1'),
    // The way in for a browser, where a worker holds the program.
    __WEB__: JSON.stringify(process.env.WEB === '1'),
    // For the live totals while a class is set up, without the catalogue itself.
    __CONCEPTS_BY_GRADE__: JSON.stringify(conceptsByGrade()),
  },
  // The oldest engines we run in: WebKitGTK of Debian 12 and Android's WebView 111.
  build: {
    target: ['safari16.4', 'chrome111'],
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // What starts and what students need is one file, the desk another, the tools a third:
    // larger files pack better, and else they would fall apart into dozens.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            {
              name: 'page',
              test: /node_modules|src\/(lib|start|safe|main|App|student)(?!\/tools)|student\/tools\/.*css$/,
            },
          ],
        },
      },
    },
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
