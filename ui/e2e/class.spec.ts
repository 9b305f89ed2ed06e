// A new class, its pack, and all later changes of a class.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import type { Bridge } from './bridge';
import { openDesk, said, scan, undo, YEAR } from './desk';
import { expect, test } from './fixtures';
import { createClass } from './own-class';
import { SAMPLE_DAY } from './places';
import { DESK } from './sizes';

test.use({ ...DESK, today: SAMPLE_DAY });

const TITLE = 'Room 4, Willow Bend';

async function openClass(page: Page, bridge: Bridge, ...ids: string[]): Promise<string> {
  const names = ['Amina', 'Bao', 'Carlos', ''];
  const id = await createClass(bridge, { title: TITLE, names, year: YEAR, grades: [4] });
  await openDesk(page, 'tab-class', ...ids);
  return id;
}

const placed = (page: Page) => page.locator('button.concept');

test('a new class, its guide, and its pack', async ({ page, bridge, hook }) => {
  await openDesk(page);
  await test.step('a first guide says what the screen is for, and does not come back', async () => {
    await expect(hook('guide')).toBeVisible();
    await hook('guide-close').click();
    await expect(hook('guide')).toHaveCount(0);
    const { settings } = await bridge.call('start', {});
    expect(settings.guides_read).toEqual(['new-class']);
  });

  await test.step('the ? key opens the guide and gives it the keys, Escape gives them back', async () => {
    await hook('guide-open').press('?');
    await expect(page.locator('[data-testid=guide]:focus-within')).toBeVisible();
    await scan(page, 'guide');
    await page.keyboard.press('Escape');
    await expect(hook('guide')).toHaveCount(0);
    await expect(hook('guide-open')).toBeFocused();
    // In a field the key types.
    await hook('new-class-name').press('?');
    await expect(hook('new-class-name')).toHaveValue('?');
    await expect(hook('guide')).toHaveCount(0);
    await hook('new-class-name').fill('');
    await hook('guide-open').click();
    await expect(hook('guide')).toBeVisible();
    await hook('guide-open').click();
    await expect(hook('guide')).toHaveCount(0);
  });

  await test.step('faults are marked, and the first gets the focus', async () => {
    await hook('new-class-create').click();
    await said(page, '3 things are missing or do not fit');
    await expect(hook('new-class-name')).toBeFocused();
  });

  let concepts = 0;
  await test.step('a pasted roster becomes seats, and the totals follow', async () => {
    await hook('new-class-name').fill(TITLE);
    await hook('new-class-roster').fill('1. Amina\nBao\tbao@example.org\n\t555\nCarlos');
    await said(page, '3 students.');
    await said(page, 'No name was found here');
    await hook('new-class-first-day').fill(YEAR.first_day);
    await hook('new-class-last-day').fill(YEAR.last_day);
    await hook('new-class-grade-4').check();
    const sums = page.locator('aside dd');
    await expect(sums.nth(0)).toHaveText('3');
    await expect(sums.nth(1)).toHaveText('180');
    await expect(sums.nth(2)).toHaveText('18');
    concepts = Number(await sums.nth(3).innerText());
    await scan(page, 'new class, filled in');
  });

  await test.step('the class is as the totals said', async () => {
    await hook('new-class-create').click();
    await said(page, 'is ready. Two things are left');
    await hook('class-calendar').click();
    await said(page, '180 school days, 18 passes of 10 days');
    await hook('class-rotation').click();
    await expect(placed(page)).toHaveCount(concepts);
    await hook('class-seats').click();
    await expect(page.locator('tbody tr')).toHaveCount(3);
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    await said(page, '1 seat was added');
    await expect(page.locator('tbody tr'), 'a seat without a name').toHaveCount(4);
  });

  await test.step('empty screens teach', async () => {
    for (const [tab, words] of [
      ['now', 'Nothing has been handed in yet'],
      ['board', 'The board will show your class here'],
      ['files', 'Every file gets a line here'],
      ['assign', 'Assigned practice will be listed here'],
    ]) {
      await hook(`tab-${tab}`).click();
      await said(page, words ?? '');
    }
  });

  await test.step('a cancelled or failed save of the pack is reported in words', async () => {
    await hook('tab-class').click();
    await hook('class-pack').click();
    await bridge.save('decline');
    await hook('pack-save').click();
    await said(page, 'No file was written');
    await bridge.save('unwritable');
    await hook('pack-save').click();
    await expect(page.getByRole('alert')).toBeVisible();
    await scan(page, 'a pack that cannot be written');
    await hook('pack-save').click();
    await said(page, /was saved\./);
    const names = (await bridge.saved()).map(({ name }) => name);
    expect(names).toEqual([expect.stringMatching(/\.sfclass$/)]);
  });

  await test.step('the pack is there after a restart', async () => {
    await openDesk(page, 'tab-class', 'class-pack');
    await said(page, /^Class pack \d+$/);
    await said(page, 'up to date');
  });
});

