// The teacher's screens with a full class: the board, assignments, files, and the class.
import type { Page } from '@playwright/test';
import { said, scan, undo } from './desk';
import { finders } from './finders';
import { expect, test } from './fixtures';
import { DESK } from './sizes';

test.use(DESK);

/** Goes from the first screen to a part of the sample class's desk. */
async function openSample(page: Page, ...ids: string[]): Promise<void> {
  await page.goto('/');
  for (const id of ['bar-teacher', ...ids]) await page.getByTestId(id).click();
}

const rowsOf = (page: Page) => finders(page).hooks('board-row-');

/** The number of pages and the paper of a print of the screen. */
async function printed(page: Page): Promise<{ pages: number; text: string }> {
  const text = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  return { pages: text.match(/\/Type\s*\/Page\b/g)?.length ?? 0, text };
}

test('the board ranks every concept, filters and orders', async ({ page }) => {
  await openSample(page, 'tab-board');
  const rows = rowsOf(page);
  await expect(rows.first()).toBeVisible();
  const all = await rows.count();
  expect(all).toBeGreaterThan(30);
  const ranks = await page
    .locator('tbody tr')
    .evaluateAll((lines) =>
      (lines as HTMLTableRowElement[]).map((line) =>
        line.dataset.testid ? line.cells[0]?.innerText : 'heading',
      ),
    );
  const heading = ranks.indexOf('heading');
  expect(ranks.slice(0, heading).filter((rank) => !(Number(rank) > 0))).toEqual([]);
  expect(ranks.slice(heading + 1).filter((rank) => rank !== '–')).toEqual([]);

  await page.getByRole('button', { name: /^Only day/ }).click();
  await expect.poll(() => rows.count()).toBeLessThan(all);
  await expect(rows.first()).toBeVisible();
  await page.getByRole('button', { name: 'Show all', exact: true }).click();
  await page.getByLabel('Strand').selectOption({ index: 1 });
  await expect.poll(() => rows.count()).toBeLessThan(all);
  await page.getByRole('button', { name: 'Show all', exact: true }).click();
  await page.getByRole('button', { name: 'Concept', exact: true }).click();
  const titles = await page.locator('button[data-line]').allInnerTexts();
  expect(titles).toEqual(titles.toSorted((a, b) => a.localeCompare(b)));

  await test.step('everything fits side by side, also on a tablet', async () => {
    const table = page.locator('table').first();
    for (const width of [1280, 800]) {
      await page.setViewportSize({ width, height: 1280 });
      const over = () =>
        table.evaluate(({ parentElement: around }) =>
          around ? around.scrollWidth - around.clientWidth : 1,
        );
      await expect.poll(over, `${width} px`).toBeLessThanOrEqual(0);
    }
  });
});

test('keys lead from line to line, in, and back; N covers names', async ({ page }) => {
  await openSample(page, 'tab-board');
  const lines = page.locator('button[data-line]');
  await lines.first().press('ArrowDown');
  const second = await lines.nth(1).innerText();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: second, exact: true })).toBeVisible();
  const names = page.locator('tbody th');
  await expect(names.first()).toBeVisible();
  const before = await names.allInnerTexts();
  await page.keyboard.press('n');
  await expect(page.getByRole('button', { name: /Show names/ })).toBeVisible();
  const covered = await names.allInnerTexts();
  expect(covered.filter((name) => !/^Seat \d+$/.test(name))).toEqual([]);
  const text = await page.locator('body').innerText();
  expect(before.filter((name) => new RegExp(`\\b${name}\\b`).test(text))).toEqual([]);
  await page.keyboard.press('n');
  await expect(names).toHaveText(before);
  await page.keyboard.press('Escape');
  await expect(rowsOf(page).first()).toBeVisible();
});

