// Printing from the desk: sheets, charts, reports and tables saved as files, and faults and
// refusals in words.
import type { Page } from '@playwright/test';
import type { Bridge } from './bridge';
import { openDesk, said, scan, YEAR } from './desk';
import { expect, test } from './fixtures';
import { createClass } from './own-class';
import { SAMPLE_DAY } from './places';
import { DESK } from './sizes';

test.use({ ...DESK, today: SAMPLE_DAY });

const NAMES = ['Amina', 'Bao', ...Array.from({ length: 22 }, (_, n) => `Tam${n}`)];
const ANY_NAME = /Amina|Bao|Tam/;

/** Makes a class of 24 with ratings of two days: ten rate low, the others high. */
async function ratedClass(bridge: Bridge): Promise<string> {
  const id = await makeRoom(bridge);
  for (const date of ['2026-11-23', SAMPLE_DAY]) {
    const day = await bridge.call('entry_day', { class: id, date });
    // A concept that only four rate is withheld from the table for the school.
    const made = day.concepts.flatMap((concept, place) =>
      day.rows
        .filter((row) => place > 0 || row.seat <= 4)
        .map((row) => ({
          seat: row.seat,
          concept: concept.id,
          value: { kind: 'rating' as const, rating: row.seat <= 10 ? 1 : 3 },
        })),
    );
    await bridge.call('make_entries', { class: id, date, made } as never);
  }
  return id;
}

const makeRoom = (bridge: Bridge) =>
  createClass(bridge, {
    title: 'Room 4',
    names: NAMES,
    year: YEAR,
    grades: [4],
    concepts_a_day: 6,
  });

async function save(page: Page, file: RegExp): Promise<void> {
  await page.getByTestId('print-save').click();
  const saved = page.getByText(new RegExp(`${file.source} was saved`)).first();
  // The pages of a whole class take a while on a busy machine.
  await expect(saved).toBeVisible({ timeout: 60_000 });
}

