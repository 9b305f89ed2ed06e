// From nothing to a class with its pack: the first minutes of a teacher, in Chromium.
import { check, withDesk } from './desk-browser.mjs';

await withDesk('2026-11-24', async ({ page, url, step, scan }) => {
  const hook = (name) => page.getByTestId(name);
  const save = (decision) =>
    page.request.post(new URL('/test/save', url).href, { data: JSON.stringify(decision) });

  await step('without a class, the desk offers to set one up', async () => {
    await hook('start-teacher').click();
    await hook('new-class-create').waitFor();
    await scan('new-class');
  });

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
    await page.getByText(/was saved:/).waitFor();
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
});
