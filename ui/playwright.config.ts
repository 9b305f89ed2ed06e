import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { defineConfig } from '@playwright/test';
import type { Options } from './e2e/fixtures';
import { LOGS, SAMPLE_DAY } from './e2e/places';
import { TOUCH } from './e2e/sizes';

/** The system's Chromium: CHROMIUM, else the first one on PATH. */
function chromium(): string {
  const folders = (process.env.PATH ?? '').split(delimiter);
  const onPath = ['chromium', 'chromium-browser', 'google-chrome'].flatMap((name) =>
    folders.map((folder) => join(folder, name)),
  );
  const found = process.env.CHROMIUM ?? onPath.find((path) => existsSync(path));
  if (!found) throw new Error('Chromium is not on PATH; set CHROMIUM to its path.');
  return found;
}

const onSample = { sample: true, today: SAMPLE_DAY };

export default defineConfig<Options>({
  testDir: 'e2e',
  outputDir: join(LOGS, 'browser'),
  reporter: [['list'], ['json', { outputFile: join(LOGS, 'browser.json') }]],
  fullyParallel: true,
  workers: 2,
  retries: 0,
  forbidOnly: true,
  timeout: 300_000,
  expect: { timeout: 20_000 },
  use: {
    ...TOUCH,
    actionTimeout: 20_000,
    navigationTimeout: 20_000,
    locale: 'en-US',
    contextOptions: { reducedMotion: 'reduce' },
    launchOptions: {
      executablePath: chromium(),
      args: ['--no-sandbox', '--disable-background-networking', '--disable-component-update'],
    },
    // Pictures of the page before and after each act take a third of the time: TRACE=1.
    trace: {
      mode: 'retain-on-failure',
      screenshots: false,
      sources: false,
      snapshots: process.env.TRACE === '1',
    },
    screenshot: 'only-on-failure',
  },
  projects: [
    { name: 'make sample', testMatch: 'make-sample.ts', use: { today: SAMPLE_DAY } },
    { name: 'own', testMatch: '**/*.spec.ts', testIgnore: '**/sample-*' },
    {
      name: 'sample',
      testMatch: '**/sample-*.spec.ts',
      dependencies: ['make sample'],
      use: onSample,
    },
    // Pictures for people, made on request only: PICTURES=1.
    ...(process.env.PICTURES
      ? [{ name: 'pictures', testMatch: '**/*.pictures.ts', dependencies: ['make sample'] }]
      : []),
  ],
});
