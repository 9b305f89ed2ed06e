// Own exercises and own concepts, from a file at the desk to a student's answer.
import { writeFileSync } from 'node:fs';
import { join as path } from 'node:path';
import type { Page } from '@playwright/test';
import type { Bridge } from './bridge';
import { openDesk, said, scan, undo } from './desk';
import { expect, test } from './fixtures';
import { createClass, join, open, packOf } from './own-class';
import { SAMPLES } from './places';
import { valuesFor } from './report-values';
import { DESK } from './sizes';

test.use(DESK);

interface Room {
  id: string;
  /** A concept that has been taught. */
  concept: string;
}

async function openRoom(page: Page, bridge: Bridge, part: string): Promise<Room> {
  const id = await createClass(bridge, { grades: [4], rotation_days: 5, concepts_a_day: 3 });
  const setup = await bridge.call('class_setup', { class: id });
  const concept = setup.rotation[0]?.[0]?.concept.id ?? '';
  await bridge.call('set_taught_from', { class: id, concept, date: '2026-08-17' });
  await openDesk(page, 'tab-class', part);
  return { id, concept };
}

/** Imports lines of a table as exercises. */
async function importTable(page: Page, bridge: Bridge, ...lines: string[]): Promise<void> {
  const table = path(bridge.data, 'mine.csv');
  writeFileSync(table, lines.join('\n'));
  await bridge.pick(table);
  await page.getByTestId('own-import-do').click();
}

/** An exercise with both languages, a hint, steps and a common misconception. */
const exerciseOf = (concept: string) => [
  'concept,kind,question,question_es,answer,hint,steps,wrong_1,feedback_1',
  `${concept},fraction,"What is {1/4} + {2/4}?","¿Cuánto es {1/4} + {2/4}?",3/4,Fourths stay fourths.,1 + 2 = 3 | {3/4},3/8,"Only the tops are added, <b>not</b> the bottoms."`,
];

test('a table is imported, its faults are named, and an exercise can be tried', async ({
  page,
  bridge,
  hook,
}) => {
  const { concept } = await openRoom(page, bridge, 'class-exercises');
  await test.step('cancelling the file dialog is no error', async () => {
    await said(page, 'No exercises of your own yet');
    await bridge.pick();
    const picked = page.waitForResponse('**/call/**');
    await hook('own-import-do').click();
    await picked;
    await said(page, 'No exercises of your own yet');
    await expect(page.getByRole('alert')).toHaveCount(0);
  });
  await test.step('each line that does not fit is named', async () => {
    await importTable(
      page,
      bridge,
      ...exerciseOf(concept),
      `${concept},whole number,How many?,,many,,,,`,
      `no-such-concept,whole number,How many?,,4,,,,`,
    );
    await said(page, '1 was imported; 2 could not be.');
    const report = hook('own-import').first();
    await expect(report).toContainText('“many” is not an answer of the kind “whole number”.');
    await expect(report).toContainText('There is no concept “no-such-concept”');
    await expect(report.locator('.refused strong')).toHaveText(['Line 3', 'Line 4']);
    await scan(page, 'the report on a table');
  });
  await test.step('it can be tried as a student will see it', async () => {
    const look = hook('own-list').getByRole('button', { name: /^View/ });
    await look.click();
    const player = hook('own-player');
    await expect(player.locator('mfrac'), 'fractions are mathematics').toHaveCount(2);
    await hook('own-try').click();
    await said(page, 'Fill in an answer first.');
    const box = (at: number) => player.getByTestId(`answer-field-${at}`);
    await box(0).fill('3');
    await box(1).fill('8');
    await hook('own-try').click();
    await expect(hook('own-tried'), 'markup is text').toContainText('<b>not</b>');
    await box(1).fill('4');
    await hook('own-try').click();
    await expect(hook('own-tried')).toHaveClass(/right/);
  });
});

