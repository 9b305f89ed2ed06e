// The teacher's work by keys alone, on the sample class.
import { expect, test } from './fixtures';
import { byKeys } from './measure/by-keys';
import { DESK } from './sizes';

test.use(DESK);

test('a teacher does everything by keys alone', async ({ page, hook, hooks }) => {
  const { act, done, key, leave, to, type } = byKeys(page);
  await page.goto('/');
  await expect(hook('bar-teacher')).toBeVisible();

  await test.step('a cell of the board, and practice assigned from it', async () => {
    await act('bar-teacher', 'tab-board');
    await act('tab-board', hooks('board-row-'));
    await to('line-');
    await key('ArrowDown');
    await done('an arrow');
    await key('Tab');
    await done('Tab to a cell');
    await key('Enter');
    await done('a cell of the board', 'concept-pass');
    await act('assign-chosen', 'assign-give');
    await act('assign-give', page.locator('main article'));
  });

  await test.step('groups', async () => {
    await act('tab-groups', 'groups-suggest');
    await act('groups-suggest', 'groups-sum');
    await act('group-page-0', 'group-page');
    await leave();
    await act('groups-keep', hooks('record-'));
    await act('record-');
  });

  await test.step('the paper chart', async () => {
    await act('tab-enter', 'enter-grid');
    const row = () => page.locator('[data-cell^="0-"]').allInnerTexts();
    const before = await row();
    await to('cell-');
    await type('0123');
    await done('ratings typed in');
    await key('ArrowDown');
    await done('an arrow in the chart');
    const changed = (await row()).filter((words, at) => words !== before[at]);
    expect(changed.length, 'the chart takes keys').toBeGreaterThanOrEqual(3);
  });

  await test.step('the projector', async () => {
    await act('tab-talk', hooks('talk-show-'));
    await act('talk-show-', 'projector-next');
    await key('ArrowRight');
    await done('the next step');
    await leave();
  });

  await test.step('the class and its students', async () => {
    for (const tab of ['assign', 'print', 'files', 'class'])
      await act(`tab-${tab}`, page.locator('main h1'));
    await act('class-rotation', page.locator('button.concept'));
    await act('class-pack', 'pack-save');
    await act('pack-save');
    await act('class-seats', hooks('seat-remove-'));
    await act('seat-remove-', 'seat-remove-do');
    await leave();
    await act('tab-board', hooks('board-row-'), { back: true });
    await act('part-compare', 'compare-by-student');
    await act('compare-by-student', hooks('student-page-'));
    await act('student-page-', page.locator('tbody tr'));
    await key('Escape');
    await done('Escape', 'compare-by-student');
  });
});