test('a practice sheet, by keys alone', async ({ page, bridge, hook }) => {
  await makeRoom(bridge);
  await openDesk(page, 'tab-print');
  await hook('print-save').click();
  await said(page, 'Choose at least one concept.');
  expect(await bridge.saved(), 'nothing is made without a concept').toEqual([]);

  await page.getByLabel('Concepts', { exact: true }).selectOption({ index: 1 });
  await said(page, '1 concept, 10 exercises with fresh numbers. US Letter, English.');
  await hook('print-count').fill('6');
  await hook('print-language').selectOption('es');
  await hook('print-paper').selectOption('a4');
  await said(page, '1 concept, 6 exercises with fresh numbers. A4, Español.');
  const exercises = hook('report-page').locator('.exercise');
  await expect(exercises).toHaveCount(6);
  await expect(exercises.filter({ hasText: 'Answer:' }), 'with its answers').toHaveCount(6);
  const before = await exercises.allInnerTexts();
  await hook('print-other').click();
  await expect.poll(() => exercises.allInnerTexts(), 'other numbers').not.toEqual(before);
  await expect(exercises).toHaveCount(6);
  await scan(page, 'a sheet looked at');
  await hook('print-other').focus();
  for (let n = 0; n < 60; n += 1) {
    if (await hook('print-save').evaluate((one) => one === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await expect(hook('print-save')).toBeFocused();
  await page.keyboard.press('Enter');
  await said(page, /practice-\d+\.pdf was saved/);
  const files = await bridge.saved();
  expect(files).toHaveLength(1);
  expect(files[0]?.bytes).toBeGreaterThan(5000);

  await test.step('a number out of bounds is reported beside the field', async () => {
    await hook('print-count').fill('0');
    await hook('print-save').click();
    await said(page, 'Choose 1 to 20 exercises.');
  });
});

test('a chart of the rotation, a sheet for one student, and the slips', async ({
  page,
  bridge,
  hook,
}) => {
  await makeRoom(bridge);
  await openDesk(page, 'tab-print', 'print-what-chart');
  await said(page, 'As shown below.');
  await expect(hook('report-page').locator('table')).toHaveCount(10);
  await save(page, /self-ratings\.pdf/);
  await test.step('a cancelled or failed save is reported in words', async () => {
    await bridge.save('decline');
    await hook('print-save').click();
    await said(page, 'Nothing was saved.');
    await bridge.save('unwritable');
    await hook('print-save').click();
    await expect(page.getByRole('alert').first()).toBeVisible();
    await scan(page, 'a chart that cannot be written');
  });
  await test.step('a sheet for one student', async () => {
    await hook('print-what-seat_sheet').click();
    await hook('print-seat').selectOption('1');
    await hook('print-count').fill('6');
    await hook('print-save').click();
    await said(page, 'Choose 1 to 5 exercises.');
    await hook('print-count').fill('2');
    await save(page, /practice-seat-1-\d+\.pdf/);
  });
  await test.step('join slips', async () => {
    await hook('print-what-slips').click();
    await save(page, /join-slips\.pdf/);
    await hook('print-only').selectOption({ index: 2 });
    await save(page, /join-slips-seat-2\.pdf/);
  });
});

test('a name that no font can print is told before the print', async ({ page, bridge, hook }) => {
  // No font has a sign for a code point that is not a character.
  const names = ['Ana', `Bao \u{10fffe}`];
  await createClass(bridge, { title: 'Room 6', names });
  await openDesk(page, 'tab-print', 'print-what-slips');
  await said(page, 'No font on this computer has some signs of Bao');
  await scan(page, 'a name without a font');
  await openDesk(page, 'tab-class', 'class-pack', 'slips-open');
  await expect(hook('without-font')).toBeVisible();
  await hook('slip-1-save').click();
  await said(page, 'join-slips-seat-1.pdf was saved');
});

test('a family page and a page for a talk bear one name', async ({ page, bridge, hook }) => {
  await ratedClass(bridge);
  await openDesk(page, 'tab-print', 'print-what-report');
  const paper = hook('report-page');
  await hook('print-seat').selectOption('2');
  await expect(paper).toContainText('How Bao is doing in mathematics');
  await expect(paper).not.toContainText(/Amina|Tam/);
  await expect(paper, 'the caution').toContainText('not a grade and not a diagnosis');
  await hook('print-language').selectOption('es');
  await expect(paper).toContainText('Cómo le va a Bao en matemáticas');
  await scan(page, 'a family page in Spanish');
  await save(page, /family-seat-2-2026-11-24\.pdf/);
  await hook('print-report').selectOption('family_pages');
  await expect(paper).toHaveCount(0);
  await save(page, /family-pages-2026-11-24\.pdf/);
  await hook('print-report').selectOption('family');
  await hook('print-seat').selectOption('2');
  await hook('print-language').selectOption('en');

  await test.step('covered names leave the page', async () => {
    await page.getByRole('heading', { level: 1 }).click();
    await page.keyboard.press('n');
    await expect(paper).toContainText('How your child is doing in mathematics');
    await expect(paper).not.toContainText('Bao');
    await page.keyboard.press('n');
    await expect(paper).toContainText('How Bao is doing in mathematics');
  });
  await hook('print-report').selectOption('conference');
  await expect(paper).toContainText('Talk with Bao');
  await save(page, /conference-seat-2-2026-11-24\.pdf/);
});

test('reports of the class, of a group, and tables', async ({ page, bridge, hook }) => {
  const id = await ratedClass(bridge);
  await openDesk(page, 'tab-print', 'print-what-report');
  const paper = hook('report-page');
  await hook('print-report').selectOption('talk');
  await expect(paper.getByRole('heading', { name: "Today's talk" })).toBeVisible();
  await save(page, /talk-2026-11-24\.pdf/);
  await hook('print-report').selectOption('class_summary');
  await expect(paper).toContainText(/(24|0) of 24 students/);
  await expect(paper).not.toContainText(ANY_NAME);
  await save(page, /class-summary-2026-11-24\.pdf/);

  await test.step('a small group, once groups are kept', async () => {
    await hook('print-report').selectOption('group');
    await said(page, 'No groups have been kept yet.');
    const day = await bridge.call('entry_day', { class: id, date: SAMPLE_DAY });
    await bridge.call('keep_groups', {
      class: id,
      date: SAMPLE_DAY,
      groups: [{ slot: 0, concept: day.concepts[1]?.id ?? '', seats: [1, 2, 3], partners: [] }],
    });
    for (const next of ['tab-board', 'tab-print', 'print-what-report']) await hook(next).click();
    await hook('print-report').selectOption('group');
    await expect(paper.getByRole('rowheader', { name: 'Amina' })).toBeVisible();
    await save(page, /small-group-2026-11-24\.pdf/);
  });

  await test.step('tables for other programs', async () => {
    await hook('print-what-table').click();
    await save(page, /board-2026-11-24\.xlsx/);
    await hook('print-report').selectOption('board_csv');
    await save(page, /board-2026-11-24\.csv/);
    await hook('print-report').selectOption('summary_csv');
    await save(page, /class-summary-2026-11-24\.csv/);
  });
});

test('the table for the school has no name, and is handed out once', async ({
  page,
  bridge,
  hook,
}) => {
  const id = await ratedClass(bridge);
  await openDesk(page, 'tab-print', 'print-what-report');
  const paper = hook('report-page');
  await hook('print-report').selectOption('share_safe');
  await expect(paper).toContainText('Class table for the school');
  await expect(paper).not.toContainText(/Amina|Bao|Tam|Seat \d/);
  await expect(paper, 'bands').toContainText('40–59%');
  await expect(paper, 'withheld rows').toContainText('withheld');
  await save(page, /class-table-2026-11-24\.pdf/);
  const before = await bridge.saved();
  await bridge.call('remove_seat', { class: id, seat: 24 });
  await hook('print-language').selectOption('es');
  await expect(paper).toContainText('Esta tabla no se puede entregar');
  await hook('print-language').selectOption('en');
  await expect(paper).toContainText('This table cannot be handed out');
  await scan(page, 'a table refused');
  await hook('print-save').click();
  await said(page, 'Too few ratings changed since an earlier table.');
  expect(await bridge.saved()).toEqual(before);
});