test('items of QTI 3 are imported, removed and restored', async ({ page, bridge, hook }) => {
  const { concept } = await openRoom(page, bridge, 'class-exercises');
  await importTable(page, bridge, ...exerciseOf(concept));
  await said(page, '1 was imported; 0 could not be.');
  await hook('own-concept').selectOption(concept);
  await bridge.pick(
    ...['bridge-planks', 'rope-length', 'picture', 'rivers'].map((name) =>
      path(SAMPLES, `bank/qti/${name}.xml`),
    ),
  );
  await hook('own-import-do').click();
  await said(page, '3 were imported; 1 could not be.');
  await said(page, '“img” cannot be shown here');
  const lines = hook('own-list').locator('tbody tr');
  await expect(lines).toHaveCount(4);
  const takeBack = async () => {
    await hook('own-undo').first().click();
    await page.getByRole('dialog').getByRole('button', { name: 'Undo this import' }).click();
    await said(page, 'The import was undone.');
  };
  const remove = async () => {
    const one = hook('own-list').getByRole('button', { name: /^Remove: / });
    await one.first().click();
    await page.getByRole('dialog').getByRole('button').last().click();
    await expect(lines).toHaveCount(3);
  };
  await takeBack();
  await expect(lines).toHaveCount(1);
  await undo(page);
  await expect(lines).toHaveCount(4);
  await remove();
  await undo(page);
  await expect(lines).toHaveCount(4);
  await test.step('an exercise and an import can be removed at the same time', async () => {
    await remove();
    await takeBack();
    await expect(hook('removed')).toContainText('One more can be restored');
    await scan(page, 'exercises removed');
    await hook('removed-discard').first().click();
    await hook('removed-discard').first().click();
    await expect(hook('removed')).toHaveCount(0);
  });
});

test('concepts of a publisher and of a table are picked and placed', async ({
  page,
  bridge,
  hook,
}) => {
  await openRoom(page, bridge, 'class-concepts');
  await said(page, 'No concepts of your own yet.');
  await scan(page, 'no concepts of one’s own');
  await bridge.pick(path(SAMPLES, 'catalogue/water-studies.case.json'));
  await hook('own-concepts-pick').click();
  await expect(hook('own-pick')).toContainText('Water studies of Otter Ford (invented)');
  await hook('own-pick-search').fill('OF.4.W');
  const drafts = hook('own-pick').locator('.drafts input[type=checkbox]');
  await expect(drafts, 'three have the code').toHaveCount(3);
  await drafts.nth(0).check();
  await drafts.nth(1).check();
  await hook('own-pick-do').click();
  await said(page, 'Choose a strand and a grade for each.');
  await scan(page, 'concepts picked');
  await hook('own-pick-strand').selectOption('measurement');
  await page
    .getByLabel('What students say they can do: Read a gauge')
    .fill('I can read a water gauge.');
  await hook('own-pick-do').click();
  await said(page, '2 were imported; 0 could not be.');
  const list = hook('own-concepts-list');
  await expect(list).toContainText('OF.4.W.2');
  await expect(
    list.getByText('Read a gauge', { exact: true }).nth(1),
    'what comes before is kept',
  ).toBeVisible();
  await hook('own-concepts-place').first().click();
  await expect(list.getByText('in the rotation', { exact: true })).toBeVisible();
  await scan(page, 'concepts of one’s own');
  await hook('own-undo').click();
  await page.getByRole('dialog').getByRole('button', { name: 'Undo this import' }).click();
  await said(page, 'One of these concepts is in the rotation');

  await test.step('those of a table name their lines', async () => {
    await bridge.pick(path(SAMPLES, 'catalogue/with-faults.csv'));
    await hook('own-concepts-pick').click();
    await expect(hook('own-pick')).toContainText('There is no strand “rivers”');
    await hook('own-pick-do').click();
    await said(page, '1 was imported; 7 could not be.');
    await scan(page, 'the report on concepts');
  });
});