test('a class is renamed, and the rename undone', async ({ page, bridge, hook }) => {
  await openClass(page, bridge, 'class-pack', 'pack-save');
  await said(page, /was saved\./);
  await hook('class-name').click();
  await scan(page, 'name of the class');
  await page.getByLabel('Name of the class').fill('Room 5, Willow Bend');
  await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
  const title = (name: string) => page.getByRole('heading', { level: 1, name });
  await expect(title('Room 5, Willow Bend')).toBeVisible();
  await expect(hook('class-pack').getByText('changed')).toBeVisible();
  await undo(page);
  await expect(title(TITLE)).toBeVisible();
});

test('the calendar: closed days, dates and weekdays', async ({ page, bridge, hook }) => {
  await openClass(page, bridge, 'class-calendar');
  await page.getByLabel('From', { exact: true }).fill('2026-12-21');
  await page.getByLabel('To (if more than one day)').fill('2027-01-01');
  await page.getByRole('button', { name: 'No school then' }).click();
  await said(page, '170 school days, 17 passes of 10 days');
  await scan(page, 'closed days');

  await test.step('dates and weekdays change, the effect is shown, and undo restores them', async () => {
    await hook('year-change').click();
    const last = page.getByLabel('Last day');
    const save = page.getByRole('button', { name: 'Save' });
    await last.fill('2027-04-30');
    await page.getByRole('checkbox', { name: 'Fri' }).uncheck();
    await said(page, '(now 170 and 17)');
    await last.fill('2026-08-01');
    await said(page, 'The last day comes before the first.');
    await expect(save).toBeDisabled();
    await last.fill('2027-04-30');
    await save.click();
    await said(page, '132 school days, 14 passes of 10 days');
    await undo(page);
    await said(page, '170 school days, 17 passes of 10 days');
  });
});

test('concepts and whole grades leave and join the rotation', async ({ page, bridge, hook }) => {
  await openClass(page, bridge, 'class-rotation', 'rotation-concepts');
  const concepts = (part: string) => hook(part).locator('label:not(.whole)').getByRole('checkbox');
  const grades = (part: string) => hook(part).locator('.whole').getByRole('checkbox');
  const [add, takeOut] = ['rotation-add', 'rotation-take-out'] as const;
  await expect(placed(page).first()).toBeVisible();
  const before = await placed(page).count();

  await test.step('the rotation is never left empty', async () => {
    await grades(takeOut).first().check();
    await expect(hook('rotation-take-out-do')).toBeDisabled();
    await grades(takeOut).first().uncheck();
  });

  await test.step('one concept', async () => {
    await concepts(takeOut).first().check();
    await hook('rotation-take-out-do').click();
    await said(page, 'is no longer in the rotation');
    await expect(placed(page)).toHaveCount(before - 1);
    await undo(page);
    await expect(placed(page)).toHaveCount(before);
    await concepts(add).first().check();
    await hook('rotation-add-do').click();
    await said(page, 'was added to day');
    await expect(placed(page)).toHaveCount(before + 1);
  });

  await test.step('five concepts at once', async () => {
    for (const at of [0, 1, 2, 3, 4]) await concepts(takeOut).nth(at).check();
    await scan(page, 'five concepts are chosen');
    await hook('rotation-take-out-do').click();
    await said(page, '5 concepts are no longer in the rotation');
    await expect(placed(page)).toHaveCount(before - 4);
    await undo(page);
    await expect(placed(page)).toHaveCount(before + 1);
  });

  await test.step('a whole grade at once', async () => {
    const words = await hook(add).locator('.whole').first().innerText();
    const many = Number(/\((\d+)\)/.exec(words)?.[1]);
    await grades(add).first().check();
    await hook('rotation-add-do').click();
    await said(page, 'were added to the lightest days');
    await expect(placed(page)).toHaveCount(before + 1 + many);
    await undo(page);
    await expect(placed(page)).toHaveCount(before + 1);
  });
});

