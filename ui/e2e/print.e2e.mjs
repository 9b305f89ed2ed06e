// Printing: a sheet and a chart saved as PDF, what is missing said, by keys alone.
import { check, withDesk } from './desk-browser.mjs';

const NAMES = ['Amina', 'Bao', ...Array.from({ length: 22 }, (_, n) => `Tam${n}`)];

await withDesk('2026-11-24', async ({ page, url, step, scan }) => {
  const hook = (name) => page.getByTestId(name);
  const ask = (path, body) =>
    page.request.post(new URL(path, url).href, { data: JSON.stringify(body) });
  const saved = async () => (await page.request.get(new URL('/test/saved', url).href)).json();
  const said = (words) => page.getByText(words).first().waitFor();
  let classId = '';
  /** By keys: tab until the hook holds the focus. */
  const tabTo = async (name) => {
    for (let n = 0; n < 60; n += 1) {
      if (await page.evaluate((id) => document.activeElement?.dataset.testid === id, name)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`no way to ${name} by Tab`);
  };

  await step('a class stands, and Print opens on a practice sheet', async () => {
    await ask('/call/create_class', {
      class: {
        title: 'Room 4',
        names: NAMES,
        year: {
          first_day: '2026-08-31',
          last_day: '2027-05-07',
          weekdays: [1, 2, 3, 4, 5],
          closures: [],
        },
        grades: [4],
        rotation_days: 10,
        concepts_a_day: 6,
      },
    }).then(async (answer) => check('class made', answer.ok(), await answer.text()));
    await page.reload();
    await hook('start-teacher').click();
    await hook('tab-print').click();
    await hook('print-save').waitFor();
    await scan('print');
  });

  await step('without a concept nothing is made, and that is said', async () => {
    await hook('print-save').click();
    await said('Choose at least one concept.');
    await scan('print-faults');
    check('nothing saved', (await saved()).length === 0);
  });

  await step('a sheet is saved, by keys alone', async () => {
    await page.getByLabel('Concepts', { exact: true }).selectOption({ index: 1 });
    await said('1 concept, 10 exercises with fresh numbers. US Letter, English.');
    await hook('print-count').fill('6');
    await hook('print-language').selectOption('es');
    await hook('print-paper').selectOption('a4');
    await said('1 concept, 6 exercises with fresh numbers. A4, Español.');
    const exercises = hook('report-page').locator('.exercise');
    await exercises.nth(5).waitFor();
    check('looked at as it will be', (await exercises.count()) === 6);
    const first = await exercises.allInnerTexts();
    check(
      'with its answers',
      first.every((text) => text.includes('Answer:')),
      first[0],
    );
    await hook('print-other').click();
    await page.waitForFunction(
      (was) =>
        !(document.querySelector('[data-testid=report-page]')?.innerText ?? was).includes(was),
      first[0],
    );
    await scan('print-looked-at');
    await tabTo('print-save');
    await page.keyboard.press('Enter');
    await said(/practice-\d+\.pdf was saved/);
    const [file] = await saved();
    check('a sheet', /^practice-\d+\.pdf$/.test(file.name) && file.bytes > 5000, file);
    await scan('print-saved');
  });

  await step('a number out of bounds is said beside the box', async () => {
    await hook('print-count').fill('0');
    await hook('print-save').click();
    await said('Choose 1 to 20 exercises.');
    await hook('print-count').fill('5');
  });

  await step('a chart of the rotation is saved', async () => {
    await hook('print-what-chart').click();
    await said('One table for each day of the rotation.');
    await hook('report-page').locator('table').nth(9).waitFor();
    await scan('print-chart');
    await hook('print-save').click();
    await said(/self-ratings\.pdf was saved/);
    check('two files', (await saved()).length === 2);
  });

  await step('a save that is declined or cannot be is said in words', async () => {
    await ask('/test/save', 'decline');
    await hook('print-save').click();
    await said('Nothing was saved.');
    await ask('/test/save', 'unwritable');
    await hook('print-save').click();
    await page.locator('[role="alert"]').first().waitFor();
    await scan('print-unwritable');
  });

  await step('join slips', async () => {
    await hook('print-what-slips').click();
    await scan('print-slips');
    await hook('print-save').click();
    await said(/join-slips\.pdf was saved/);
  });

  await step('ratings stand on the desk', async () => {
    const [{ id }] = (await (await ask('/call/start', {})).json()).classes;
    classId = id;
    // Each of two days: ten rate low, the others high; a concept that only four rate.
    for (const date of ['2026-11-23', '2026-11-24']) {
      const day = await (await ask('/call/entry_day', { class: id, date })).json();
      const made = day.concepts.flatMap((concept, place) =>
        day.rows
          .filter((row) => place > 0 || row.seat <= 4)
          .map((row) => ({
            seat: row.seat,
            concept: concept.id,
            value: { kind: 'rating', rating: row.seat <= 10 ? 1 : 3 },
          })),
      );
      const answer = await ask('/call/make_entries', { class: id, date, made });
      check(`entered ${date}`, answer.ok(), await answer.text());
    }
    await hook('tab-print').click();
    await hook('print-what-report').click();
    await hook('report-page').waitFor();
  });

  await step('a family page is shown as it is printed, with one name on it', async () => {
    await hook('print-seat').selectOption('2');
    await hook('report-page').getByText('How Bao is doing in mathematics').waitFor();
    const shown = await hook('report-page').innerText();
    check('no other name', !/Amina|Tam/.test(shown), shown);
    check('the caution', shown.includes('not a grade and not a diagnosis'), shown);
    await scan('print-family');
    await hook('print-language').selectOption('es');
    await hook('report-page').getByText('Cómo le va a Bao en matemáticas').waitFor();
    await scan('print-family-es');
    await hook('print-save').click();
    await said(/family-seat-2-2026-11-24\.pdf was saved/);
    await hook('print-report').selectOption('family_pages');
    await hook('report-page').waitFor({ state: 'detached' });
    await hook('print-save').click();
    await said(/family-pages-2026-11-24\.pdf was saved/);
    await hook('print-report').selectOption('family');
    await hook('print-seat').selectOption('2');
    await hook('print-language').selectOption('en');
  });

  await step('covered names leave the page', async () => {
    await page.getByRole('heading', { level: 1 }).click();
    await page.keyboard.press('n');
    await hook('report-page').getByText('How your child is doing in mathematics').waitFor();
    check('no name', !/Bao/.test(await hook('report-page').innerText()));
    await page.keyboard.press('n');
    await hook('report-page').getByText('How Bao is doing in mathematics').waitFor();
  });

  await step('a page for a talk, the talk, a summary', async () => {
    await hook('print-report').selectOption('conference');
    await hook('report-page').getByText('Talk with Bao').waitFor();
    await scan('print-conference');
    await hook('print-save').click();
    await said(/conference-seat-2-2026-11-24\.pdf was saved/);
    await hook('print-report').selectOption('talk');
    await hook('report-page').getByRole('heading', { name: "Today's talk" }).waitFor();
    await scan('print-talk');
    await hook('print-save').click();
    await said(/talk-2026-11-24\.pdf was saved/);
    await hook('print-report').selectOption('class_summary');
    await hook('report-page')
      .getByText('24 of 24 students')
      .or(hook('report-page').getByText('0 of 24 students'))
      .first()
      .waitFor();
    check('no name', !/Amina|Bao|Tam/.test(await hook('report-page').innerText()));
    await scan('print-summary');
    await hook('print-save').click();
    await said(/class-summary-2026-11-24\.pdf was saved/);
  });

  await step('a small group, once groups are kept', async () => {
    await hook('print-report').selectOption('group');
    await said('No groups have been kept yet.');
    const day = await (await ask('/call/entry_day', { class: classId, date: '2026-11-24' })).json();
    const kept = await ask('/call/keep_groups', {
      class: classId,
      date: '2026-11-24',
      groups: [{ slot: 0, concept: day.concepts[1].id, seats: [1, 2, 3] }],
    });
    check('kept', kept.ok(), await kept.text());
    await hook('tab-board').click();
    await hook('tab-print').click();
    await hook('print-what-report').click();
    await hook('print-report').selectOption('group');
    await hook('report-page').getByRole('rowheader', { name: 'Amina' }).waitFor();
    await scan('print-group');
    await hook('print-save').click();
    await said(/small-group-2026-11-24\.pdf was saved/);
  });

  await step('the table for the school has no name, and is handed out once a class', async () => {
    await hook('print-report').selectOption('share_safe');
    await hook('report-page').getByText('Class table for the school').waitFor();
    const shown = await hook('report-page').innerText();
    check('no name and no seat', !/Amina|Bao|Tam|Seat \d/.test(shown), shown);
    check('bands and withheld rows', /40–59%/.test(shown) && /withheld/.test(shown), shown);
    await scan('print-share-safe');
    await hook('print-save').click();
    await said(/class-table-2026-11-24\.pdf was saved/);
    const before = (await saved()).length;
    await ask('/call/remove_seat', { class: classId, seat: 24 });
    await hook('print-language').selectOption('es');
    await hook('report-page')
      .getByText(/Esta tabla no se puede entregar/)
      .waitFor();
    await hook('print-language').selectOption('en');
    await hook('report-page')
      .getByText(/This table cannot be handed out/)
      .waitFor();
    await scan('print-share-refused');
    await hook('print-save').click();
    await said('A table of nearly the same class was handed out before.');
    check('nothing saved', (await saved()).length === before);
  });

  await step('tables for other programs', async () => {
    await hook('print-what-table').click();
    await scan('print-tables');
    await hook('print-save').click();
    await said(/board-2026-11-24\.xlsx was saved/);
    await hook('print-report').selectOption('board_csv');
    await hook('print-save').click();
    await said(/board-2026-11-24\.csv was saved/);
    await hook('print-report').selectOption('summary_csv');
    await hook('print-save').click();
    await said(/class-summary-2026-11-24\.csv was saved/);
  });

  await step('a sheet for one student', async () => {
    await hook('print-what-seat_sheet').click();
    await hook('print-seat').selectOption('1');
    await hook('print-count').fill('6');
    await hook('print-save').click();
    await said('Choose 1 to 5 exercises.');
    await hook('print-count').fill('2');
    await scan('print-seat-sheet');
    await hook('print-save').click();
    await said(/practice-seat-1-\d+\.pdf was saved/);
  });

  await step('in Spanish, dark', async () => {
    await hook('tab-print').click();
    const { settings } = await (await ask('/call/start', {})).json();
    await ask('/call/save_device_settings', { ...settings, language: 'es', theme: 'dark' });
    await page.reload();
    await hook('start-teacher').click();
    await hook('tab-print').click();
    await said('Hoja de práctica');
    await scan('print-es-dark');
  });
});
