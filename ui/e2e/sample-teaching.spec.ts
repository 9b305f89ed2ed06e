// Talk, groups, entering a day, and ratings beside results, with the sample class.
import type { Page } from '@playwright/test';
import type { Bridge } from './bridge';
import { KEY_SECONDS, said, scan, undo } from './desk';
import { boxOf, leaveDialog } from './finders';
import { expect, test } from './fixtures';
import { DESK } from './sizes';

test.use(DESK);

/** Goes from the first screen to a part of the desk. Returns the class's id and names. */
async function openSample(page: Page, bridge: Bridge, ...ids: string[]) {
  await page.goto('/');
  for (const id of ['bar-teacher', ...ids]) await page.getByTestId(id).click();
  const id = (await bridge.call('start', {})).classes[0]?.id ?? '';
  const { seats } = await bridge.call('class_setup', { class: id });
  const names = seats.map(({ name }) => name);
  return { id, names, anyName: new RegExp(`\\b(${names.join('|')})\\b`) };
}

test('the talk keeps to its minutes, and the projector names nobody', async ({
  page,
  bridge,
  hook,
  hooks,
}) => {
  const { id, names, anyName } = await openSample(page, bridge, 'tab-talk');
  expect(names.length).toBe(24);
  await said(page, /Today is day \d+ of the rotation/);
  const talk = await bridge.call('talk', { class: id, minutes: 4, day: 'first' });
  const chosen = talk.concepts.filter((concept) => concept.chosen).length;
  await expect(page.locator('article.chosen')).toHaveCount(chosen);
  expect(talk.minutes_used).toBeLessThanOrEqual(4);
  const longer = await bridge.call('talk', { class: id, minutes: 10, day: 'first' });
  await hook('talk-minutes').selectOption('10');
  await expect(page.locator('article.chosen')).toHaveCount(
    longer.concepts.filter((concept) => concept.chosen).length,
  );
  await expect(page.locator('main')).not.toHaveText(anyName, { useInnerText: true });

  await test.step('the projector', async () => {
    await hooks('talk-show-').first().click();
    const wall = hook('projector');
    await expect(wall).toBeVisible();
    for (let n = 0; n < 3; n += 1) await page.keyboard.press('ArrowRight');
    await expect(hook('projector-answer')).toBeVisible();
    await scan(page, 'the answer on the projector');
    await expect(wall).not.toHaveText(anyName, { useInnerText: true });
    const { left, right, top, bottom } = await boxOf(wall);
    expect(right - left).toBeGreaterThanOrEqual(1280);
    expect(bottom - top).toBeGreaterThanOrEqual(800);
    await leaveDialog(page);
  });

  await test.step('a talked-about concept is noted, and stays noted', async () => {
    const button = page.getByRole('button', { name: 'Talked about' }).first();
    const noted = page.locator('main article [aria-pressed="true"]');
    await button.click();
    await expect(noted).toHaveCount(1);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(noted).toHaveCount(0);
    await button.click();
    await expect(noted).toHaveCount(1);
    await hook('tab-board').click();
    await hook('tab-talk').click();
    await expect(noted).toHaveCount(1);
  });
});

