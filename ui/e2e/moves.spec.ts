// A student moves: to another class, to a colleague, and work goes to its owner.
import { openDesk, said, scan } from './desk';
import { expect, test } from './fixtures';
import { join, makeClass, markDay } from './own-class';
import { DESK } from './sizes';

const WORDS = 'seven quiet rivers';
/** A passphrase is slow to use on purpose. */
const SLOW = { timeout: 60_000 };

test.use(DESK);

test('a student moves to another class and back', async ({ page, bridge, hook, hooks }) => {
  const from = await makeClass(bridge, { title: 'Room 3', names: ['Ottilie', 'Bo'] });
  const to = await makeClass(bridge, { title: 'Room 4', names: ['Cleo'] });
  await bridge.changeDevice({ guides_read: ['all'] });
  const seats = async (id: string) =>
    (await bridge.call('class_setup', { class: id })).seats.map((seat) => seat.name);
  await openDesk(page);
  await hook('tab-class').click();
  await hook('class-seats').click();
  await hook('seat-move-1').click();
  await scan(page, 'the ways of a move');
  await hook('move-class-do').click();
  await said(page, 'Ottilie now has seat 2 in Room 4.');
  expect([await seats(from.id), await seats(to.id)]).toEqual([['Bo'], ['Cleo', 'Ottilie']]);
  await expect(hook('removed')).toContainText('Ottilie moved from Room 3 to Room 4.');
  await scan(page, 'a student moved');
  await hook('removed-restore').click();
  await expect(hooks('seat-move-')).toHaveCount(2);
  expect([await seats(from.id), await seats(to.id)]).toEqual([['Ottilie', 'Bo'], ['Cleo']]);
});

test('the work of a device goes to its owner and back', async ({ page, bridge, hook }) => {
  const own = await makeClass(bridge, { names: ['Ottilie', 'Bo'] });
  const student = await join(bridge, own);
  const today = await bridge.call('today', { student, date: null });
  await bridge.call('check_in', {
    student,
    date: today.date,
    concept: today.concepts[0]?.concept.id ?? '',
    confidence: 2,
    outcome: null,
  });
  const made = await bridge.call('hand_in', { student });
  await bridge.pick(bridge.savedAt(made.file_name));
  const job = await bridge.call('import_hand_ins', { from: 'files' });
  await expect.poll(async () => job && (await bridge.call('job', job)).result?.kind).toBe('import');
  await bridge.changeDevice({ guides_read: ['all'] });
  const reports = async (seat: number) =>
    (await bridge.call('seat_holdings', { class: own.id, seat })).reports;
  await openDesk(page);
  await hook('tab-class').click();
  await hook('class-seats').click();
  await hook('seat-move-1').click();
  await hook('move-device-to').selectOption('2');
  await scan(page, 'a device that belongs to another student');
  await hook('move-device-do').click();
  await said(page, 'The work of this device now counts for Bo.');
  expect([await reports(1), await reports(2)]).toEqual([0, 1]);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => reports(1)).toBe(1);
  expect(await reports(2)).toBe(0);
});

test('a student goes to a colleague by a file', async ({ page, bridge, hook, hooks }) => {
  await makeClass(bridge, { title: 'Room 3', names: ['Ottilie', 'Bo'] });
  await bridge.changeDevice({ guides_read: ['all'] });
  await openDesk(page);
  await hook('tab-class').click();
  await hook('class-seats').click();
  await hook('seat-move-1').click();
  await hook('transfer-open').click();
  await expect(hook('transfer-holds')).toContainText('Entries from paper: 0');
  await expect(hook('transfer-name')).not.toBeChecked();
  await hook('transfer-name').check();
  await scan(page, 'what the file will hold');
  await hook('passphrase').fill(WORDS);
  await hook('passphrase-again').fill(WORDS);
  await hook('passphrase-go').click();
  await expect(page.getByText('Give it to your colleague')).toBeVisible(SLOW);
  const file = (await page.getByText('Give it to your colleague').innerText()).split(' ')[0] ?? '';
  expect(file).toMatch(/^transfer-[0-9-]{10}-[0-9a-z]{6}\.sftransfer$/);

  await bridge.pick(bridge.savedAt(file));
  await hook('transfer-take').click();
  await hook('passphrase').fill(WORDS);
  await hook('passphrase-go').click();
  await expect(page.getByText('Ottilie has seat 3.')).toBeVisible(SLOW);
  await expect(hooks('seat-move-')).toHaveCount(3);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(hooks('seat-move-')).toHaveCount(2);
});

test('one computer saves the packs and hands that over', async ({ page, bridge, hook }) => {
  await makeClass(bridge, { title: 'Room 3', names: ['Ottilie', 'Bo'] });
  await bridge.changeDevice({ guides_read: ['all'] });
  await openDesk(page);
  await page.getByRole('button', { name: 'Settings' }).click();
  await hook('desk-safe').click();
  await hook('class-key-save').click();
  await expect(hook('packs-stay')).toBeChecked();
  await hook('packs-over').check();
  await scan(page, 'who saves the packs');
  await hook('passphrase').fill(WORDS);
  await hook('passphrase-again').fill(WORDS);
  await hook('passphrase-go').click();
  await expect(page.getByText('The class key is saved')).toBeVisible(SLOW);
  await hook('tab-class').click();
  await hook('class-pack').click();
  await said(page, 'Another computer saves the packs of this class.');
  await expect(hook('pack-save')).toHaveCount(0);
  await scan(page, 'a desk that does not save packs');
  await hook('packs-here').click();
  await expect(page.getByText('Do this only if the other computer has stopped.')).toBeVisible();
  await scan(page, 'asked who saves the packs');
  await expect(hook('pack-save')).toHaveCount(0);
  await hook('packs-here-sure').click();
  await expect(hook('pack-save')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(hook('packs-elsewhere')).toBeVisible();
});

test('a waiting device is given to its owner where it waits', async ({ page, bridge, hook }) => {
  const own = await makeClass(bridge, { names: ['Ottilie', 'Bo'] });
  for (const beside of [false, true]) {
    await bridge.pick(own.pack);
    const offer = await bridge.call('pick_class_pack', {});
    const profile = await bridge.call('join', {
      pack: offer?.pack ?? 0,
      seat_code: own.codes[0] ?? '',
      nickname: beside ? 'Wren' : 'Otter',
      avatar: 'heron',
      language: 'en',
      beside,
    });
    await markDay(bridge, profile.id);
    const made = await bridge.call('hand_in', { student: profile.id });
    await bridge.pick(bridge.savedAt(made.file_name));
    const job = await bridge.call('import_hand_ins', { from: 'files' });
    await expect
      .poll(async () => job && (await bridge.call('job', job)).result?.kind)
      .toBe('import');
  }
  const reports = async (seat: number) =>
    (await bridge.call('seat_holdings', { class: own.id, seat })).reports;
  const [first, second] = [await reports(1), await reports(2)];
  expect([first > 0, second]).toEqual([true, 0]);
  await bridge.changeDevice({ guides_read: ['all'] });
  await openDesk(page, 'tab-files');
  await hook('device-other').click();
  await expect(page.getByRole('dialog')).toContainText('waits for you');
  await expect(hook('move-class-do')).toHaveCount(0);
  await hook('move-device-to').selectOption('2');
  await scan(page, 'the owner of a waiting device');
  await hook('move-device-do').click();
  await said(page, 'The work of this device now counts for Bo.');
  expect(await reports(1)).toBe(first);
  expect(await reports(2)).toBeGreaterThan(0);
  await expect(hook('device-other')).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(hook('device-other')).toBeVisible();
});
