// From nothing to a class with its pack: the first minutes of a teacher, in Chromium.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { check, withDesk } from './desk-browser.mjs';

const rosters = mkdtempSync(join(tmpdir(), 'surefoot-rosters-'));
const roster = (name, lines) => {
  const path = join(rosters, name);
  writeFileSync(path, lines.join('\r\n'));
  return path;
};

await withDesk('2026-11-24', async ({ page, url, step, scan }) => {
  const hook = (name) => page.getByTestId(name);
  const save = (decision) =>
    page.request.post(new URL('/test/save', url).href, { data: JSON.stringify(decision) });

  await step('without a class, the desk offers to set one up', async () => {
    await hook('start-teacher').click();
    await hook('new-class-create').waitFor();
    await scan('new-class');
  });

  const post = async (path, body) =>
    (await page.request.post(new URL(path, url).href, { data: JSON.stringify(body) })).json();
  await step('a first guide says what the screen is for, and goes for good', async () => {
    await hook('guide').waitFor();
    await hook('guide-close').click();
    await hook('guide').waitFor({ state: 'detached' });
    const { settings } = await post('/call/start', {});
    check('it is noted on disk', settings.guides_read.join() === 'new-class', settings);
  });

  await step(
    'the ? key opens the guide, gives it the keys, and Escape gives them back',
    async () => {
      await hook('guide-open').focus();
      await page.keyboard.press('?');
      await hook('guide').waitFor();
      await page.waitForFunction(() => document.activeElement?.closest('[data-testid="guide"]'));
      await scan('guide-by-key');
      await page.keyboard.press('Escape');
      await hook('guide').waitFor({ state: 'detached' });
      await page.waitForFunction(() => document.activeElement?.dataset.testid === 'guide-open');
      // In a field it is a sign like any other.
      await hook('new-class-name').fill('');
      await hook('new-class-name').press('?');
      check('typed', (await hook('new-class-name').inputValue()) === '?');
      check('no guide', (await hook('guide').count()) === 0);
      await hook('new-class-name').fill('');
      await hook('guide-open').click();
      await hook('guide').waitFor();
      await hook('guide-open').click();
      await hook('guide').waitFor({ state: 'detached' });
    },
  );

  await step('what is missing is marked, and the first of it gets the keys', async () => {
    await hook('new-class-create').click();
    await page.getByText('3 things are missing or do not fit').waitFor();
    await page.waitForFunction(() => document.activeElement?.dataset.testid === 'new-class-name');
    await scan('new-class-faults');
  });

  await step('a pasted roster becomes seats, and the totals follow', async () => {
    await hook('new-class-name').fill('Room 4, Willow Bend');
    await hook('new-class-roster').fill('1. Amina\nBao\tbao@example.org\n\t555\nCarlos');
    await page.getByText('3 seats:').waitFor();
    await page.getByText('Left out, because it cannot be a name: line 3').waitFor();
    await hook('new-class-first-day').fill('2026-08-31');
    await hook('new-class-last-day').fill('2027-05-07');
    await hook('new-class-grade-4').check();
    const sums = await page.locator('aside dd').allInnerTexts();
    check('3 seats, 180 school days, 18 passes', sums.slice(0, 3).join() === '3,180,18', sums);
    await scan('new-class-filled');
  });

  let concepts = 0;
  await step('the class stands as the totals said', async () => {
    concepts = Number((await page.locator('aside dd').allInnerTexts())[3]);
    await hook('new-class-create').click();
    await page.getByText('stands. Two things are left').waitFor();
    await hook('class-calendar').click();
    await page.getByText('180 school days, 18 passes of 10 days').waitFor();
    await hook('class-rotation').click();
    await page.locator('button.concept').first().waitFor();
    const placed = await page.locator('button.concept').count();
    check('as many concepts as the totals said', placed === concepts, [placed, concepts]);
    await hook('class-seats').click();
    check('three seats', (await page.locator('tbody tr').count()) === 3);
  });

  await step('empty screens teach', async () => {
    await hook('tab-board').click();
    await page.getByText('The class picture will stand here').waitFor();
    await scan('empty-board');
    await hook('tab-files').click();
    await page.getByText('Every file will get its line here').waitFor();
    await scan('empty-files');
    await hook('tab-assign').click();
    await page.getByText('Assigned practice will stand here').waitFor();
    await scan('empty-assign');
  });

  await step('a seat is added without a name', async () => {
    await hook('tab-class').click();
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    await page.getByText('1 seat was added').waitFor();
    check('four seats', (await page.locator('tbody tr').count()) === 4);
  });

  await step('days without school are closed as a range', async () => {
    await hook('class-calendar').click();
    await page.getByLabel('From', { exact: true }).fill('2026-12-21');
    await page.getByLabel('To (if more than one day)').fill('2027-01-01');
    await page.getByRole('button', { name: 'No school then' }).click();
    await page.getByText('170 school days, 17 passes of 10 days').waitFor();
    await scan('closures');
  });

  await step('a pack that is not saved, or cannot be, is said in words', async () => {
    await hook('class-pack').click();
    await save('decline');
    await hook('pack-save').click();
    await page.getByText('No file was written').waitFor();
    await save('unwritable');
    await hook('pack-save').click();
    await page.getByRole('alert').waitFor();
    await scan('pack-unwritable');
  });

  await step('the pack is there after the program opens anew', async () => {
    await hook('class-pack').click();
    await hook('pack-save').click();
    await page.getByText(/was saved\./).waitFor();
    const saved = await (await page.request.get(new URL('/test/saved', url).href)).json();
    check('one class pack on disk', /\.sfclass$/.test(saved.map((f) => f.name).join()), saved);
    await scan('pack-saved');
    await page.reload();
    await page.getByTestId('start-teacher').click();
    await hook('tab-class').click();
    await hook('class-pack').click();
    await page.getByText(/^Class pack \d+$/).waitFor();
    await page.getByText('up to date').waitFor();
  });

  await step('the class is renamed, and named back', async () => {
    await hook('class-name').click();
    await scan('class-name');
    await page.getByLabel('Name of the class').fill('Room 5, Willow Bend');
    await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
    await page.getByRole('heading', { level: 1, name: 'Room 5, Willow Bend' }).waitFor();
    await hook('class-pack').getByText('changed').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('heading', { level: 1, name: 'Room 4, Willow Bend' }).waitFor();
  });

  await step('dates and weekdays move, the effect is told, and they move back', async () => {
    await hook('class-calendar').click();
    await hook('year-change').click();
    await page.getByLabel('Last day').fill('2027-04-30');
    await page.getByRole('checkbox', { name: 'Fri' }).uncheck();
    await page.getByText('(now 170 and 17)').waitFor();
    await scan('year-form');
    await page.getByLabel('Last day').fill('2026-08-01');
    await page.getByText('The last day comes before the first.').waitFor();
    check('it cannot be saved', await page.getByRole('button', { name: 'Save' }).isDisabled());
    await page.getByLabel('Last day').fill('2027-04-30');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('132 school days, 14 passes of 10 days').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('170 school days, 17 passes of 10 days').waitFor();
  });

  await step('a concept is taken out and put back, and another one added', async () => {
    await hook('class-rotation').click();
    await hook('rotation-concepts').click();
    await hook('rotation-add').locator('option').nth(5).waitFor({ state: 'attached' });
    await scan('rotation-concepts');
    const placed = () => page.locator('button.concept').count();
    const before = await placed();
    const one = (choice) =>
      hook(choice)
        .locator('option:not([value=""], [value^="grade:"])')
        .first()
        .getAttribute('value');
    await hook('rotation-take-out').selectOption(await one('rotation-take-out'));
    await page.getByRole('button', { name: 'Take it out' }).click();
    await page.getByText('is no longer in the rotation').waitFor();
    check('one less', (await placed()) === before - 1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back.').waitFor();
    check('as many as before', (await placed()) === before);
    await hook('rotation-add').selectOption(await one('rotation-add'));
    await page.getByRole('button', { name: 'Add the concept' }).click();
    await page.getByText('was added to day').waitFor();
    check('one more', (await placed()) === before + 1);
  });

  await step('a whole grade is added at once, taken out at once, and taken back', async () => {
    const placed = () => page.locator('button.concept').count();
    const before = await placed();
    const grade = hook('rotation-add').locator('option[value^="grade:"]').first();
    const value = await grade.getAttribute('value');
    const many = Number(/\((\d+)\)/.exec(await grade.innerText())[1]);
    await hook('rotation-add').selectOption(value);
    await page.getByRole('button', { name: 'Add the concept' }).click();
    await page.getByText('were added to the lightest days').waitFor();
    check('all of the grade are there', (await placed()) === before + many, [before, many]);
    const fewer = () =>
      page.waitForFunction((n) => document.querySelectorAll('button.concept').length === n, before);
    await page.getByRole('button', { name: 'Undo' }).click();
    await fewer();
    const out = hook('rotation-take-out').locator('option[value^="grade:"]').first();
    const gone = Number(/\((\d+)\)/.exec(await out.innerText())[1]);
    await hook('rotation-take-out').selectOption(await out.getAttribute('value'));
    const go = page.getByRole('button', { name: 'Take it out' });
    if (gone === before) {
      check('the rotation is never left empty', await go.isDisabled());
      await hook('rotation-take-out').selectOption('');
      return;
    }
    await go.click();
    await page.getByText('are no longer in the rotation').waitFor();
    check('all of the grade are gone', (await placed()) === before - gone, [before, gone]);
    await page.getByRole('button', { name: 'Undo' }).click();
    await fewer();
  });

  await step('the checks tell an uneven rotation, and it is spread anew and back', async () => {
    const uneven = () => hook('rotation-checks').locator('.look').count();
    check('three checks', (await hook('rotation-checks').locator('li').count()) === 3);
    const days = page.locator('.days > section');
    const sizes = () =>
      days.evaluateAll((all) => all.map((one) => one.querySelectorAll('button.concept').length));
    const concept = days.first().locator('button.concept');
    for (let turn = 0; turn < 3; turn += 1) {
      await concept.first().focus();
      await page.keyboard.press('Alt+ArrowRight');
      await page.getByText('is on day 2 now').waitFor();
      await page.waitForFunction(
        (wanted) =>
          document.querySelectorAll('.days > section')[0]?.querySelectorAll('button.concept')
            .length <= wanted,
        (await sizes())[0],
      );
    }
    await page.getByText('The days are uneven').waitFor();
    // Clear of the note at the foot, which would cover buttons in part.
    await page.evaluate(() => window.scrollTo(0, 0));
    await scan('rotation-uneven');
    check('the load stands out', (await uneven()) >= 1, await uneven());
    const before = await sizes();
    await hook('rotation-balance').click();
    await page.getByText('spread evenly over 10 days').waitFor();
    const after = await sizes();
    check('even days', Math.max(...after) - Math.min(...after) <= 1, after);
    check('nothing stands out', (await uneven()) === 0, await uneven());
    await scan('rotation-balanced');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back.').waitFor();
    check('as before', (await sizes()).join() === before.join(), await sizes());
    await hook('rotation-days').fill('8');
    await hook('rotation-balance').click();
    await page.getByText('spread evenly over 8 days').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back.').waitFor();
  });

  await step('a concept is dragged to another day', async () => {
    const days = page.locator('.days > section');
    const text = async (at) =>
      (await days.nth(at).locator('button.concept').allInnerTexts()).join();
    // Both days in sight: a page that scrolls under the pressed button drags something else.
    await page.setViewportSize({ width: 1280, height: 1800 });
    const dragged = days.nth(4).locator('li').first();
    const title = (await dragged.innerText()).split('\n')[1] ?? '';
    await dragged.dragTo(days.nth(6));
    await page.getByText('is on day 7 now').waitFor();
    check('it stands on day 7', (await text(6)).includes(title), [title, await text(6)]);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back.').waitFor();
    check('and on day 5 again', (await text(4)).includes(title), title);
    await page.setViewportSize({ width: 1280, height: 800 });
  });

  await step('a pacing list sets first lessons at once, and they go back', async () => {
    await hook('first-lessons').click();
    const id = (await post('/call/start', {})).classes[0].id;
    const setup = async () => (await post('/call/class_setup', { class: id })).rotation.flat();
    const before = await setup();
    const [a, b, c] = before.map((one) => one.concept);
    await hook('pacing').click();
    await hook('pacing-text').fill(
      `${a.title}\t2026-10-05\n2026-10-12\n${b.title}\n"${c.id}", 10/13/2026\nNothing of ours, 2026-10-05`,
    );
    await hook('pacing-read').click();
    await page.getByText('3 first lessons were found').waitFor();
    await page.getByText('One line cannot be taken').waitFor();
    await scan('pacing');
    await hook('pacing-set').click();
    await page.getByText('3 first lessons were set').waitFor();
    const dates = (await setup()).slice(0, 3).map((one) => one.taught_from);
    check('as the list says', dates.join() === '2026-10-05,2026-10-12,2026-10-13', dates);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back.').waitFor();
    check('as before', JSON.stringify(await setup()) === JSON.stringify(before));
  });

  await step('a seat is removed after a question', async () => {
    await hook('class-seats').click();
    await hook('seat-remove-2').click();
    await page.getByText('Nothing has come from this seat yet').waitFor();
    await scan('seat-remove');
    await page.getByRole('dialog').getByRole('button', { name: 'Cancel' }).click();
    check('four seats still', (await page.locator('tbody tr').count()) === 4);
    await hook('seat-remove-2').click();
    await hook('seat-remove-do').click();
    await page.getByText('Bao is no longer in the class').waitFor();
    const seats = await page.locator('tbody th').allInnerTexts();
    check('the others keep their numbers', seats.join() === '1,3,4', seats);
    await hook('removed').waitFor();
    await scan('seat-removed');
  });

  await step('the removed seat comes back by undo, and by the notice', async () => {
    const seats = async () => (await page.locator('tbody th').allInnerTexts()).join();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back.').waitFor();
    check('all four seats', (await seats()) === '1,2,3,4', await seats());
    check('nothing is held any more', (await hook('removed').count()) === 0);
    await hook('seat-remove-2').click();
    await hook('seat-remove-do').click();
    await page.getByText('Bao is no longer in the class').waitFor();
    await hook('tab-board').click();
    await hook('tab-class').click();
    await hook('removed-back').click();
    await page.getByText('It is back, as it was.').waitFor();
    check('four again', (await seats()) === '1,2,3,4', await seats());
    await hook('seat-remove-2').click();
    await hook('seat-remove-do').click();
    await hook('removed-let-go').click();
    await hook('removed').waitFor({ state: 'detached' });
    const late = await page.request.post(new URL('/call/bring_back', url).href, {
      data: JSON.stringify({ number: 1 }),
    });
    check('let go of, it is gone', late.status() === 422, late.status());
  });

  const pick = (paths) =>
    page.request.post(new URL('/test/pick', url).href, { data: JSON.stringify(paths) });
  await step('seats come from a table; only names of it are taken in', async () => {
    await hook('class-seats').click();
    await pick([roster('late.csv', ['Id;Nombre;Correo', '7;Dara;dara@example.org', '8;Eli;e@x'])]);
    await hook('roster-file').click();
    await page.waitForFunction(() => document.querySelector('textarea').value === 'Dara\nEli');
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    await page.getByText('2 seats were added').waitFor();
  });

  await step('a second class takes the rotation over, its students from OneRoster', async () => {
    const users =
      'sourcedId,status,dateLastModified,enabledUser,orgSourcedIds,role,username,userIds,givenName,familyName,middleName,identifier,email,sms,phone,agentSourcedIds,grades,password';
    const user = (id, name) =>
      `${id},,,true,s,student,${id},,${name},Invented,,,${id}@example.org,,,,04,secret`;
    const enrolled = (user_id, class_id) => `e${user_id},,,${class_id},s,${user_id},student,,,`;
    await page.getByRole('combobox', { name: 'Class' }).selectOption('');
    await pick([
      roster('users.csv', [users, user('u1', 'Fay'), user('u2', 'Gus'), user('u3', 'Hana')]),
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
    ]);
    await hook('roster-file').click();
    await hook('roster-class-1').waitFor();
    await scan('roster-classes');
    await hook('roster-class-1').click();
    await page.getByText('2 seats:').waitFor();
    check('the title came along', (await hook('new-class-name').inputValue()) === 'Room 9');
    await hook('new-class-copy').selectOption({ label: 'Room 4, Willow Bend' });
    await hook('new-class-grade-4').waitFor({ state: 'detached' });
    await scan('new-class-copy');
    await hook('new-class-create').click();
    await page.getByText('Room 9 stands').waitFor();
    await hook('class-rotation').click();
    await page.locator('button.concept').first().waitFor();
    check('as many concepts', (await page.locator('button.concept').count()) === concepts + 1);
    const stored = await (await page.request.get(new URL('/test/saved', url).href)).text();
    check('nothing of the file was kept', !stored.includes('secret'));
    await page.getByRole('combobox', { name: 'Class' }).selectOption('Room 4, Willow Bend');
  });

  await step('a class is deleted only when its name was typed', async () => {
    await hook('class-name').click();
    await hook('class-delete').click();
    const go = page.getByRole('dialog').getByRole('button', { name: 'Delete', exact: true });
    check('not yet', await go.isDisabled());
    await scan('class-delete');
    await hook('class-delete-typed').fill('room 4, willow bend');
    await go.click();
    await page.getByText('Room 4, Willow Bend was deleted').waitFor();
    const left = await page
      .getByRole('combobox', { name: 'Class' })
      .locator('option')
      .allInnerTexts();
    check('only the other class is left', left.length === 2 && left[0] === 'Room 9', left);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back.').waitFor();
    const back = await page.getByRole('combobox', { name: 'Class' }).locator('option').count();
    check('and by undo it is back', back === 3, back);
  });
});
rmSync(rosters, { recursive: true });
