// Makes the sample class by the screens, and keeps it for the other tests.
import { cpSync, rmSync } from 'node:fs';
import { expect, test } from './fixtures';
import { SAMPLE } from './places';

test('the sample class is made from the first screen', async ({ page, bridge, hook }) => {
  test.setTimeout(600_000);
  await page.goto('/');
  await hook('start-sample').tap();
  await expect(hook('bar-student')).toBeVisible({ timeout: 580_000 });
  await expect(hook('bar-teacher')).toBeVisible();
  await page.close();
  await bridge.end();
  rmSync(SAMPLE, { recursive: true, force: true });
  cpSync(bridge.data, SAMPLE, { recursive: true });
});
