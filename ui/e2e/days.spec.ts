// The right day: "no school today" at the desk, "we are on day 3" on a tablet with an older
// class pack, and the list of who has not.
import type { Page } from '@playwright/test';
import type { Language } from '../src/lib/backend/contract';
import type { Bridge } from './bridge';
import { openDesk, said, YEAR } from './desk';
import { expect, test } from './fixtures';
import { LANGUAGES, messageIn } from './languages';
import { DESK as OF_DESK, look, STUDENT, type ShownTheme } from './measure/look';
import { createClass, join, markDay, open, packOf, type OwnClass } from './own-class';
import { TODAY } from './places';
import { DESK, SIZES } from './sizes';

const NAMES = ['Amina', 'Bao', 'Carlos'];
const THEMES: readonly ShownTheme[] = ['light', 'dark'];
const HOW = { sizes: true, themes: THEMES, axe: THEMES };
/** The Thursday after TODAY. */
const TOMORROW = '2026-09-17';

const list = (language: Language, names: string[]) =>
  new Intl.ListFormat(language, { type: 'conjunction' }).format(names);

/** Counts what a person presses from now on. */
async function counting(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    const counted = window as unknown as { presses: number };
    counted.presses = 0;
    addEventListener('click', (event) => event.isTrusted && (counted.presses += 1), true);
  });
  return () => page.evaluate(() => (window as unknown as { presses: number }).presses);
}

/** A class whose first student handed in. Returns it with the student's id. */
async function handedIn(bridge: Bridge): Promise<{ own: OwnClass; student: string }> {
  const own = await packOf(bridge, await createClass(bridge, { names: NAMES, year: YEAR }));
  const student = await join(bridge, own);
  await markDay(bridge, student);
  await handIn(bridge, student);
  return { own, student };
}

async function handIn(bridge: Bridge, student: string): Promise<void> {
  const { file_name } = await bridge.call('hand_in', { student });
  await bridge.pick(bridge.savedAt(file_name));
  const job = await bridge.call('import_hand_ins', { from: 'files' });
  await expect
    .poll(async () => (await bridge.call('job', { job: job?.job ?? 0 })).result?.kind)
    .toBe('import');
}

async function speaking(bridge: Bridge, language: Language): Promise<void> {
  await bridge.changeDevice({ language, guides_read: ['all'] });
}