test('a student answers an own exercise and an own concept', async ({ page, bridge, hook }) => {
  const { id, concept } = await openRoom(page, bridge, 'class-concepts');
  await test.step('the class pack has them', async () => {
    await bridge.pick(path(SAMPLES, 'catalogue/water-studies.case.json'));
    await hook('own-concepts-pick').click();
    await hook('own-pick-search').fill('OF.4.W');
    const drafts = hook('own-pick').locator('.drafts input[type=checkbox]');
    await drafts.nth(0).check();
    await hook('own-pick-strand').selectOption('measurement');
    await page
      .getByLabel('What students say they can do: Read a gauge')
      .fill('I can read a water gauge.');
    await hook('own-pick-do').click();
    await said(page, '1 was imported; 0 could not be.');
    await hook('own-concepts-place').first().click();
    await expect(hook('own-concepts-list')).toContainText('in the rotation');
    await hook('class-exercises').click();
    await importTable(page, bridge, ...exerciseOf(concept));
    await said(page, '1 was imported; 0 could not be.');
    await importTable(
      page,
      bridge,
      'concept,kind,question,answer',
      'Read a gauge,whole number,"How many half inches are in 3 inches?",6',
    );
    await expect(hook('own-import')).toHaveCount(2);
  });
  const desk = await bridge.call('own_desk', { class: id });
  const water = desk.exercises.find((one) => one.answer === '6')?.concept.id ?? '';
  await bridge.call('set_taught_from', { class: id, concept: water, date: '2026-08-17' });
  const student = await join(bridge, await packOf(bridge, id));
  const ask = (of: string) => bridge.call('practice', { student, concept: of, more: false });

  await test.step("the teacher's words come with a common misconception", async () => {
    // The concept is asked for, as from the student's path.
    const asked = await ask(concept);
    expect(asked, 'an own exercise comes first').toMatchObject({
      exercise: expect.stringContaining('-own-'),
    });
    expect(JSON.stringify(asked), 'no key goes to the screen').not.toContain('3/8');
    await open(page, student);
    await hook('tab-practice').click();
    await expect(page.locator('main mfrac').first()).toBeVisible();
    await hook('practice-sure-2').click();
    const box = (at: number) => hook(`answer-field-${at}`);
    await box(0).fill('3');
    await box(1).fill('8');
    await page.keyboard.press('Enter');
    const feedback = hook('practice-feedback');
    await expect(feedback).toContainText('Only the tops are added, <b>not</b> the bottoms.');
    await expect(feedback.locator('b'), 'no markup is made of it').toHaveCount(0);
    await box(1).fill('4');
    await page.keyboard.press('Enter');
    await expect(feedback).toHaveAttribute('data-right', 'true');
  });

  await test.step('it counts, and goes into the hand-in', async () => {
    expect(await ask(water)).toMatchObject({
      exercise: expect.stringContaining('-own-'),
      concept: { title: 'Read a gauge' },
    });
    const { concepts } = await bridge.call('my_path', { student });
    const line = concepts.find((one) => one.concept.id === concept);
    expect(line).toMatchObject({ answered: 1, with_help: 1 });
    expect((await bridge.call('hand_in_preview', { student })).answers).toBe(1);
  });

  await test.step('on a printed sheet, also where there are no other exercises', async () => {
    for (const concepts of [[water], [concept, water]]) {
      const sheet = (await bridge.call('reports', {})).find(({ name }) => name === 'sheet');
      const made = await bridge.call('print', {
        class: id,
        report: 'sheet',
        values: sheet ? valuesFor(sheet, { concepts, level: 2, count: 4, with_key: true }) : {},
        options: { language: 'es', paper: 'a4', roomy: true },
      });
      expect(made.place).not.toBeNull();
      const file = (await bridge.saved()).find(({ name }) => name === made.file_name);
      expect(file?.bytes).toBeGreaterThan(5000);
    }
  });
});