test('an uneven rotation is reported, and spread evenly again', async ({ page, bridge, hook }) => {
  await openClass(page, bridge, 'class-rotation');
  const uneven = hook('rotation-checks').locator('.look');
  const days = page.locator('.days > section');
  const sizes = () =>
    days.evaluateAll((all) => all.map((one) => one.querySelectorAll('button.concept').length));
  await expect(hook('rotation-checks').locator('li')).toHaveCount(3);
  const first = days.first().locator('button.concept');
  for (let turn = 0; turn < 3; turn += 1) {
    const left = (await first.count()) - 1;
    await first.first().press('Alt+ArrowRight');
    await expect(first).toHaveCount(left);
  }
  await said(page, 'The days are uneven');
  await scan(page, 'an uneven rotation');
  await expect(uneven.first()).toBeVisible();
  const before = await sizes();
  await hook('rotation-balance').click();
  await said(page, 'spread evenly over 10 days');
  const after = await sizes();
  expect(Math.max(...after) - Math.min(...after)).toBeLessThanOrEqual(1);
  await expect(uneven).toHaveCount(0);
  await undo(page);
  await expect.poll(sizes).toEqual(before);
  await hook('rotation-days').fill('8');
  await hook('rotation-balance').click();
  await said(page, 'spread evenly over 8 days');
  await undo(page);
  await expect.poll(sizes).toEqual(before);

  await test.step('a concept is dragged to another day', async () => {
    // Both days must be visible: scrolling during the drag would drag something else.
    await page.setViewportSize({ width: 1280, height: 1800 });
    const dragged = days.nth(4).locator('li').first();
    const title = (await dragged.innerText()).split('\n')[1] ?? '';
    await dragged.dragTo(days.nth(6));
    await said(page, 'is on day 7 now');
    await expect(days.nth(6)).toContainText(title);
    await undo(page);
    await expect(days.nth(4)).toContainText(title);
  });
});

test('a pacing list sets first lessons at once, and undo restores them', async ({
  page,
  bridge,
  hook,
}) => {
  const id = await openClass(page, bridge, 'class-rotation', 'first-lessons');
  const setup = async () => (await bridge.call('class_setup', { class: id })).rotation.flat();
  const before = await setup();
  const [a, b, c] = before.map((one) => one.concept);
  await hook('pacing').click();
  await hook('pacing-text').fill(
    `${a?.title}\t2026-10-05\n2026-10-12\n${b?.title}\n"${c?.id}", 10/13/2026\nNothing of ours, 2026-10-05`,
  );
  await hook('pacing-read').click();
  await said(page, '3 first lessons were found');
  await said(page, 'One line cannot be used');
  await hook('pacing-set').click();
  await said(page, '3 first lessons were set');
  const dates = (await setup()).slice(0, 3).map((one) => one.taught_from);
  expect(dates).toEqual(['2026-10-05', '2026-10-12', '2026-10-13']);
  await undo(page);
  expect(await setup()).toEqual(before);
});

