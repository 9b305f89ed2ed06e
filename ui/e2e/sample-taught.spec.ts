// What was taught again and what came of it, and groups that last, with the sample class.
import type { Page } from '@playwright/test';
import type { Bridge } from './bridge';
import { said, scan, undo } from './desk';
import { leaveDialog } from './finders';
import { expect, test } from './fixtures';
import { LANGUAGES, messageIn } from './languages';
import { DESK } from './sizes';

test.use(DESK);

async function openSample(page: Page, bridge: Bridge, ...ids: string[]): Promise<string> {
  await page.goto('/');
  for (const id of ['bar-teacher', ...ids]) await page.getByTestId(id).click();
  return (await bridge.call('start', {})).classes[0]?.id ?? '';
}

test('the sample class has a verdict, and what is noted can be undone and printed', async ({
  page,
  bridge,
  hook,
  hooks,
}) => {
  const id = await openSample(page, bridge, 'tab-groups', 'taught-open');
  const log = await bridge.call('taught_again', { class: id });
  const judged = log.entries.find(({ came_from }) => came_from === 'talk');
  expect(judged?.help.passes, 'two passes are over').toBe(2);
  expect(judged?.help.numbers).not.toBeNull();
  await expect(hooks('taught-entry-')).toHaveCount(log.entries.length);
  const entry = hook(`taught-entry-${judged?.id}`);
  await expect(entry).toContainText(/rose more|likely rose more/);
  await entry.locator('summary').click();
  await expect(entry).toContainText(
    `${judged?.help.numbers?.right} of ${judged?.help.numbers?.answers} results`,
  );
  await scan(page, 'the numbers behind a verdict');

  await test.step('an entry by hand', async () => {
    await hook('taught-add').click();
    await scan(page, 'the form of what was taught again');
    await hook('taught-some').check();
    await hook('taught-save').click();
    await expect(page.getByRole('alert')).toHaveText('Choose at least one student.');
    await hook('taught-seat-3').check();
    await hook('taught-note').fill('With fraction strips');
    await hook('taught-save').click();
    await said(page, 'was taught again');
    await expect(hooks('taught-entry-')).toHaveCount(log.entries.length + 1);
    await said(page, 'With fraction strips');
    await said(page, /too soon to tell.*Look again on/);
    await undo(page);
    await expect(hooks('taught-entry-')).toHaveCount(log.entries.length);
  });

  await test.step('an entry is removed and restored', async () => {
    await hook(`taught-drop-${judged?.id}`).click();
    await said(page, 'The entry was removed');
    await expect(hooks('taught-entry-')).toHaveCount(log.entries.length - 1);
    await undo(page);
    await expect(hooks('taught-entry-')).toHaveCount(log.entries.length);
  });

  await test.step('the list of one student', async () => {
    const one = log.entries.find(({ whole_class }) => !whole_class)?.members[0];
    await hook('taught-choice').selectOption(`seat:${one?.seat}`);
    const own = log.entries.filter(({ members }) => members.some((m) => m.seat === one?.seat));
    await expect(hooks('taught-entry-')).toHaveCount(own.length);
    await hook('taught-print').click();
    await said(page, `taught-again-seat-${one?.seat}-`);
  });

  await test.step('from the talk', async () => {
    await hook('tab-talk').click();
    await page
      .getByRole('button', { name: /^Taught again: / })
      .first()
      .click();
    await hook('taught-save').click();
    await said(page, 'was taught again');
    const after = await bridge.call('taught_again', { class: id });
    expect(after.entries).toHaveLength(log.entries.length + 1);
    expect(after.entries[0]?.whole_class).toBe(true);
    await undo(page);
    const back = await bridge.call('taught_again', { class: id });
    expect(back.entries).toHaveLength(log.entries.length);
  });
});

