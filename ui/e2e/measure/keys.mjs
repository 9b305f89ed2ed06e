// The main work of every screen by keys alone, each from a fresh page.
import { openPage, SIZES } from '../bridge.mjs';
import { byKeys } from './by-keys.mjs';
import { PAGE } from './look.mjs';

async function fresh(browser, url) {
  const opened = await openPage(browser, url, SIZES.landscape, {
    hasTouch: false,
    isMobile: false,
    reducedMotion: 'reduce',
  });
  await opened.page.evaluate(PAGE);
  return opened;
}

/** Join, rate, practise, choose a focus, hand in, the tools, and leave. */
export async function studentByKeys({ browser, bridge, check, code, pack }) {
  const { page, context, trouble } = await fresh(browser, bridge.url);
  const keys = byKeys(page, check, 'student by keys');
  const { act, done, key, leave, to, type } = keys;
  const hook = (name) => page.getByTestId(name);
  const first = (start) => page.locator(`[data-testid^="${start}"]`).first();

  await hook('start-student').waitFor();
  await act('start-student', 'join-pick');
  await bridge.post('/test/pick', [pack]);
  await act('join-pick', 'join-next');
  await act('join-next', 'join-code');
  await to('join-code');
  await type(code);
  await key('Enter');
  await done('the code', 'join-nickname');
  await to('join-nickname');
  await type('Wren');
  await to('join-picture-');
  await key('ArrowRight');
  await done('an arrow', undefined);
  await act('join-finish', () => first('rate-').waitFor());

  const days = await page.locator('[data-testid^="rate-"][data-testid$="-0"]').count();
  for (let n = 0; n < days; n += 1) {
    await to('rate-');
    await key(n % 2 === 0 ? '1' : 'ArrowRight');
    await done('a rating', undefined);
    await act('outcome-', undefined, { by: n % 2 === 0 ? 'Enter' : 'Space' });
  }
  await hook('today-practice').waitFor();
  const rated = await page.locator('[role=radio][aria-checked=true]').count();
  check.that('a day rated by keys', rated === days, `${rated} of ${days}`);

  await act('tab-practice', 'practice-sure-0');
  for (let n = 0; n < 2; n += 1) {
    await to('practice-sure-');
    await key('2');
    await done('how sure', 'answer-submit');
    // The first way to answer has the keys already.
    const at = await page.evaluate(() => document.activeElement.tagName);
    if (at === 'INPUT') {
      const boxes = await page.locator('[data-testid^="answer-field-"]').count();
      for (let box = 0; box < boxes; box += 1) {
        if (box > 0) await to('answer-field-');
        await type('7');
      }
      await key('Enter');
      await done('Enter in the answer', () =>
        hook('practice-feedback').or(page.getByRole('alert')).first().waitFor(),
      );
    } else await key('ArrowRight');
    if (await hook('practice-hint').isVisible()) await act('practice-hint', undefined);
    if (await hook('practice-show-steps').isVisible())
      await act('practice-show-steps', 'practice-next');
    await act('practice-next', 'practice-sure-0', { back: true });
  }
  await act('practice-tools', 'tool-state');
  await to('tool-');
  await key('ArrowRight');
  await done('another tool', 'tool-state');
  await act('practice-tools', undefined, { back: true });
  await act('print-practice', 'own-print-save');
  await leave();
  await act('practice-stop', 'practice-summary');
  await act('tools-alone', 'tool-state');

  await act('tab-path', () => first('focus-').waitFor());
  await act('focus-', () => page.locator('[aria-pressed=true]').first().waitFor());
  await act('tab-handin', 'hand-in-make');
  await act('hand-in-make', 'hand-in-made');
  await act('student-settings', 'leave-student');
  await to('language-');
  await key('ArrowRight');
  await done('the language', () => page.locator('html[lang=es]').waitFor());
  await key('ArrowLeft');
  await done('the language', () => page.locator('html[lang=en]').waitFor());
  await to('theme-');
  await key('ArrowRight');
  await done('the theme', undefined);
  await act('safe-open', 'back-up');
  await act('back-up', 'passphrase');
  await leave();
  await act('remove-student', 'sure-go');
  await leave();
  await act('leave-student', () => first('student-').waitFor());
  await act('student-', 'tab-today');
  check.none('student by keys: no errors', trouble);
  console.log(`student by keys: ${keys.stops()} stops looked at`);
  await context.close();
}

/** Open the desk, a cell of the board, groups, an assignment, a paper chart. */
export async function teacherByKeys({ browser, bridge, check }) {
  const { page, context, trouble } = await fresh(browser, bridge.url);
  const keys = byKeys(page, check, 'teacher by keys');
  const { act, done, key, leave, to, type } = keys;
  const first = (start) => page.locator(`[data-testid^="${start}"]`).first();

  await page.getByTestId('bar-teacher').waitFor();
  await act('bar-teacher', 'tab-board');
  await act('tab-board', () => first('board-row-').waitFor());
  await to('line-');
  await key('ArrowDown');
  await done('an arrow', undefined);
  await key('Tab');
  await done('Tab to a cell', undefined);
  await key('Enter');
  await done('a cell of the board', 'concept-pass');
  await act('assign-chosen', 'assign-give');
  await act('assign-give', () => page.locator('main article').first().waitFor());
  await act('tab-groups', 'groups-suggest');
  await act('groups-suggest', 'groups-sum');
  await act('group-page-0', 'group-page');
  await leave();
  await act('groups-keep', () => first('record-').waitFor());
  await act('record-', undefined);
  await act('tab-enter', 'enter-grid');
  const row = () => page.locator('[data-cell^="0-"]').allInnerTexts();
  const before = await row();
  await to('cell-');
  await type('0123');
  await done('ratings typed in', undefined);
  await key('ArrowDown');
  await done('an arrow in the chart', undefined);
  const after = await row();
  check.that(
    'the paper chart takes keys',
    after.filter((words, at) => words !== before[at]).length >= 3,
    [before, after],
  );
  await act('tab-talk', () => first('talk-show-').waitFor());
  await act('talk-show-', 'projector-next');
  await key('ArrowRight');
  await done('the next step', undefined);
  await leave();
  for (const tab of ['assign', 'print', 'files', 'class'])
    await act(`tab-${tab}`, () => page.locator('main h1').waitFor());
  await act('class-rotation', () => page.locator('button.concept').first().waitFor());
  await act('class-pack', 'pack-save');
  await act('pack-save', undefined);
  await act('class-seats', () => first('seat-remove-').waitFor());
  await act('seat-remove-', 'seat-remove-do');
  await leave();
  await act('tab-board', () => first('board-row-').waitFor(), { back: true });
  await act('part-compare', () => first('student-page-').waitFor());
  await act('student-page-', () => page.locator('tbody tr').first().waitFor());
  await key('Escape');
  await done('Escape', () => first('student-page-').waitFor());
  check.none('teacher by keys: no errors', trouble);
  console.log(`teacher by keys: ${keys.stops()} stops looked at`);
  await context.close();
}