test('a pacing list as teachers have it is understood before it is taken', async ({
  page,
  bridge,
  hook,
}) => {
  const id = await openClass(page, bridge, 'class-rotation', 'first-lessons');
  const lesson = async (concept: string) =>
    (await bridge.call('class_setup', { class: id })).rotation
      .flat()
      .find((one) => one.concept.id === concept)?.taught_from;
  await hook('pacing').click();
  await hook('pacing-text').fill(
    'Week 3\nRounding large numbers\n4.OA.C.5 9/8\nFactor pairs, last year',
  );
  await hook('pacing-read').click();
  await said(page, '2 first lessons were found');
  await said(page, 'One line is close to a title');
  await said(page, 'taught last year');
  await scan(page, 'a pacing list with a near title');
  await hook('pacing-near-0').selectOption('g4-round');
  await said(page, 'Set these 3 first lessons');
  await hook('pacing-day-first').check();
  await said(page, 'The date is outside the school year');
  await hook('pacing-day-first').uncheck();
  await said(page, '2 first lessons were found');
  await hook('pacing-near-0').selectOption('g4-round');
  await hook('pacing-set').click();
  await said(page, '3 first lessons were set');
  expect(await lesson('g4-pattern-rule')).toBe('2026-09-08');
  expect(await lesson('g4-factor-pairs')).toBe(YEAR.first_day);
});

test('a seat is removed after a question, and restored', async ({ page, bridge, hook }) => {
  await openClass(page, bridge, 'class-seats');
  const seats = page.locator('tbody th');
  const remove = async () => {
    await hook('seat-remove-2').click();
    await hook('seat-remove-do').click();
    await said(page, 'Bao is no longer in the class');
    await expect(seats, 'the others keep their numbers').toHaveText(['1', '3', '4']);
  };
  await hook('seat-remove-2').click();
  await said(page, 'Nothing has come from this seat yet');
  await page.getByRole('dialog').getByRole('button', { name: 'Cancel' }).click();
  await expect(seats).toHaveCount(4);

  await test.step('by undo', async () => {
    await remove();
    await expect(hook('removed')).toBeVisible();
    await undo(page);
    await expect(seats).toHaveText(['1', '2', '3', '4']);
    await expect(hook('removed'), 'nothing can be restored any more').toHaveCount(0);
  });
  await test.step('by the notice', async () => {
    await remove();
    await hook('tab-board').click();
    await hook('tab-class').click();
    await scan(page, 'a seat removed');
    await hook('removed-restore').click();
    await said(page, 'It is restored, as it was.');
    await expect(seats).toHaveText(['1', '2', '3', '4']);
  });
  await test.step('after discarding, it cannot be restored', async () => {
    await remove();
    await hook('removed-discard').click();
    await expect(hook('removed')).toHaveCount(0);
    await expect(bridge.call('restore_removed', { number: 1 })).rejects.toThrow('422');
  });
});

test('seats from a table, and a second class from OneRoster', async ({ page, bridge, hook }) => {
  const roster = (name: string, lines: string[]) => {
    const path = join(bridge.data, name);
    writeFileSync(path, lines.join('\r\n'));
    return path;
  };
  await openClass(page, bridge, 'class-rotation');
  await expect(placed(page).first()).toBeVisible();
  const concepts = await placed(page).count();

  await test.step('only the names of a table are read', async () => {
    await hook('class-seats').click();
    const late = ['Id;Nombre;Correo', '7;Dara;dara@example.org', '8;Eli;e@x'];
    await bridge.pick(roster('late.csv', late));
    await hook('roster-file').click();
    await expect(hook('roster-name-2')).toHaveValue('Dara');
    await expect(hook('roster-name-3')).toHaveValue('Eli');
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    await said(page, '2 seats were added');
  });

  await test.step('a second class copies the rotation', async () => {
    const user = (id: string, name: string) =>
      `${id},,,true,s,student,${id},,${name},Invented,,,${id}@example.org,,,,04,secret`;
    const enrolled = (user_id: string, class_id: string) =>
      `e${user_id},,,${class_id},s,${user_id},student,,,`;
    await page.getByRole('combobox', { name: 'Class' }).selectOption('');
    await bridge.pick(
      roster('users.csv', [
        'sourcedId,status,dateLastModified,enabledUser,orgSourcedIds,role,username,userIds,givenName,familyName,middleName,identifier,email,sms,phone,agentSourcedIds,grades,password',
        user('u1', 'Fay'),
        user('u2', 'Gus'),
        user('u3', 'Hana'),
      ]),
      roster('enrollments.csv', [
        'sourcedId,status,dateLastModified,classSourcedId,schoolSourcedId,userSourcedId,role,primary,beginDate,endDate',
        enrolled('u1', 'c1'),
        enrolled('u2', 'c2'),
        enrolled('u3', 'c2'),
      ]),
      roster('classes.csv', [
        'sourcedId,status,dateLastModified,title,grades,courseSourcedId,classCode,classType,location,schoolSourcedId,termSourcedIds,subjects,subjectCodes,periods',
        'c1,,,Room 8,04,k,,homeroom,,s,t,,,',
        'c2,,,Room 9,04,k,,homeroom,,s,t,,,',
      ]),
    );
    await hook('roster-file').click();
    await expect(hook('roster-class-1')).toBeVisible();
    await scan(page, 'classes of a roster');
    await hook('roster-class-1').click();
    await said(page, '2 students.');
    await expect(hook('new-class-name'), 'the title came along').toHaveValue('Room 9');
    await hook('new-class-copy').selectOption({ label: TITLE });
    await expect(hook('new-class-grade-4')).toHaveCount(0);
    await scan(page, 'a class by another');
    await hook('new-class-create').click();
    await said(page, 'Room 9 is ready');
    await hook('class-rotation').click();
    await expect(placed(page)).toHaveCount(concepts);
    const { classes } = await bridge.call('start', {});
    const stored = await Promise.all(
      classes.map(({ id }) => bridge.call('class_setup', { class: id })),
    );
    expect(JSON.stringify(stored), 'nothing else of the file').not.toMatch(/secret|@|Invented/);
  });
});