test('practice is assigned, withdrawn and restored', async ({ page, bridge, hook }) => {
  const id = (await bridge.call('start', {})).classes[0]?.id ?? '';
  const { rows } = await bridge.call('board', { class: id });
  const weakest = rows.find(({ concept }) => concept.has_exercises)?.concept.id ?? '';
  await openSample(page, 'tab-board', `board-row-${weakest}`, 'assign-chosen', 'assign-give');
  await said(page, 'The assignment is made');
  await said(page, 'Something changed since class pack');
  const assigned = page.locator('article');
  const before = await assigned.count();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(assigned).toHaveCount(before - 1);
  // The withdrawn assignment can be restored later, from another screen.
  await hook('tab-board').click();
  await hook('tab-assign').click();
  await hook('assign-withdrawn').locator('summary').click();
  await scan(page, 'assignments withdrawn');
  await page.getByRole('button', { name: 'Restore it' }).first().click();
  await expect(assigned).toHaveCount(before);
});

test('a folder is imported with a report on every file, and the import undone', async ({
  page,
  bridge,
  hook,
}) => {
  await openSample(page, 'tab-files', 'import-start');
  await expect(hook('import-report')).toBeVisible({ timeout: 120_000 });
  expect(await hook('import-report').locator('tbody tr').count()).toBeGreaterThan(20);
  await bridge.pick(import.meta.filename);
  await page.getByRole('button', { name: 'Choose single files' }).click();
  await said(page, 'This is not a Surefoot file.');
  await scan(page, 'a file refused');
  const undoImport = { name: 'Undo the last import' };
  await page.getByRole('button', undoImport).click();
  await expect(page.getByRole('dialog')).toBeVisible();
  await scan(page, 'the question before an import is undone');
  await page.getByRole('dialog').getByRole('button', undoImport).click();
  await said(page, 'The import was undone');
});

test('a seat, a day, a concept and a first lesson are changed', async ({ page, hook }) => {
  await openSample(page, 'tab-class', 'class-seats');
  const first = page.getByLabel('Name of seat 1', { exact: true });
  const name = await first.inputValue();
  await first.fill('Zora');
  await first.press('Enter');
  await said(page, 'The name of seat 1 was changed');
  await undo(page);
  await expect(first).toHaveValue(name);

  await test.step('a day without school moves the calendar, and undo moves it back', async () => {
    await hook('class-calendar').click();
    // Not the words of the guide.
    const lead = page.locator('main p:not([data-testid="guide"] p)').first();
    const before = await lead.innerText();
    await page.getByRole('button', { name: /No school on .*December 14/ }).click();
    await said(page, 'The calendar was changed');
    await expect(lead).not.toHaveText(before);
    await page.getByRole('button', { name: 'Undo', exact: true }).last().click();
    await expect(lead).toHaveText(before);
  });

  await test.step('a concept moves to the next day by a key, and back', async () => {
    await hook('class-rotation').click();
    const id = await page.locator('button.concept').first().getAttribute('id');
    const concept = page.locator(`[id="${id}"]`);
    const day = (number: number) =>
      page.locator(`section[aria-label^="Day ${number}"]`).first().locator(concept);
    await concept.press('Alt+ArrowRight');
    await said(page, 'is on day 2 now');
    await expect(concept).toBeFocused();
    await expect(day(2)).toBeVisible();
    await page.getByRole('button', { name: 'Undo', exact: true }).last().click();
    await expect(day(1)).toBeVisible();
  });

  await test.step('a first lesson is moved', async () => {
    await hook('first-lessons').click();
    const date = page.locator('input[type=date]').first();
    await date.fill('2026-11-23');
    await date.blur();
    await said(page, /The first lesson of .* was changed/);
  });
});

test('the join slips print black on white, one for each seat', async ({ page, hook }) => {
  await openSample(page, 'tab-class', 'class-pack', 'pack-save');
  await said(page, /was saved\./);
  await hook('slips-open').click();
  await expect(hook('slips').locator('li')).toHaveCount(24);
  await hook('slips-save').click();
  await said(page, 'join-slips.pdf was saved');
  await page.emulateMedia({ media: 'print' });
  await expect(hook('tab-board'), 'nothing but slips on paper').toBeHidden();
  const letter = await printed(page);
  expect([2, 3]).toContain(letter.pages);
  expect(letter.text).toMatch(/\/MediaBox\s*\[0 0 612 792\]/);
  await page.emulateMedia({ media: null });
  await page.getByLabel('Paper').selectOption('a4');
  expect((await printed(page)).text).toMatch(/\/MediaBox\s*\[0 0 59[45][\d.]* 84[12][\d.]*\]/);
});
