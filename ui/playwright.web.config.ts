// The student's program in a browser: `./test web`.
import { join } from 'node:path';
import { defineConfig } from '@playwright/test';
import type { Options } from './e2e/fixtures';
import { LOGS } from './e2e/places';
import own from './playwright.config';

/** Tests of the student's screens. */
const STUDENT = ['student', 'evenings', 'tools', 'settings', 'days'];

/** Tests with a step at the desk, or with what a browser has not: paper, a save that the person
 * declines or that the program sees fail, and a voice outside the page. */
const NOT_HERE = [
  /at the desk/,
  /a student's appearance is nobody else's$/,
  /goals in own words/,
  / and on paper$/,
  /a hand-in is a file, or is shared$/,
  /reading aloud/,
];

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
      grepInvert: NOT_HERE,
      use: { inBrowser: true },
    },
  ],
});
