// Every screen of the teacher's desk: with the sample class, and with a class without
// hand-ins.
import { join } from 'node:path';
import { expect } from '@playwright/test';
import { choose, finders, leaveDialog } from '../finders';
import { createClass } from '../own-class';
import { SAMPLES } from '../places';
import { type At, openIn, type Way } from './way';

export async function walkTeacher(way: Way, at: At): Promise<void> {
  const { page, bridge } = way;
  const { hook, hooks } = finders(page);
  const row = page.locator('tbody tr').first();
  const title = page.locator('main h1');
  const tab = async (name: string) => {
    await hook(`tab-${name}`).click();
    await expect(title).toBeVisible();
  };
  const part = async (name: string) => {
    await hook(`class-${name}`).click();
    await expect(hook(`class-${name}`)).toHaveAttribute('aria-current');
  };

  await openIn(way);
  await hook('bar-teacher').click();
  const sample = (await bridge.call('start', {})).classes[0]?.id ?? '';

  // --- the sentences, and the day of the class
  await expect(hook('now-sentences')).toBeVisible();
  await at('now');
  await hooks('now-who-').first().click();
  await hook('now-lacking').click();
  await expect(hook('who-has-not')).toBeVisible();
  await at('now-open');
  await hook('now-lacking').click();
  await hook('day-close').click();
  await expect(hook('day-open')).toBeVisible();
  await hook('day-other').click();
  await at('now-no-school');
  await hook('day-other').click();
  await hook('day-open').click();
  await expect(hook('day-close')).toBeVisible();

  // --- the board and its concepts and students
  await tab('board');
  await expect(hooks('board-row-').first()).toBeVisible();
  await hook('days-ahead').locator('summary').click();
  await expect(hook('day-plan-0')).toBeVisible();
  await at('board');
  await hook('days-ahead').locator('summary').click();
  await hook('board-columns').click();
  for (const column of ['ratings', 'results', 'practice'])
    await hook(`board-column-${column}`).check();
  await at('board-columns');
  for (const column of ['ratings', 'results', 'practice'])
    await hook(`board-column-${column}`).uncheck();
  await hook('board-columns').click();
  await hook('guide-open').click();
  await expect(hook('guide')).toBeVisible();
  await at('board-guide');
  await hook('guide-open').click();
  await hook('board-group').click();
  await expect(page.locator('details .seats label').first()).toBeVisible();
  await at('board-group');
  await hook('board-group').click();
  await page.locator('tbody td[class*="shade-"] button').first().click();
  await expect(hook('concept-pass')).toBeVisible();
  await at('concept-pass');
  await tab('board');
  await hooks('board-row-').first().click();
  await expect(row).toBeVisible();
  await at('concept');
  await tab('board');
  await hook('part-compare').click();
  await expect(hooks('compare-concept-').first()).toBeVisible();
  await hooks('compare-concept-').first().locator('summary').first().click();
  await at('compare');
  await hook('compare-statistics').locator('summary').click();
  await hook('compare-by-student').click();
  await expect(row).toBeVisible();
  await at('compare-students');
  await hooks('student-page-').first().click();
  await expect(row).toBeVisible();
  await at('student');

  // --- the talk and the projector
  await tab('talk');
  await expect(hooks('talk-show-').first()).toBeVisible();
  await at('talk');
  await hooks('talk-show-').first().click();
  await expect(hook('projector-next')).toBeVisible();
  await at('projector');
  for (let n = 0; n < 3 && !(await hook('projector-steps').isVisible()); n += 1)
    await hook('projector-next').click();
  await at('projector-open');
  await leaveDialog(page);

  // --- the warm-up
  await hook('warm-up-open').click();
  await expect(hooks('warm-up-swap-').first()).toBeVisible();
  await at('warm-up');
  await hook('warm-up-all').click();
  await hook('wall-answers').click();
  await expect(hooks('wall-answer-').first()).toBeVisible();
  await at('warm-up-all');
  await leaveDialog(page);

  // --- groups
  await tab('groups');
  await expect(hook('groups-suggest')).toBeVisible();
  const wishes = page.locator('main details').first();
  if (!(await wishes.evaluate((one) => (one as HTMLDetailsElement).open)))
    await wishes.locator('summary').click();
  await at('groups-wishes');
  await hook('groups-suggest').click();
  await expect(hook('groups-sum')).toBeVisible();
  await expect(page.locator('main progress')).toHaveCount(0, { timeout: 60_000 });
  await at('groups');
  await hook('group-page-0').click();
  await expect(hook('group-page')).toBeVisible();
  await at('group-page');
  await leaveDialog(page);
  await hook('groups-keep').click();
  await expect(hooks('record-').first()).toBeVisible();
  await at('groups-kept');
  await hooks('groups-show-').first().click();
  await expect(hook('groups-shown')).toBeVisible();
  await at('groups-shown');
  await leaveDialog(page);
  await hook('taught-open').click();
  await expect(hooks('taught-entry-').first()).toBeVisible();
  await at('taught');
  await hook('taught-add').click();
  await expect(hook('taught-note')).toBeVisible();
  await hook('taught-some').check();
  await at('taught-form');
  await leaveDialog(page);

  // --- assigned practice
  const { rows } = await bridge.call('board', { class: sample });
  const weak = rows.find(({ concept }) => concept.has_exercises)?.concept.id ?? '';
  await tab('board');
  await hook(`board-row-${weak}`).click();
  await hook('assign-chosen').click();
  await expect(hook('assign-give')).toBeVisible();
  await at('assign-form');
  await hook('assign-give').click();
  await expect(page.locator('main article').first()).toBeVisible();
  await at('assign');

  // --- paper
  await tab('enter');
  await expect(hook('enter-grid')).toBeVisible();
  await at('enter');
  await hook('enter-seen').click();
  await at('enter-seen');
  await tab('print');
  await hook('print-save').click();
  await at('print-faults');
  await page.locator('main form select').first().selectOption({ index: 1 });
  const reports = await bridge.call('reports', {});
  for (const { name, section, previewed } of reports) {
    await choose(page, `print-what-${section}`);
    if (reports.filter((one) => one.section === section).length > 1)
      await hook('print-report').selectOption(name);
    await expect(hook('report-page')).toHaveCount(previewed ? 1 : 0);
    await at(`print-${name}`);
  }

  // --- files
  await tab('files');
  await hook('import-start').click();
  await expect(hook('import-report')).toBeVisible({ timeout: 120_000 });
  await at('files');

  // --- the class
  await tab('class');
  await part('seats');
  await at('class-seats');
  await hooks('seat-remove-').first().click();
  await expect(hook('seat-remove-do')).toBeVisible();
  await at('class-seat-remove');
  await leaveDialog(page);
  await hook('class-name').click();
  await hook('class-delete').click();
  await expect(hook('class-delete-typed')).toBeVisible();
  await at('class-delete');
  await leaveDialog(page);
  await part('calendar');
  await hook('year-change').click();
  await at('class-calendar');
  await part('rotation');
  await expect(page.locator('button.concept').first()).toBeVisible();
  await at('class-rotation');
  await hook('rotation-concepts').click();
  await expect(hook('rotation-add')).toBeVisible();
  await at('class-rotation-concepts');
  await part('rotation');
  await hook('first-lessons').click();
  await expect(page.locator('input[type=date]').first()).toBeVisible();
  await hook('pacing').click();
  await hook('pacing-text').fill('nothing of ours, 2026-10-05');
  await hook('pacing-read').click();
  await expect(hook('pacing-result')).toBeVisible();
  await at('class-first-lessons');
  await part('exercises');
  await expect(hook('own-import-do')).toBeVisible();
  await at('own-empty');
  await hook('own-concept').selectOption(weak);
  await bridge.pick(
    ...['bridge-planks', 'rope-length', 'picture'].map((name) =>
      join(SAMPLES, `bank/qti/${name}.xml`),
    ),
  );
  await hook('own-import-do').click();
  await expect(hook('own-import').first()).toBeVisible();
  await at('own-exercises');
  await hook('own-list').locator('tbody button').first().click();
  await hook('own-try').click();
  await at('own-player');
  await leaveDialog(page);
  await part('concepts');
  await bridge.pick(join(SAMPLES, 'catalogue/water-studies.case.json'));
  await hook('own-concepts-pick').click();
  await hook('own-pick').locator('.drafts input[type=checkbox]').first().check();
  await at('own-concepts');
  await part('pack');
  await hook('pack-save').click();
  await expect(page.getByRole('status').first()).toBeAttached();
  await at('class-pack');
  await hook('slips-open').click();
  await expect(hook('slips').locator('li').first()).toBeVisible();
  await at('class-slips');

  // --- a new class, and the settings
  await tab('board');
  await page.locator('header select').first().selectOption('');
  await hook('new-class-create').click();
  await at('new-class-faults');
  await tab('board');
  await page.locator('header .tools button').last().click();
  await expect(hook('desk-safe')).toBeVisible();
  await at('desk-settings');
  await leaveDialog(page);
}

