// The student's program in a browser: `./test web`.
import { join } from 'node:path';
import { defineConfig } from '@playwright/test';
import type { Options } from './e2e/fixtures';
import { LOGS } from './e2e/places';
import own from './playwright.config';

/** Tests of the student's screens. */
const STUDENT = ['student', 'evenings', 'days', 'tools', 'exercises'];

export default defineConfig<Options>({
  ...own,
  outputDir: join(LOGS, 'web'),
  reporter: [['list'], ['json', { outputFile: join(LOGS, 'web.json') }]],
  workers: 1,
  projects: [
    { name: 'web', testDir: 'e2e-web', testMatch: '*.web.ts' },
    {
      name: 'student',
      testDir: 'e2e',
      testMatch: STUDENT.map((name) => `${name}.spec.ts`),
      use: { inBrowser: true },
    },
  ],
});