test('a roster is shown as it was understood, and twins are asked', async ({
  page,
  bridge,
  hook,
}) => {
  await openClass(page, bridge);
  await page.getByRole('combobox', { name: 'Class' }).selectOption('');
  await hook('new-class-name').fill('Room 7');
  await hook('new-class-roster').fill(
    'Period 2\nPatel, Anika\nRuiz, Ana\nLopez, Ana\nTran, Bao\nTran, Bao\n李明\nمحمد علي',
  );
  await said(page, '7 students.');
  await said(page, 'A heading, not a student');
  await expect(hook('roster-name-2')).toHaveValue('Anika');
  await expect(hook('roster-name-3')).toHaveValue('Ana R.');
  await expect(hook('roster-name-4')).toHaveValue('Ana L.');
  await scan(page, 'a roster in the table');
  await hook('new-class-create').click();
  await said(page, 'Answer the questions in the table of names first');
  await hook('roster-one-0').click();
  await said(page, '6 students.');
  await hook('roster-name-2').fill('x'.repeat(41));
  await said(page, 'This name has 41 letters, and 40 fit');
  await hook('roster-name-2').fill('Ani');
  await hook('new-class-copy').selectOption({ label: TITLE });
  await expect(hook('new-class-first-day'), 'the calendar came along').toHaveValue(YEAR.first_day);
  await hook('new-class-create').click();
  await said(page, 'Room 7 is ready');
  const { classes } = await bridge.call('start', {});
  const made = classes.find(({ title }) => title === 'Room 7');
  const setup = await bridge.call('class_setup', { class: made?.id ?? '' });
  expect(setup.seats.map(({ name }) => name)).toEqual([
    'Ani',
    'Ana R.',
    'Ana L.',
    'Bao',
    '李明',
    'محمد',
  ]);
});

test('a class is deleted only when its name was typed', async ({ page, bridge, hook }) => {
  await createClass(bridge, { title: 'Room 9', year: YEAR });
  await openClass(page, bridge);
  const classes = page.getByRole('combobox', { name: 'Class' });
  await classes.selectOption(TITLE);
  await hook('class-name').click();
  await hook('class-delete').click();
  const go = page.getByRole('dialog').getByRole('button', { name: 'Delete', exact: true });
  await expect(go).toBeDisabled();
  await hook('class-delete-typed').fill(TITLE.toLowerCase());
  await go.click();
  await said(page, `${TITLE} was deleted`);
  await expect(classes.locator('option')).toHaveCount(2);
  await expect(classes.locator('option').first()).toHaveText('Room 9');
  await undo(page);
  await expect(classes.locator('option')).toHaveCount(3);
});