test.describe('at the desk', () => {
  test.use(DESK);
  for (const language of LANGUAGES) {
    test(`no school today is one press, ${language}`, async ({ page, bridge, hook }) => {
      await handedIn(bridge);
      await speaking(bridge, language);
      const words = (id: string, values = {}) => messageIn(language, id, values);
      await openDesk(page);
      const number = hook('day-number');
      await expect(number).toHaveText(words('day-number', { day: 3 }));
      await expect(hook('day-unaware')).toHaveCount(0);
      await look(page, 'day', OF_DESK, HOW);

      const presses = await counting(page);
      await hook('day-close').click();
      await expect(number).toHaveText(words('day-none'));
      expect(await presses(), 'presses').toBe(1);
      await expect(hook('day-line')).toContainText('3');
      await expect(hook('day-unaware'), 'whose device does not know').toContainText('Amina');
      await look(page, 'day without school', OF_DESK, HOW);
      await page.setViewportSize(SIZES.phone);
      await look(page, 'day without school, on a phone', OF_DESK, HOW);
      await page.setViewportSize(SIZES.landscape);

      await page.getByRole('button', { name: words('action-undo'), exact: true }).click();
      await expect(number).toHaveText(words('day-number', { day: 3 }));
      await expect(hook('day-unaware'), 'the pack is right again').toHaveCount(0);
      expect(await presses(), 'undone by the second').toBe(2);
    });
  }

  test('another day, the pack, and what was rated', async ({ page, bridge, hook }) => {
    const { student, own } = await handedIn(bridge);
    await openDesk(page);
    const before = await bridge.call('board', { class: own.id });
    await test.step('a day ahead is closed, and no date outside the year', async () => {
      await hook('day-other').click();
      await look(page, 'another day', OF_DESK, HOW);
      await hook('day-other-date').fill(TOMORROW);
      await hook('day-other-close').click();
      await said(page, /no school\. The rotation waits/);
      expect((await bridge.call('class_setup', { class: own.id })).year.closures).toEqual([
        TOMORROW,
      ]);
      await expect(hook('day-other-close')).toHaveText('No school then');
      await hook('day-other-date').fill(TOMORROW);
      await expect(hook('day-other-close')).toHaveText('School again on this date');
      await hook('day-other-close').click();
      await said(page, /school again\./);
      await hook('day-other-date').fill(TOMORROW);
      await hook('day-other-close').click();
      await said(page, /no school\. The rotation waits/);
      await hook('day-other-date').fill('2026-09-19');
      await hook('day-other-close').click();
      await said(page, 'There is no school on this date anyway.');
      await page.getByRole('alert').getByRole('button').click();
    });
    await test.step('the closure of today leaves what was rated', async () => {
      await hook('day-close').click();
      await expect(hook('day-open')).toBeVisible();
      const after = await bridge.call('board', { class: own.id });
      expect(after.rows.map(({ latest }) => latest)).toEqual(
        before.rows.map(({ latest }) => latest),
      );
      await hook('day-open').click();
      await expect(hook('day-close')).toBeVisible();
    });
    await test.step('the pack reaches the tablet, and the line is silent', async () => {
      await hook('day-pack-save').click();
      await said(page, /was saved\./);
      await expect(hook('day-unaware'), 'a pack that was saved is not taken yet').toBeVisible();
      const [pack] = (await bridge.saved())
        .map(({ name }) => name)
        .filter((one) => /-2\.sf/.test(one));
      await bridge.pick(bridge.savedAt(pack ?? ''));
      await bridge.call('take_class_pack', { student });
      await handIn(bridge, student);
      await openDesk(page);
      await expect(hook('day-number')).toBeVisible();
      await expect(hook('day-unaware')).toHaveCount(0);
    });
    await test.step('the projector shows the day', async () => {
      await hook('tab-talk').click();
      const show = page.locator('[data-testid^=talk-show-]').first();
      await show.click();
      await expect(hook('projector-day')).toHaveText('Day 3');
      const size = await hook('projector-day').evaluate((one) => getComputedStyle(one).fontSize);
      expect(Number.parseFloat(size)).toBeGreaterThan(32);
    });
  });

  for (const language of LANGUAGES) {
    test(`who has not, ${language}`, async ({ page, bridge, hook, hooks }) => {
      const { own } = await handedIn(bridge);
      await bridge.call('close_day', { class: own.id, date: TOMORROW, closed: true });
      await packOf(bridge, own.id);
      await bridge.setToday('2026-09-28');
      await speaking(bridge, language);
      await openDesk(page, 'tab-files');
      const words = (id: string, values = {}) => messageIn(language, id, values);
      const lines = hooks('who-line');
      await expect(lines).toHaveCount(2);
      await expect(hook('who-reminder')).toContainText('Amina');
      await expect(hook('who-reminder'), 'not whoever has not joined').not.toContainText('Bao');
      const notJoined = words('who-not-joined', {
        count: 2,
        names: list(language, ['Bao', 'Carlos']),
      });
      await expect(hook('who-not-joined')).toContainText(notJoined);
      await look(page, 'who has not', OF_DESK, HOW);
      await page.setViewportSize(SIZES.phone);
      await look(page, 'who has not, on a phone', OF_DESK, HOW);
      await page.setViewportSize(SIZES.landscape);

      await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
      await hook('who-copy').click();
      await said(page, words('who-copied'));
      const copied = await page.evaluate(() => navigator.clipboard.readText());
      expect(copied.split('\n')).toHaveLength(4);
      await hook('who-slips').click();
      await said(page, /join-slips\.pdf/);
      await hook('who-days').selectOption('10');
      await expect(lines, 'ten school days are not over').toHaveCount(1);
      await expect(hook('who-not-joined')).toHaveCount(0);
    });
  }
});

for (const language of LANGUAGES) {
  test(`we are on day 3, in two taps, ${language}`, async ({ page, bridge, hook, hooks }) => {
    const own = await packOf(bridge, await createClass(bridge, { names: NAMES, year: YEAR }));
    const student = await join(bridge, own, { language });
    await bridge.call('close_day', { class: own.id, date: TODAY, closed: true });
    await bridge.setToday(TOMORROW);
    await speaking(bridge, language);
    await open(page, student);
    const head = page.locator('header').first();
    const words = (id: string, values = {}) => messageIn(language, id, values);
    await expect(head).toContainText(words('today-day', { day: 4, days: 10 }));
    // A rating before the day is said.
    const early = hooks('rate-', '-2').first();
    const concept = (await early.getAttribute('data-testid')) ?? '';
    await early.tap();

    const taps = await counting(page);
    await hook('say-day').tap();
    await hook('say-day-3').tap();
    await expect(head).toContainText(words('today-day-said', { day: 3, days: 10 }));
    expect(await taps(), 'taps').toBe(2);
    const { concepts } = await bridge.call('today', { student, date: null });
    const review = (await bridge.call('class_setup', { class: own.id })).rotation[2] ?? [];
    const shown = concepts.filter((one) => one.in_review).map((one) => one.concept.id);
    expect(shown).toEqual(review.map((one) => one.concept.id));
    await expect(page.getByText(words('today-others'))).toBeVisible();
    await expect(hook(concept), 'what was rated stays').toHaveAttribute('aria-checked', 'true');
    for (const size of [SIZES.tablet, SIZES.phone, SIZES.landscape]) {
      await page.setViewportSize(size);
      await look(page, `day said, ${size.width}`, STUDENT, HOW);
    }
    await hook('say-day').tap();
    for (const size of [SIZES.landscape, SIZES.phone, SIZES.tablet]) {
      await page.setViewportSize(size);
      await look(page, `which day, ${size.width}`, STUDENT, HOW);
    }
    await hook('say-day-pack').tap();
    await expect(head).toContainText(words('today-day', { day: 4, days: 10 }));
    await expect(hook(concept)).toHaveAttribute('aria-checked', 'true');
  });
}