/** The desk of a class without hand-ins. */
export async function walkOwnDesk(way: Way, at: At): Promise<void> {
  const { page, bridge } = way;
  const { hook, hooks } = finders(page);
  await createClass(bridge, { title: 'Room 4', names: ['Ottilie', ''] });
  await openIn(way);
  await hook('start-teacher').click();
  for (const empty of ['now', 'board', 'talk', 'groups', 'assign', 'files']) {
    await hook(`tab-${empty}`).click();
    await expect(page.locator('main h1')).toBeVisible();
    await at(`empty-${empty}`);
  }
  await hook('tab-groups').click();
  await hook('taught-open').click();
  await expect(hook('taught-add')).toBeVisible();
  await at('empty-taught');
  await hook('tab-class').click();
  await hook('class-seats').click();
  await hooks('seat-move-').first().click();
  await expect(hook('move-to-class')).toBeVisible();
  await at('class-move');
  await hook('transfer-open').click();
  await expect(hook('transfer-holds')).toBeVisible();
  await at('class-transfer');
  await page.keyboard.press('Escape');
  await page.locator('header .tools button').nth(-2).click();
  await hook('desk-safe').click();
  await expect(hook('remove-all')).toBeVisible();
  await at('desk-safe');
  await hook('remove-all').click();
  await expect(hook('sure-go')).toBeVisible();
  await at('desk-remove-all');
  await page.keyboard.press('Escape');
}