test('groups: suggested, proved, edited, printed, and kept', async ({ page, bridge, hook }) => {
  const { id, names } = await openSample(page, bridge, 'tab-groups', 'groups-suggest');
  const sum = hook('groups-sum');
  const proved = () =>
    expect(page.getByText('Checking how good')).toHaveCount(0, { timeout: 60_000 });
  await expect(sum).toBeVisible();
  await proved();
  await expect(sum, 'it says how good it is').toHaveText(/proved|At most/);
  await expect(page.locator('.faults li'), 'no rule is broken').toHaveCount(0);
  const before = await sum.innerText();

  await test.step('an edit by hand shows its effect and is taken back', async () => {
    await hook('group-0').locator('li select').first().selectOption('out:');
    await said(page, 'was moved');
    const note = page.locator('.line p').first();
    await expect(note, 'what it costs is told').toHaveText(/helps .*(less|more|as much)/);
    await expect(sum).not.toHaveText(before);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(sum).toHaveText(before);
  });

  await test.step('a suggestion is discarded and restored', async () => {
    await page.getByRole('button', { name: 'Discard the suggestion' }).click();
    await expect(sum).toHaveCount(0);
    await page.getByRole('button', { name: 'Undo', exact: true }).last().click();
    await expect(sum).toHaveText(before);
  });

  await test.step('a pair is kept apart and somebody is absent', async () => {
    await page.locator('main details:not([data-testid="days-ahead"]) summary').first().click();
    await page.getByRole('group', { name: 'Absent today' }).getByRole('checkbox').first().check();
    const apart = page.getByRole('group', { name: 'Keep apart' });
    await apart.getByLabel('First student').selectOption({ index: 2 });
    await apart.getByLabel('Second student').selectOption({ index: 3 });
    await apart.getByRole('button', { name: 'Add' }).click();
    await expect(apart.locator('li')).toBeVisible();
    await proved();
    const { wishes } = await bridge.call('groups_desk', { class: id });
    expect(wishes.absent).toHaveLength(1);
    expect(wishes.keep_apart).toHaveLength(1);
    const members = page.locator('[data-testid^="group-"] .name');
    await expect(members.first()).toBeVisible();
    expect(await members.allInnerTexts()).not.toContain(names[0]);
  });

  await test.step('the page of a group is one page, or two with figures', async () => {
    await hook('group-page-0').click();
    await expect(hook('group-page')).toBeVisible();
    await page.emulateMedia({ media: 'print' });
    const pdf = (await page.pdf({ format: 'Letter' })).toString('latin1');
    expect([1, 2]).toContain(pdf.match(/\/Type\s*\/Page\b/g)?.length);
    await page.emulateMedia({ media: null });
    await leaveDialog(page);
  });

  await test.step('results of kept groups are recorded, and count', async () => {
    await hook('group-0').locator('li select').first().selectOption('out:');
    await said(page, 'was moved');
    await scan(page, 'groups edited');
    await hook('groups-keep').click();
    await said(page, 'The groups are kept for today');
    const testid =
      (await page
        .locator('[data-testid^="record-"][data-testid$="-has"]')
        .first()
        .getAttribute('data-testid')) ?? '';
    const [, concept = '', seat] = /^record-(.*)-(\d+)-has$/.exec(testid) ?? [];
    const report = async () => {
      const { students } = await bridge.call('concept_reports', { class: id, concept });
      return students.find((one) => one.seat === Number(seat));
    };
    await hook(testid).click();
    await expect(hook(testid)).toHaveAttribute('aria-pressed', 'true');
    await said(page, /1 of \d+ recorded/);
    const counted = await report();
    expect(counted?.seen).toMatchObject([{ has_it: true }]);
    await undo(page);
    const undone = await report();
    expect(undone?.seen).toEqual([]);
    expect(undone?.has_it).toBeLessThan(counted?.has_it ?? 0);
    await hook(testid).click();
    await said(page, /1 of \d+ recorded/);
  });

  await test.step('the board shows a kept group alone', async () => {
    await hook('tab-board').click();
    await hook('board-group').click();
    await page.locator('details .row button').first().click();
    await said(page, /^Only \d+ students/);
    await said(page, /^\d of \d seats have reported/);
    await scan(page, 'the board of a group');
    await page.getByRole('button', { name: 'Whole class' }).click();
    await said(page, 'Whole class · choose');
  });
});

