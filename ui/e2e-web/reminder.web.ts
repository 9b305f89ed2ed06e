// A browser may clear what it keeps, so the student is asked to hand in, more firmly with time.
import type { Page } from '@playwright/test';
import { choose } from '../e2e/finders';
import { look, STUDENT } from '../e2e/measure/look';
import { SHOTS } from '../e2e/places';
import { expect, test } from './fixtures';
import { joinBy } from './screens';

// The date changes with the worker, which a service worker would keep.
test.beforeEach(({ page }) =>
  page.addInitScript(() =>
    Object.defineProperty(Navigator.prototype, 'serviceWorker', { get: () => undefined }),
  ),
);

/** A picture for people: PICTURES=1. */
async function picture(page: Page, name: string): Promise<void> {
  if (process.env.PICTURES) await page.screenshot({ path: `${SHOTS}web/${name}.png` });
}

test('the reminder: none on the first day, soon, then firm, none after a hand-in', async ({
  page,
  site,
  room,
  hook,
  hooks,
}) => {
  const reminder = hook('keep-reminder');
  /** Opens Today on a date and rates one concept. */
  const rateOn = async (date: string) => {
    site.setToday(date);
    await page.goto(site.url);
    await hooks('student-').first().tap();
    await hooks('rate-', '-1').first().tap();
    await expect(hooks('rate-', '-1').first()).toHaveAttribute('aria-checked', 'true');
    await page.goto(site.url);
    await hooks('student-').first().tap();
    await expect(hooks('rate-').first()).toBeVisible();
  };
  await page.goto(site.url);
  await joinBy(page, room.pack, room.codes[0] ?? '');
  await hooks('rate-', '-1').first().tap();
  await rateOn('2026-09-16');
  await expect(reminder).toHaveCount(0);
  await rateOn('2026-09-17');
  await expect(reminder).toContainText('Your work is only in this browser.');
  await look(page, 'reminder', STUDENT, { sizes: true });
  await picture(page, 'reminder-soon-en');

  const download = page.waitForEvent('download');
  await hook('keep-hand-in').tap();
  await hook('hand-in-make').tap();
  await download;
  await expect(page.getByText('Your file is made')).toBeVisible();
  await picture(page, 'hand-in-en');
  await hook('tab-today').tap();
  await expect(hooks('rate-').first()).toBeVisible();
  await expect(reminder).toHaveCount(0);

  await rateOn('2026-10-05');
  await expect(reminder).toContainText('For 18 days');
  await picture(page, 'reminder-firm-en');
  await hook('student-settings').tap();
  await choose(page, 'language-es');
  await choose(page, 'theme-dark');
  await hook('tab-today').tap();
  await expect(reminder).toContainText('Desde hace 18 días');
  await look(page, 'firm reminder, es', STUDENT, { sizes: true });
  await picture(page, 'reminder-firm-es-dark');
});

test('what a second tab and a browser without storage show', async ({ page, site, hook }) => {
  await page.goto(site.url);
  await expect(hook('start-student')).toBeVisible();
  await picture(page, 'start-en');
  const second = await page.context().newPage();
  await second.goto(site.url);
  await expect(second.getByRole('alert')).toBeVisible();
  await look(second, 'second tab', STUDENT, { sizes: true });
  await picture(second, 'second-tab-en');
});
