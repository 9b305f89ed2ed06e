// Talk, groups, entering a day and ratings beside results, with the sample class.
import { check, withDesk } from './desk-browser.mjs';

await withDesk('2026-11-24', async ({ page, url, step, scan }) => {
  const hook = (name) => page.getByTestId(name);
  const post = async (path, body) =>
    (await page.request.post(new URL(path, url).href, { data: JSON.stringify(body) })).json();
  let class_id = '';
  let names = [];

  await step('the sample class opens', async () => {
    await hook('start-sample').click();
    await hook('bar-teacher').click({ timeout: 300_000 });
    await hook('tab-board').waitFor();
    class_id = (await post('/call/start', {})).classes[0].id;
    const setup = await post('/call/class_setup', { class: class_id });
    names = setup.seats.map((seat) => seat.name);
  });

  await step('the talk plan gives the day, reasons, and keeps to the minutes', async () => {
    await hook('tab-talk').click();
    await page.getByText(/Today is day \d+ of the rotation/).waitFor();
    await scan('talk');
    const talk = await post('/call/talk', { class: class_id, minutes: 4 });
    const chosen = await page.locator('article.chosen').count();
    check('as many as planned', chosen === talk.concepts.filter((c) => c.chosen).length, chosen);
    check('within the minutes', talk.minutes_used <= 4, talk.minutes_used);
    await hook('talk-minutes').selectOption('10');
    await page.waitForTimeout(200);
    const text = await page.locator('main').innerText();
    check('no name on it', !names.some((name) => new RegExp(`\\b${name}\\b`).test(text)));
  });

  await step('the projector goes by keys, names nobody, and closes by Escape', async () => {
    await page.locator('[data-testid^="talk-show-"]').first().click();
    await hook('projector').waitFor();
    await scan('projector');
    await page.keyboard.press('ArrowRight');
    await scan('projector-slip');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await hook('projector-answer').waitFor();
    await scan('projector-answer');
    const text = await hook('projector').innerText();
    check('no name on the wall', !names.some((name) => new RegExp(`\\b${name}\\b`).test(text)));
    const box = await hook('projector').boundingBox();
    check('it fills the window', box.width >= 1280 && box.height >= 800, box);
    await page.keyboard.press('Escape');
    await page.waitForFunction(() => !document.querySelector('dialog[open]'));
  });

  await step('what was talked about is noted and stays', async () => {
    const button = page.getByRole('button', { name: 'Talked about' }).first();
    await button.click();
    await page.waitForFunction(() => document.querySelector('main [aria-pressed="true"]'));
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.waitForFunction(() => !document.querySelector('main [aria-pressed="true"]'));
    await button.click();
    await page.waitForFunction(() => document.querySelector('main [aria-pressed="true"]'));
    await hook('tab-board').click();
    await hook('tab-talk').click();
    await page.locator('main [aria-pressed="true"]').waitFor();
  });

  await step('groups are suggested, proved, and no rule is broken', async () => {
    await hook('tab-groups').click();
    await hook('groups-suggest').waitFor();
    await scan('groups-wishes');
    await hook('groups-suggest').click();
    await hook('groups-sum').waitFor();
    await page.waitForFunction(
      () => !document.body.innerText.includes('Checking how good'),
      undefined,
      { timeout: 60_000 },
    );
    await scan('groups');
    const words = await hook('groups-sum').innerText();
    check('it says how good it is', /proved|At most/.test(words), words);
    check('no rule is broken', (await page.locator('.faults li').count()) === 0);
  });

  await step('an edit by hand shows its effect and is taken back', async () => {
    const before = await hook('groups-sum').innerText();
    const first = hook('group-0').locator('li select').first();
    await first.selectOption('out:');
    await page.getByText('was moved').waitFor();
    const note = await page.locator('.line p').first().innerText();
    check('what it costs is told', /helps .*(less|more|as much)/.test(note), note);
    await page.waitForFunction(
      (was) => document.querySelector('[data-testid="groups-sum"]').innerText !== was,
      before,
    );
    await scan('groups-edited');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.waitForFunction(
      (was) => document.querySelector('[data-testid="groups-sum"]').innerText === was,
      before,
    );
  });

  await step('a suggestion is discarded, and is back as it was', async () => {
    const before = await hook('groups-sum').innerText();
    await page.getByRole('button', { name: 'Discard the suggestion' }).click();
    await page.waitForFunction(() => !document.querySelector('[data-testid="groups-sum"]'));
    await page.getByRole('button', { name: 'Undo' }).click();
    await hook('groups-sum').waitFor();
    check('the same plan', (await hook('groups-sum').innerText()) === before);
  });

  await step('a pair is kept apart and somebody is absent', async () => {
    await page.locator('main details summary').first().click();
    const absent = page.getByRole('group', { name: 'Absent today' }).getByRole('checkbox').first();
    await absent.check();
    const apart = page.getByRole('group', { name: 'Keep apart' });
    await apart.getByLabel('First student').selectOption({ index: 2 });
    await apart.getByLabel('Second student').selectOption({ index: 3 });
    await apart.getByRole('button', { name: 'Add' }).click();
    await apart.locator('li').waitFor();
    await page.waitForFunction(
      () => !document.body.innerText.includes('Checking how good'),
      undefined,
      { timeout: 60_000 },
    );
    const desk = await post('/call/groups_desk', { class: class_id });
    check('both are kept', desk.wishes.absent.length === 1 && desk.wishes.keep_apart.length === 1);
    const members = await page.locator('[data-testid^="group-"] .name').allInnerTexts();
    check('who is absent has no place', !members.includes(names[0]), names[0]);
  });

  await step('the page of a group prints on one page', async () => {
    await hook('group-page-0').click();
    await hook('group-page').waitFor();
    await scan('group-page');
    await page.emulateMedia({ media: 'print' });
    const pdf = (await page.pdf({ format: 'Letter' })).toString('latin1');
    const pages = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    check('one page, two at most with pictures', pages >= 1 && pages <= 2, pages);
    await page.emulateMedia({ media: null });
    await page.keyboard.press('Escape');
    await hook('groups-keep').waitFor();
  });

  await step('kept groups take the record afterwards, and the record counts', async () => {
    await hook('groups-keep').click();
    await page.getByText('The groups are kept for today').waitFor();
    const record = page.locator('[data-testid^="record-"][data-testid$="-has"]').first();
    const id = await record.getAttribute('data-testid');
    await record.click();
    await page.waitForFunction(
      (hooked) =>
        document.querySelector(`[data-testid="${hooked}"]`).getAttribute('aria-pressed') === 'true',
      id,
    );
    await page.getByText(/1 of \d+ recorded/).waitFor();
    await scan('groups-kept');
    const [, concept, seat] = /^record-(.*)-(\d+)-has$/.exec(id);
    const reports = await post('/call/concept_reports', { class: class_id, concept });
    const student = reports.students.find((one) => one.seat === Number(seat));
    check('it stands among the reports', student.seen.length === 1 && student.seen[0].has_it);
    const chance = student.has_it;
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back.').waitFor();
    const without = (await post('/call/concept_reports', { class: class_id, concept })).students;
    const undone = without.find((one) => one.seat === Number(seat));
    check('taken back, it counts no more', undone.seen.length === 0 && undone.has_it < chance);
    await record.click();
    await page.getByText(/1 of \d+ recorded/).waitFor();
  });

  await step('the board shows a kept group alone, and opens a pass', async () => {
    await hook('tab-board').click();
    const rows = page.locator('[data-testid^="board-row-"]');
    await rows.first().waitFor();
    await hook('board-group').click();
    await page.locator('details .row button').first().waitFor();
    await page.locator('details .row button').first().click();
    await page.getByText(/^Only \d+ students/).waitFor();
    await page.getByText(/^\d of \d seats have reported/).waitFor();
    await scan('board-group');
    await page.getByRole('button', { name: 'Whole class' }).click();
    await page.getByText('Whole class · choose').waitFor();
    await page.locator('tbody td[class*="shade-"] button').first().click();
    await hook('concept-pass').waitFor();
    await scan('concept-pass');
    const passes = hook('concept-passes').locator('button');
    check(
      'one pass is open',
      (await passes.and(page.locator('[aria-pressed=true]')).count()) === 1,
    );
    await passes.and(page.locator('[aria-pressed=true]')).click();
    await page.waitForFunction(() => !document.querySelector('[data-testid="concept-pass"]'));
    await passes.last().click();
    await hook('concept-pass').waitFor();
    await page.keyboard.press('Escape');
  });

  await step('a day is entered by keys in under a minute', async () => {
    await hook('tab-enter').click();
    await hook('enter-grid').waitFor();
    await scan('enter');
    const day = await post('/call/entry_day', { class: class_id, date: null });
    const cells = day.rows.length * day.concepts.length;
    const began = Date.now();
    await page.locator('[data-cell="0-0"]').focus();
    for (let cell = 0; cell < cells; cell += 1) await page.keyboard.press(String(cell % 4));
    await page.getByText(`${cells} of ${cells} cells`).waitFor();
    await page.waitForFunction(() => !document.body.innerText.includes('saving'));
    const seconds = (Date.now() - began) / 1000;
    console.log(`${cells} cells: ${cells} keystrokes, one each, in ${seconds.toFixed(1)} s`);
    check('under a minute', seconds < 60, seconds);
    const after = await post('/call/entry_day', { class: class_id, date: day.date });
    const kept = after.rows.flatMap((row) => row.cells.map((cell) => cell.rating));
    check(
      'every key is on disk',
      kept.every((rating, at) => rating === at % 4),
      kept.slice(0, 9),
    );
    await scan('enter-filled');
  });

  await step('a line of like ratings takes one keystroke, and one to take it back', async () => {
    await hook('enter-outcome').click();
    const day = () => post('/call/entry_day', { class: class_id, date: null });
    const { rows } = await day();
    const empty = rows.map(({ cells }) =>
      cells.filter((cell) => (cell.outcome ?? cell.device_outcome) === null),
    );
    const row = empty.findIndex((cells) => cells.length > 1);
    check('a line with two empty cells', row >= 0);
    await page.locator(`[data-cell="${row}-0"]`).focus();
    await page.keyboard.press('Shift+Digit1');
    await page.waitForFunction(() => !document.body.innerText.includes('saving'));
    const typed = (await day()).rows[row].cells.filter((cell) => cell.outcome === 'right').length;
    check('every empty cell is filled in', typed === empty[row].length, [typed, empty[row].length]);
    await page.waitForFunction(
      (at) => document.activeElement.dataset.cell === at,
      `${Math.min(row + 1, rows.length - 1)}-0`,
    );
    await page.keyboard.press('Control+z');
    await page.waitForFunction(() => !document.body.innerText.includes('saving'));
    const left = (await day()).rows[row].cells.filter((cell) => cell.outcome !== null).length;
    check('and all of it is taken back', left === 0, left);
    const least = empty.filter((cells) => cells.length > 0).length;
    console.log(`a day of like answers: ${least} keystrokes with Shift, one a student`);
    await hook('enter-rating').click();
  });

  await step('the last key is taken back, and arrows and touch go as well', async () => {
    await page.keyboard.press('Control+z');
    await page.waitForFunction(() => !document.body.innerText.includes('saving'));
    const { rows } = await post('/call/entry_day', { class: class_id, date: null });
    check('the last one is empty again', rows.at(-1).cells.at(-1).rating === null);
    await page.locator('[data-cell="1-1"]').click();
    await page.keyboard.press('ArrowDown');
    await page.waitForFunction(() => document.activeElement.dataset.cell === '2-1');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.activeElement.dataset.cell === '3-0');
    await hook('enter-key-2').click();
    await page.waitForFunction(() => document.activeElement.dataset.cell === '3-1');
  });

  await step('observations are noted beside the ratings and make a kappa', async () => {
    await hook('enter-seen').click();
    await page.locator('[data-cell="0-0"]').focus();
    for (const key of '012301230120') await page.keyboard.press(key);
    await page.waitForFunction(() => !document.body.innerText.includes('saving'));
    await scan('enter-seen');
    await hook('tab-board').click();
    await hook('part-compare').click();
    await page.getByText(/Weighted kappa 0\.\d+ /).waitFor();
    await scan('compare');
    const { agreement } = await post('/call/comparison', { class: class_id });
    check('twelve pairs', agreement.pairs === 12, agreement);
  });

  await step('a student has a page of their own', async () => {
    await page.locator('[data-testid^="student-page-"]').first().click();
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.locator('tbody tr').first().waitFor();
    await scan('student');
    await page.keyboard.press('n');
    await page.getByRole('heading', { level: 1, name: /^Seat \d+$/ }).waitFor();
    await page.keyboard.press('n');
    await page.keyboard.press('Escape');
    await page.locator('[data-testid^="student-page-"]').first().waitFor();
  });

  const places = async (name) => {
    for (const tab of ['talk', 'groups', 'enter', 'board']) {
      await hook(`tab-${tab}`).click();
      await page.locator('main h1').waitFor();
      await page.waitForTimeout(400);
      await scan(`${name}-${tab}`);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      check(`${name}-${tab}: nothing wider than the window`, wide <= 0, wide);
    }
    await hook('part-compare').click();
    await page.locator('tbody tr').first().waitFor();
    await scan(`${name}-compare`);
    await page.locator('[data-testid^="student-page-"]').first().click();
    await page.locator('tbody tr').first().waitFor();
    await scan(`${name}-student`);
    await hook('tab-talk').click();
    await page.locator('[data-testid^="talk-show-"]').first().click();
    await hook('projector-next').click();
    await scan(`${name}-projector`);
    await hook('projector-close').click();
  };
  await step('everything in Spanish and dark', async () => {
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByLabel('Colors').selectOption('dark');
    await page.getByLabel('Language').selectOption('es');
    await page.getByRole('dialog').getByRole('button', { name: 'Cerrar' }).click();
    await places('dark-es');
  });
  await step('everything in high contrast on a tablet', async () => {
    await page.getByRole('button', { name: 'Ajustes' }).click();
    await page.getByLabel('Colores').selectOption('contrast');
    await page.getByLabel('Idioma').selectOption('en');
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
    await page.setViewportSize({ width: 800, height: 1280 });
    await places('tablet');
  });
  await step('everything on a phone', async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    await places('phone');
  });
});
