// A class of a run's own and a student who has joined it, so that a run need not
// wait for the sample class.
import { join } from 'node:path';

/** The first day of the runs that make a class: a Wednesday in its fifth week. */
export const TODAY = '2026-09-16';

/** A class with a number of concepts a day, its pack on disk, and the codes of its seats. */
export async function makeClass(bridge, { seats = 2, grades = [4, 5], conceptsADay = 7 } = {}) {
  const call = (name, args) => bridge.post(`/call/${name}`, args);
  const { id } = await call('create_class', {
    class: {
      title: 'Room 3',
      names: Array(seats).fill(''),
      year: {
        first_day: '2026-08-17',
        last_day: '2027-05-28',
        weekdays: [1, 2, 3, 4, 5],
        closures: [],
      },
      grades,
      rotation_days: 10,
      concepts_a_day: conceptsADay,
    },
  });
  const slips = await call('join_slips', { class: id });
  const made = await call('save_class_pack', { class: id });
  return {
    codes: slips.map((slip) => slip.code),
    pack: join(bridge.data, 'saves', made.file_name),
  };
}

/** From the first screen to Today, by taps or clicks. */
export async function joinClass(bridge, page, { code, pack, nickname = 'Wren' }) {
  await page.getByTestId('start-student').click();
  await bridge.post('/test/pick', [pack]);
  await page.getByTestId('join-pick').click();
  await page.getByText('Room 3').waitFor();
  await page.getByTestId('join-next').click();
  await page.getByTestId('join-code').fill(code);
  await page.getByTestId('join-next').click();
  await page.getByTestId('join-nickname').fill(nickname);
  await page.getByTestId('join-picture-heron').click();
  await page.getByTestId('join-finish').click();
  await page.locator('[data-testid^="rate-"]').first().waitFor();
}

/** Marks every concept of the day as not yet, so that practice has something to give. */
export async function rateAll(page, value = 0) {
  for (const one of await page.locator(`[data-testid^="rate-"][data-testid$="-${value}"]`).all())
    await one.click();
  for (const one of await page.locator('[data-testid^="outcome-"][data-testid$="-right"]').all())
    await one.click();
  await page.locator(`[role=radio][aria-checked=true]`).last().waitFor();
}