test('a cell of the board opens its pass, and a student has a page', async ({
  page,
  bridge,
  hook,
  hooks,
}) => {
  await openSample(page, bridge, 'tab-board');
  await page.locator('tbody td[class*="shade-"] button').first().click();
  const pass = hook('concept-pass');
  await expect(pass).toBeVisible();
  const passes = hook('concept-passes').locator('button');
  const opened = passes.and(page.locator('[aria-pressed=true]'));
  await expect(opened).toHaveCount(1);
  await opened.click();
  await expect(pass).toHaveCount(0);
  await passes.last().click();
  await expect(pass).toBeVisible();
  await page.keyboard.press('Escape');

  await test.step('a student', async () => {
    await hook('part-compare').click();
    await hook('compare-by-student').click();
    await hooks('student-page-').first().click();
    await expect(page.locator('tbody tr').first()).toBeVisible();
    await page.keyboard.press('n');
    await expect(page.getByRole('heading', { level: 1, name: /^Seat \d+$/ })).toBeVisible();
    await page.keyboard.press('n');
    await page.keyboard.press('Escape');
    await expect(hook('compare-by-student')).toBeVisible();
  });
});

test('a day is entered by keys, a keystroke a cell', async ({ page, bridge, hook }) => {
  const { id } = await openSample(page, bridge, 'tab-enter');
  await expect(hook('enter-grid')).toBeVisible();
  const day = () => bridge.call('entry_day', { class: id, date: null });
  const { rows, concepts } = await day();
  const cells = rows.length * concepts.length;
  const cell = (row: number, column: number) => page.locator(`[data-cell="${row}-${column}"]`);
  const stored = async () => {
    await expect(page.getByText('saving')).toHaveCount(0);
    return (await day()).rows;
  };

  await test.step('in under a minute', async () => {
    await cell(0, 0).focus();
    for (let n = 0; n < cells; n += 1) await page.keyboard.press(String(n % 4));
    await said(page, `${cells} of ${cells} cells`);
    const kept = (await stored()).flatMap((row) => row.cells.map(({ rating }) => rating));
    const seconds = cells * KEY_SECONDS;
    console.log(`${cells} cells: ${cells} keystrokes, one each, ${Math.round(seconds)} s`);
    expect(seconds, 'at the pace of an average typist').toBeLessThan(60);
    expect(kept, 'every key is on disk').toEqual(kept.map((_, at) => at % 4));
  });

  await test.step('the last key is undone, and arrows and touch work too', async () => {
    await page.keyboard.press('Control+z');
    await expect.poll(async () => (await stored()).at(-1)?.cells.at(-1)?.rating).toBeNull();
    await cell(1, 1).click();
    await page.keyboard.press('ArrowDown');
    await expect(cell(2, 1)).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(cell(3, 0)).toBeFocused();
    await hook('enter-key-2').click();
    await expect(cell(3, 1)).toBeFocused();
  });

  await test.step('equal outcomes of a row take one keystroke, and one to undo', async () => {
    await hook('enter-outcome').click();
    const empty = (await day()).rows.map(
      (row) => row.cells.filter((one) => (one.outcome ?? one.device_outcome) === null).length,
    );
    const row = empty.findIndex((count) => count > 1);
    expect(row).toBeGreaterThanOrEqual(0);
    const filled = async () =>
      (await stored())[row]?.cells.filter(({ outcome }) => outcome === 'right').length;
    await cell(row, 0).focus();
    await page.keyboard.press('Shift+Digit1');
    await expect.poll(filled).toBe(empty[row]);
    await expect(cell(Math.min(row + 1, rows.length - 1), 0)).toBeFocused();
    await page.keyboard.press('Control+z');
    await expect.poll(filled).toBe(0);
    const least = empty.filter((count) => count > 0).length;
    console.log(`a day of like answers: ${least} keystrokes with Shift, one a student`);
  });

  await test.step('observations are noted beside the ratings and make a kappa', async () => {
    await hook('enter-seen').click();
    await cell(0, 0).focus();
    for (const key of '012301230120') await page.keyboard.press(key);
    await stored();
    await hook('tab-board').click();
    await hook('part-compare').click();
    await hook('compare-statistics').locator('summary').click();
    await said(page, /Weighted kappa 0\.\d+ /);
    await scan(page, 'ratings beside results, with a kappa');
    const { agreement } = await bridge.call('comparison', { class: id });
    expect(agreement.pairs).toBe(12);
  });
});
