// A way through every screen of the teacher's desk, on the sample class. `at` is
// called at each stop with its name; hooks lead on, so that the way is the same in
// every language.
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { setDevice } from './student.mjs';

const SAMPLES = join(dirname(fileURLToPath(import.meta.url)), '../../../shared/samples');
const REPORTS = ['family', 'conference', 'class_summary', 'talk', 'group', 'share_safe'];

export async function walkTeacher({ page, bridge, language }, at) {
  const hook = (name) => page.getByTestId(name);
  const first = (start) => page.locator(`[data-testid^="${start}"]`).first();
  const call = (name, args) => bridge.post(`/call/${name}`, args);
  const leave = async () => {
    await page.keyboard.press('Escape');
    await page.waitForFunction(() => !document.querySelector('dialog[open]'));
  };
  const tab = async (name) => {
    await hook(`tab-${name}`).click();
    await page.locator('main h1').waitFor();
  };
  const part = async (name) => {
    await hook(`class-${name}`).click();
    await page.locator(`[data-testid="class-${name}"][aria-current]`).waitFor();
    await page.waitForLoadState('networkidle');
  };

  await setDevice(bridge, { language, guides_read: ['all'] });
  await page.goto(bridge.url);
  await page.locator(`html[lang=${language}]`).waitFor();
  await hook('bar-teacher').click();
  const { classes } = await call('start', {});
  const sample = classes[0].id;

  // --- the board and what lies behind it
  await tab('board');
  await first('board-row-').waitFor();
  await at('board');
  await hook('guide-open').click();
  await hook('guide').waitFor();
  await at('board-guide');
  await hook('guide-open').click();
  await hook('board-group').click();
  await page.locator('details .seats label').first().waitFor();
  await at('board-group');
  await hook('board-group').click();
  await page.locator('tbody td[class*="shade-"] button').first().click();
  await hook('concept-pass').waitFor();
  await at('concept-pass');
  await tab('board');
  await first('board-row-').click();
  await page.locator('tbody tr').first().waitFor();
  await at('concept');
  await tab('board');
  await hook('part-compare').click();
  await page.locator('tbody tr').first().waitFor();
  await at('compare');
  await first('student-page-').click();
  await page.locator('tbody tr').first().waitFor();
  await at('student');

  // --- the talk and the wall
  await tab('talk');
  await first('talk-show-').waitFor();
  await at('talk');
  await first('talk-show-').click();
  await hook('projector-next').waitFor();
  await at('projector');
  for (let n = 0; n < 3 && !(await hook('projector-steps').isVisible()); n += 1) {
    await hook('projector-next').click();
  }
  await at('projector-open');
  await leave();

  // --- groups
  await tab('groups');
  await hook('groups-suggest').waitFor();
  const wishes = page.locator('main details').first();
  if (!(await wishes.evaluate((details) => details.open))) await wishes.locator('summary').click();
  await at('groups-wishes');
  await hook('groups-suggest').click();
  await hook('groups-sum').waitFor();
  // The proof of how good they are goes on beside.
  await page.waitForFunction(() => !document.querySelector('main progress'));
  await at('groups');
  await hook('group-page-0').click();
  await hook('group-page').waitFor();
  await at('group-page');
  await leave();
  await hook('groups-keep').click();
  await first('record-').waitFor();
  await at('groups-kept');

  // --- assigned practice
  const board = await call('board', { class: sample });
  const weak = board.rows.find(({ concept }) => concept.has_exercises).concept.id;
  await tab('board');
  await hook(`board-row-${weak}`).click();
  await hook('assign-chosen').click();
  await hook('assign-give').waitFor();
  await at('assign-form');
  await hook('assign-give').click();
  await page.locator('main article').first().waitFor();
  await at('assign');

  // --- paper
  await tab('enter');
  await hook('enter-grid').waitFor();
  await at('enter');
  await hook('enter-seen').click();
  await at('enter-seen');
  await tab('print');
  await hook('print-save').waitFor();
  await hook('print-save').click();
  await at('print-faults');
  for (const what of ['seat_sheet', 'chart', 'table', 'slips']) {
    await hook(`print-what-${what}`).click();
    await page.locator(`[data-testid="print-what-${what}"][aria-checked=true]`).waitFor();
    if (what === 'chart' || what === 'seat_sheet') await hook('report-page').waitFor();
    await at(`print-${what}`);
  }
  await hook('print-what-report').click();
  await hook('print-report').waitFor();
  for (const report of REPORTS) {
    await hook('print-report').selectOption(report);
    await hook('report-page').waitFor();
    await page.waitForLoadState('networkidle');
    await at(`print-${report}`);
  }

  // --- files
  await tab('files');
  await hook('import-start').click();
  await hook('import-account').waitFor({ timeout: 120_000 });
  await at('files');

  // --- the class
  await tab('class');
  await part('seats');
  await at('class-seats');
  await first('seat-remove-').click();
  await hook('seat-remove-do').waitFor();
  await at('class-seat-remove');
  await leave();
  await hook('class-name').click();
  await hook('class-delete').click();
  await hook('class-delete-typed').waitFor();
  await at('class-delete');
  await leave();
  await part('calendar');
  await hook('year-change').click();
  await at('class-calendar');
  await part('rotation');
  await page.locator('button.concept').first().waitFor();
  await at('class-rotation');
  await hook('rotation-concepts').click();
  await hook('rotation-add').waitFor();
  await at('class-rotation-concepts');
  await part('rotation');
  await hook('first-lessons').click();
  await page.locator('input[type=date]').first().waitFor();
  await hook('pacing').click();
  await hook('pacing-text').fill('nothing of ours, 2026-10-05');
  await hook('pacing-read').click();
  await hook('pacing-account').waitFor();
  await at('class-first-lessons');
  await part('exercises');
  await hook('own-import-do').waitFor();
  await at('own-empty');
  await hook('own-concept').selectOption(weak);
  await bridge.post(
    '/test/pick',
    ['bridge-planks', 'rope-length', 'picture'].map((name) =>
      join(SAMPLES, `bank/qti/${name}.xml`),
    ),
  );
  await hook('own-import-do').click();
  await hook('own-import').first().waitFor();
  await at('own-exercises');
  await hook('own-list').locator('tbody button').first().click();
  await hook('own-try').waitFor();
  await hook('own-try').click();
  await at('own-player');
  await leave();
  await part('concepts');
  await bridge.post('/test/pick', [join(SAMPLES, 'catalogue/water-studies.case.json')]);
  await hook('own-concepts-pick').click();
  await hook('own-pick').locator('.drafts input[type=checkbox]').first().waitFor();
  await hook('own-pick').locator('.drafts input[type=checkbox]').first().check();
  await at('own-concepts');
  await part('pack');
  await hook('pack-save').click();
  await page.locator('main [role=status], .done, [role=status]').first().waitFor();
  await at('class-pack');
  await hook('slips-open').click();
  await hook('slips').locator('li').first().waitFor();
  await at('class-slips');

  // --- a new class, and the settings
  await tab('board');
  await page.locator('header select').first().selectOption('');
  await hook('new-class-create').waitFor();
  await hook('new-class-create').click();
  await at('new-class-faults');
  await tab('board');
  await page.locator('header .tools button').last().click();
  await hook('desk-safe').waitFor();
  await at('desk-settings');
  await leave();
}

/** The desk of a class of one's own, of which nothing has come in yet. */
export async function walkOwnDesk({ page, bridge, language }, at) {
  const hook = (name) => page.getByTestId(name);
  await setDevice(bridge, { language, guides_read: ['all'] });
  await page.goto(bridge.url);
  await page.locator(`html[lang=${language}]`).waitFor();
  await hook('start-teacher').click();
  for (const empty of ['board', 'talk', 'groups', 'assign', 'files']) {
    await hook(`tab-${empty}`).click();
    await page.locator('main h1').waitFor();
    await page.waitForLoadState('networkidle');
    await at(`empty-${empty}`);
  }
  await page.locator('header .tools button').nth(-2).click();
  await hook('desk-safe').click();
  await hook('remove-all').waitFor();
  await at('desk-safe');
  await hook('remove-all').click();
  await hook('sure-go').waitFor();
  await at('desk-remove-all');
  await page.keyboard.press('Escape');
}
