// Own exercises and own concepts, from a file on the teacher's desk to a student's answer.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { check, withDesk } from './desk-browser.mjs';

const samples = join(dirname(fileURLToPath(import.meta.url)), '../../shared/samples');
const folder = mkdtempSync(join(tmpdir(), 'surefoot-bank-'));

await withDesk('2026-09-16', async ({ page, url, data, step, scan }) => {
  const hook = (name) => page.getByTestId(name);
  const post = async (path, body) => {
    const answer = await page.request.post(new URL(path, url).href, { data: JSON.stringify(body) });
    return (await answer.text()) === '' ? null : answer.json();
  };
  const pick = (...paths) => post('/test/pick', paths);
  const call = (name, args) => post(`/call/${name}`, args);

  let id = '';
  let concept = '';
  await step('a small class', async () => {
    ({ id } = await call('create_class', {
      class: {
        title: 'Room 9',
        names: ['Ana', 'Ben'],
        year: {
          first_day: '2026-08-17',
          last_day: '2027-05-28',
          weekdays: [1, 2, 3, 4, 5],
          closures: [],
        },
        grades: [4],
        rotation_days: 5,
        concepts_a_day: 3,
      },
    }));
    const setup = await call('class_setup', { class: id });
    concept = setup.rotation[0][0].concept;
    await call('set_taught_from', { class: id, concept: concept.id, date: '2026-08-17' });
    await page.reload();
    await hook('start-teacher').click();
    await hook('tab-class').click();
  });

  await step('an empty screen teaches, and going back from the picker is no error', async () => {
    await hook('class-exercises').click();
    await page.getByText('No exercises of your own yet').waitFor();
    await scan('own-empty');
    await pick();
    await hook('own-import-do').click();
    await page.getByText('No exercises of your own yet').waitFor();
    check('no trouble', (await page.getByRole('alert').count()) === 0);
  });

  await step('a table is taken in, and each line that does not fit is named', async () => {
    const table = join(folder, 'mine.csv');
    writeFileSync(
      table,
      [
        'concept,kind,question,question_es,answer,hint,steps,wrong_1,feedback_1',
        `${concept.id},fraction,"What is {1/4} + {2/4}?","¿Cuánto es {1/4} + {2/4}?",3/4,Fourths stay fourths.,1 + 2 = 3 | {3/4},3/8,"Only the tops are added, <b>not</b> the bottoms."`,
        `${concept.id},whole number,How many?,,many,,,,`,
        `no-such-concept,whole number,How many?,,4,,,,`,
      ].join('\n'),
    );
    await pick(table);
    await hook('own-import-do').click();
    await page.getByText('1 was taken in; 2 could not be.').waitFor();
    const account = hook('own-import').first();
    await account.getByText('“many” is no answer of the kind “whole number”.').waitFor();
    await account.getByText('There is no concept “no-such-concept”').waitFor();
    const lines = await account.locator('.refused strong').allInnerTexts();
    check('lines 3 and 4 are named', lines.join() === 'Line 3,Line 4', lines);
    await scan('own-account');
  });

  await step('it can be tried in the same player', async () => {
    await hook('own-list')
      .getByRole('button', { name: /^Look at/ })
      .click();
    const player = hook('own-player');
    await player.waitFor();
    check('fractions are mathematics', (await player.locator('mfrac').count()) === 2);
    await scan('own-try');
    await hook('own-try').click();
    await page.getByText('Fill in an answer first.').waitFor();
    const box = (at) => player.getByTestId(`answer-field-${at}`);
    await box(0).fill('3');
    await box(1).fill('8');
    await hook('own-try').click();
    const said = hook('own-tried');
    await said.getByText('<b>not</b>').waitFor();
    await box(1).fill('4');
    await hook('own-try').click();
    await page.locator('[data-testid=own-tried].right').waitFor();
    await page.keyboard.press('Escape');
  });

  await step('items of QTI 3 are taken in for a chosen concept, and undone', async () => {
    const items = ['bridge-planks', 'rope-length', 'picture', 'rivers'].map((name) =>
      join(samples, `bank/qti/${name}.xml`),
    );
    await hook('own-concept').selectOption(concept.id);
    await pick(...items);
    await hook('own-import-do').click();
    await page.getByText('3 were taken in; 1 could not be.').waitFor();
    await page.getByText('“img” cannot be shown here').waitFor();
    check('four stand in the list', (await hook('own-list').locator('tbody tr').count()) === 4);
    await scan('own-items');
    await hook('own-undo').first().click();
    await page
      .getByRole('dialog')
      .getByTestId('own-undo')
      .or(page.getByRole('dialog').getByRole('button', { name: 'Take this import back' }))
      .first()
      .click();
    await page.getByText('The import was taken back.').waitFor();
    const lines = (count) =>
      page.waitForFunction(
        (n) => document.querySelectorAll('[data-testid=own-list] tbody tr').length === n,
        count,
      );
    await lines(1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await lines(4);
    // One exercise and all of the import are held side by side.
    const remove = async () => {
      await hook('own-list')
        .getByRole('button', { name: /^Take away: / })
        .first()
        .click();
      await page.getByRole('dialog').getByRole('button').last().click();
    };
    await remove();
    await lines(3);
    await page.getByRole('button', { name: 'Undo' }).click();
    await lines(4);
    await remove();
    await lines(3);
    await hook('own-undo').first().click();
    await page.getByRole('dialog').getByRole('button', { name: 'Take this import back' }).click();
    await page.getByText('The import was taken back.').waitFor();
    await hook('removed').getByText('One more can be brought back').waitFor();
    await scan('own-removed');
    await hook('removed-let-go').first().click();
    await hook('removed-let-go').first().click();
    await hook('removed').waitFor({ state: 'detached' });
  });

  await step('concepts of a publisher: the teacher picks, and places one', async () => {
    await hook('class-concepts').click();
    await page.getByText('No concepts of your own yet.').waitFor();
    await scan('concepts-empty');
    await pick(join(samples, 'catalogue/water-studies.case.json'));
    await hook('own-concepts-pick').click();
    await hook('own-pick').getByText('Water studies of Otter Ford (invented)').waitFor();
    await hook('own-pick-search').fill('OF.4.W');
    const drafts = hook('own-pick').locator('.drafts input[type=checkbox]');
    check('three have the code', (await drafts.count()) === 3, await drafts.count());
    await drafts.nth(0).check();
    await drafts.nth(1).check();
    await hook('own-pick-do').click();
    await page.getByText('Choose a strand and a grade for each.').waitFor();
    await scan('concepts-pick');
    await hook('own-pick-strand').selectOption('measurement');
    await page
      .getByLabel('What students say they can do: Read a gauge')
      .fill('I can read a water gauge.');
    await hook('own-pick-do').click();
    await page.getByText('2 were taken in; 0 could not be.').waitFor();
    const list = hook('own-concepts-list');
    await list.getByText('OF.4.W.2').waitFor();
    check(
      'what comes before is kept',
      await list.getByText('Read a gauge', { exact: true }).nth(1).isVisible(),
    );
    await hook('own-concepts-place').first().click();
    await list.getByText('in the rotation', { exact: true }).waitFor();
    await scan('concepts-list');
    await hook('own-undo').click();
    await page.getByRole('dialog').getByRole('button', { name: 'Take this import back' }).click();
    await page.getByText('One of these concepts stands in the rotation').waitFor();
  });

  await step('own concepts from a table name their lines', async () => {
    await pick(join(samples, 'catalogue/with-faults.csv'));
    await hook('own-concepts-pick').click();
    await hook('own-pick').getByText('There is no strand “rivers”').waitFor();
    await hook('own-pick-do').click();
    await page.getByText('1 was taken in; 7 could not be.').waitFor();
    await scan('concepts-account');
  });

  let pack = '';
  let code = '';
  await step('the class pack brings them to a student', async () => {
    const own = join(folder, 'water.csv');
    writeFileSync(
      own,
      'concept,kind,question,answer\nRead a gauge,whole number,"How many half inches are in 3 inches?",6\n',
    );
    await hook('class-exercises').click();
    await pick(own);
    await hook('own-import-do').click();
    await page.getByText('1 was taken in; 0 could not be.').waitFor();
    const desk = await call('own_desk', { class: id });
    const water = desk.exercises.find((one) => one.answer === '6').concept.id;
    await call('set_taught_from', { class: id, concept: water, date: '2026-08-17' });
    const made = await call('save_class_pack', { class: id });
    pack = join(data, 'saves', made.file_name);
    [{ code }] = await call('join_slips', { class: id });
  });

  await step(
    'the student answers the own exercise, and the words of the teacher come',
    async () => {
      await page.goto(url);
      await pick(pack);
      await hook('start-student').click();
      await hook('join-pick').click();
      await page.getByText('Room 9').waitFor();
      await hook('join-next').click();
      await hook('join-code').fill(code);
      await page.getByText('The code fits.').waitFor();
      await hook('join-next').click();
      await hook('join-nickname').fill('Otter');
      await hook('join-picture-heron').click();
      await hook('join-finish').click();
      await hook('tab-practice').waitFor();
      const { students } = await call('start', {});
      const student = students[0].id;
      // The concept is asked for, as from the student's path.
      const asked = await call('practice', { student, concept: concept.id, more: false });
      check('an own exercise comes first', asked.exercise.includes('-own-'), asked.exercise);
      check('no key goes to the screen', !JSON.stringify(asked).includes('3/8'));
      await hook('tab-practice').click();
      await page.locator('main mfrac').first().waitFor();
      await scan('own-exercise');
      await hook('practice-sure-2').click();
      const box = (at) => hook(`answer-field-${at}`);
      await box(0).fill('3');
      await box(1).fill('8');
      await page.keyboard.press('Enter');
      const feedback = hook('practice-feedback');
      await feedback.getByText('Only the tops are added, <b>not</b> the bottoms.').waitFor();
      check('no markup is made of it', (await feedback.locator('b').count()) === 0);
      await box(1).fill('4');
      await page.keyboard.press('Enter');
      await page.locator('[data-testid=practice-feedback][data-right=true]').waitFor();
      await scan('own-exercise-right');
      const water = await call('own_desk', { class: id });
      const own = water.exercises.find((one) => one.answer === '6').concept;
      const next = await call('practice', { student, concept: own.id, more: false });
      check(
        'the own concept is practised',
        next.exercise.includes('-own-') && next.concept.title === 'Read a gauge',
        next.concept,
      );
      const path = await call('my_path', { student });
      const line = path.concepts.find((one) => one.concept.id === concept.id);
      check(
        'it counts as practice of its concept',
        line.answered === 1 && line.with_help === 1,
        line,
      );
      const preview = await call('hand_in_preview', { student });
      check('and stands in the hand-in', preview.answers === 1, preview);
    },
  );

  await step('own exercises go on a printed sheet, alone where there are no others', async () => {
    const { exercises } = await call('own_desk', { class: id });
    const alone = exercises.find((one) => one.answer === '6').concept;
    const printed = (concepts) =>
      call('print', {
        class: id,
        what: { kind: 'sheet', concepts, level: 2, count: 4, with_key: true },
        look: { language: 'es', paper: 'a4', roomy: true },
      });
    for (const concepts of [[alone.id], [concept.id, alone.id]]) {
      const made = await printed(concepts);
      check('a sheet', made?.place && made.bytes > 5000, made);
    }
  });
});
rmSync(folder, { recursive: true, force: true });
