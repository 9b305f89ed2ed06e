// Backups, copies, PIN, a damaged store and removal, in Chromium against the real calls.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { check, withDesk } from './desk-browser.mjs';

const WORDS = 'seven quiet rivers';

await withDesk('2026-11-24', async ({ page, url, data, step, scan }) => {
  const hook = (name) => page.getByTestId(name);
  const post = async (path, body) =>
    (await page.request.post(new URL(path, url).href, { data: JSON.stringify(body) })).json();
  const call = (name, args) => post(`call/${name}`, args);

  const made = await call('create_class', {
    class: {
      title: 'Room 7 (invented)',
      names: ['Amara', 'Bao'],
      year: {
        first_day: '2026-08-31',
        last_day: '2027-05-07',
        weekdays: [1, 2, 3, 4, 5],
        closures: [],
      },
      grades: [3],
      rotation_days: 10,
      concepts_a_day: 5,
    },
  });
  const pack = await call('save_class_pack', { class: made.id });
  const slips = await call('join_slips', { class: made.id });
  await post('test/pick', [pack.place]);
  const offer = await call('pick_class_pack', {});
  const sky = await call('join', {
    pack: offer.pack,
    seat_code: slips[0].code,
    nickname: 'Sky',
    picture: 'fox',
    language: 'en',
  });
  await page.reload();

  await step('a PIN is set and asked for', async () => {
    await hook(`student-${sky.id}`).click();
    await hook('student-settings').click();
    await page.getByText('Keep it safe').click();
    await hook('pin-new').fill('4071');
    await hook('pin-set').click();
    await page.getByText('A PIN is set.').waitFor();
    await scan('student-safe');
    await hook('leave-student').click();
    await hook(`student-${sky.id}`).click();
    await hook('pin').fill('0000');
    await hook('pin-go').click();
    await page.getByText('This is not the PIN.').waitFor();
    await scan('pin');
    await hook('pin').fill('4071');
    await hook('pin-go').click();
    await hook('tab-today').waitFor();
  });

  let backup = '';
  await step('a backup is made with a passphrase typed twice', async () => {
    await hook('student-settings').click();
    await page.getByText('Keep it safe').click();
    await hook('back-up').click();
    await hook('passphrase').fill('short');
    await hook('passphrase-go').click();
    await page.getByText('Use at least 8 letters.').waitFor();
    await hook('passphrase').fill(WORDS);
    await hook('passphrase-again').fill(`${WORDS}!`);
    await hook('passphrase-go').click();
    await page.getByText('The two are not the same.').waitFor();
    await hook('passphrase-again').fill(WORDS);
    await scan('passphrase');
    await hook('passphrase-go').click();
    await page.getByText('The backup is saved').waitFor({ timeout: 60_000 });
    backup = readdirSync(join(data, 'saves')).find((name) => name.endsWith('.sfbackup')) ?? '';
    check('a backup is there', backup !== '');
    const head = readFileSync(join(data, 'saves', backup))
      .subarray(0, 40)
      .toString('latin1');
    check('it is an age file', head.startsWith('age-encryption.org/v1\n-> scrypt '), head);
  });

  await step('the student is removed, and comes back from the backup', async () => {
    await hook('remove-student').click();
    await page.getByRole('dialog').getByText('Remove everything of Sky').waitFor();
    await hook('sure-go').click();
    await hook('start-student').waitFor();
    check('nobody is listed', (await hook(`student-${sky.id}`).count()) === 0);
    await post('test/pick', [join(data, 'saves', backup)]);
    await hook('open-backup').click();
    await hook('passphrase').fill('not the words');
    await hook('passphrase-go').click();
    await page.getByText('The passphrase does not fit.').waitFor({ timeout: 60_000 });
    await hook('passphrase').fill(WORDS);
    await hook('passphrase-go').click();
    await hook(`student-${sky.id}`).waitFor({ timeout: 60_000 });
    await scan('start-restored');
  });

  await step('the desk has its own backup, copies and notes', async () => {
    await hook('start-teacher').click();
    await page.getByRole('button', { name: 'Settings' }).click();
    await hook('desk-safe').click();
    await page.getByText('It is not a grade and not a diagnosis.').waitFor();
    await scan('desk-safe');
  });

  await step('a damaged store is named and a copy takes its place', async () => {
    // What the next start would find: the store is not open now.
    const file = join(data, 'own/students/ffffffffffffffff.sqlite');
    writeFileSync(file, 'no store at all');
    await page.reload();
    await hook('damaged').waitFor();
    await scan('damaged');
    check('the other student is there', (await hook(`student-${sky.id}`).count()) === 1);
  });

  await step('everything is removed, but not past a PIN', async () => {
    await page.reload();
    await hook('start-teacher').click();
    await page.getByRole('button', { name: 'Settings' }).click();
    await hook('desk-safe').click();
    await hook('remove-all').click();
    check('not by one tap', await hook('sure-go').isDisabled());
    await hook('remove-all-typed').fill('Remove everything');
    await hook('sure-go').click();
    await page.getByText('Type the PIN first.').waitFor();
    await scan('remove-all');
    await call('unlock', { student: sky.id, pin: '4071' });
    await hook('sure-go').click();
    await page.getByText('It is removed.').waitFor();
    const { students, classes } = await call('start', {});
    check('nothing is left', students.length === 0 && classes.length === 0);
  });
});