test('a suggestion stays, and kept groups go on and are used again', async ({
  page,
  bridge,
  hook,
  hooks,
}) => {
  const id = await openSample(page, bridge, 'tab-groups');
  const { kept, next_day, today } = await bridge.call('groups_desk', { class: id });
  expect(kept.length, 'earlier days have groups').toBe(2);
  expect(kept.every(({ records }) => records.length > 0)).toBe(true);
  await hook('groups-suggest').click();
  const sum = hook('groups-sum');
  await expect(sum).toContainText('best possible plan');
  await expect(sum).not.toContainText('Checking how good', { timeout: 60_000 });
  const before = await sum.innerText();
  for (const tab of ['board', 'talk', 'groups']) await hook(`tab-${tab}`).click();
  await expect(sum, 'the suggestion is still there').toHaveText(before);

  await test.step('a partner in each group, and pairs', async () => {
    await page.locator('main details:not([data-testid="days-ahead"]) summary').first().click();
    // With larger groups, every student who could explain may sit in a group already.
    await hook('groups-partner').check();
    await expect(hook('groups-partner')).toBeChecked();
    await hook('groups-pairs').click();
    await expect(hook('groups-pairs')).toHaveAttribute('aria-pressed', 'true');
    const explains = page.getByText(/^Explains it: /).filter({ visible: true });
    await expect(explains.first()).toBeVisible();
    await expect(hook('group-0').locator('.name')).toHaveCount(1);
  });

  await test.step('an earlier group goes on tomorrow', async () => {
    await page.getByRole('button', { name: 'Discard the suggestion' }).click();
    const day = hook(`groups-day-${kept[0]?.date}`);
    await day.locator('summary').first().click();
    await expect(day.locator('.came').first()).toBeVisible();
    await day.locator('[data-testid^="continue-"]').first().click();
    await said(page, 'those who need more');
    const after = await bridge.call('groups_desk', { class: id });
    const coming = after.kept.find(({ date }) => date === next_day);
    const has = new Set(
      kept[0]?.records.filter((one) => one.has_it).map(({ seat, concept }) => `${seat}${concept}`),
    );
    expect(coming?.groups).toHaveLength(1);
    expect(
      coming?.groups[0]?.members.some(({ seat }) =>
        has.has(`${seat}${coming.groups[0]?.concept.id}`),
      ),
    ).toBe(false);
    await expect(hook(`groups-day-${next_day}`)).toBeVisible();
    await undo(page);
    await expect(hook(`groups-day-${next_day}`)).toHaveCount(0);
  });

  await test.step('groups of an earlier day are used again', async () => {
    await hook(`groups-repeat-${kept[1]?.date}`).evaluate((one) =>
      one.closest('details')?.setAttribute('open', ''),
    );
    await hook(`groups-repeat-${kept[1]?.date}`).click();
    await said(page, 'Nothing is kept until you keep them');
    await expect(hooks('group-page-')).toHaveCount(kept[1]?.groups.length ?? 0);
    await hook('groups-keep').click();
    await said(page, 'The groups are kept for today');
    const after = await bridge.call('groups_desk', { class: id });
    expect(after.kept.find(({ date }) => date === today)?.groups).toHaveLength(
      kept[1]?.groups.length ?? 0,
    );
  });
});

for (const language of LANGUAGES) {
  test(`what the class sees of its groups, ${language}`, async ({ page, bridge, hook }) => {
    const id = (await bridge.call('start', {})).classes[0]?.id ?? '';
    const { seats } = await bridge.call('class_setup', { class: id });
    for (const { number, name } of seats)
      await bridge.call('name_seat', { class: id, seat: number, name: `${name} Familia${number}` });
    const settings = (await bridge.call('start', {})).settings;
    await bridge.call('save_device_settings', { ...settings, language });
    await openSample(page, bridge, 'tab-groups');
    const { kept } = await bridge.call('groups_desk', { class: id });
    const show = hook(`groups-show-${kept[0]?.date}`);
    await show.evaluate((one) => one.closest('details')?.setAttribute('open', ''));
    await show.click();
    const wall = hook('groups-shown');
    await expect(wall).toBeVisible();
    /** Every text of the dialog, also what is said to screen readers. */
    const texts = () =>
      wall.evaluate((top) => {
        const walker = document.createTreeWalker(top, NodeFilter.SHOW_ALL);
        const found: string[] = [];
        for (let at: Node | null = walker.currentNode; at; at = walker.nextNode()) {
          if (at instanceof Element) {
            for (const { name, value } of at.attributes) {
              if (['title', 'alt'].includes(name) || name.startsWith('aria-')) found.push(value);
            }
          } else if (at.textContent?.trim()) found.push(at.textContent.trim());
        }
        return found;
      });
    const first = new Set(seats.map(({ name }) => name ?? ''));
    const plain = await texts();
    expect(plain.filter((text) => first.has(text)).length, 'first names').toBeGreaterThan(2);
    expect(plain.filter((text) => /Familia\d|[%٪]|\d\s*\/\s*\d/.test(text))).toEqual([]);
    await scan(page, `groups shown with first names, ${language}`);

    await page.keyboard.press('n');
    const seat = messageIn(language, 'desk-seat', {
      seat: kept[0]?.groups[0]?.members[0]?.seat ?? 0,
    });
    await expect(wall.getByText(seat, { exact: true }).first()).toBeVisible();
    const covered = await texts();
    const anyName = new RegExp(`(^|[^\\p{L}])(${[...first].join('|')})([^\\p{L}]|$)`, 'u');
    expect(covered.filter((text) => anyName.test(text) || /Familia\d|%/.test(text))).toEqual([]);
    await scan(page, `groups shown with names covered, ${language}`);
    await leaveDialog(page);
  });
}
