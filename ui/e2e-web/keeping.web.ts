// What a browser does to the data: no room, cleared, a fault, and a new version of the program.
import { callIn, callOn, drive, joined } from './driver';
import { expect, test } from './fixtures';

test('without room nothing is stored in part, and all is there once there is room', async ({
  page,
  site,
  room,
}) => {
  await drive(page, site.url);
  const student = await joined(page, room);
  const { concepts } = await callIn(page, 'today', { student, date: null });
  const session = await page.context().newCDPSession(page);
  const { origin } = new URL(site.url);
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
  const said: Record<string, number> = {};
  let failed: object | null = null;
  for (let n = 0; n < 2000 && failed === null; n += 1) {
    const concept = concepts[n % concepts.length]?.concept.id ?? '';
    const confidence = Math.floor(n / concepts.length) % 4;
    const tap = { student, date: '2026-09-16', concept, confidence, outcome: 'wrong' };
    const outcome = await callOn(page, 'check_in', tap);
    if (outcome.failed) failed = outcome.failed;
    else said[concept] = confidence;
  }
  expect(failed, 'the browser refuses to write at some time').toEqual({ code: 'disk_full' });
  const now = async () => {
    const { concepts: rows } = await callIn(page, 'today', { student, date: null });
    return Object.fromEntries(
      rows.flatMap(({ concept, confidence }) =>
        confidence === null ? [] : [[concept.id, confidence]],
      ),
    );
  };
  expect(await now()).toEqual(said);
  await session.send('Storage.overrideQuotaForOrigin', { origin });
  const concept = concepts[0]?.concept.id ?? '';
  await callIn(page, 'check_in', {
    ...{ student, date: '2026-09-16', concept, confidence: 2, outcome: 'right' },
  });
  await page.evaluate(() => window.driver.kill());
  await drive(page, site.url);
  expect(await now()).toEqual({ ...said, [concept]: 2 });
});

test('a carry file brings all back after the browser cleared the data', async ({
  page,
  site,
  room,
}) => {
  await drive(page, site.url);
  const student = await joined(page, room);
  const { concepts } = await callIn(page, 'today', { student, date: null });
  const concept = concepts[0]?.concept.id ?? '';
  await callIn(page, 'check_in', {
    ...{ student, date: '2026-09-16', concept, confidence: 3, outcome: 'right' },
  });
  const passphrase = 'stones across the stream';
  const { files } = await callOn(page, 'make_carry', { student, passphrase });
  const [carry] = files;
  if (!carry) throw new Error('no carry file');
  await page.evaluate(() => window.driver.kill());
  await page.goto('about:blank');
  const session = await page.context().newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', {
    ...{ origin: new URL(site.url).origin, storageTypes: 'all' },
  });
  await drive(page, site.url);
  expect((await callIn(page, 'start', {})).students).toEqual([]);
  const picked = await callIn(page, 'pick_carry', {}, carry);
  const done = await callIn(page, 'take_carry', { picked: picked?.picked ?? 0, passphrase });
  expect(done).toMatchObject({ new_here: true, check_ins: 1 });
  const again = await callIn(page, 'today', { student: done.student, date: null });
  expect(again.concepts[0]).toMatchObject({ confidence: 3, outcome: 'right' });
});

test('a copy takes the place of a store, which is put aside', async ({ page, site, room }) => {
  await drive(page, site.url);
  const student = await joined(page, room);
  const store = { kind: 'student' as const, student };
  const { concepts } = await callIn(page, 'today', { student, date: null });
  const concept = concepts[0]?.concept.id ?? '';
  const tap = { student, date: '2026-09-16', concept, confidence: 3 as const, outcome: null };
  await callIn(page, 'check_in', tap);
  const before = await callIn(page, 'copies', store);
  expect(before.trouble).toBeNull();
  expect(before.copies.map(({ kind }) => kind)).toEqual(['daily']);
  const name = before.copies[0]?.name ?? '';
  expect(await callIn(page, 'restore_copy', { store, name })).toMatchObject({ quarantined: true });
  const after = await callIn(page, 'copies', store);
  expect(after.copies.map(({ kind }) => kind)).toContain('replaced');
  // The copy is from the moment of joining.
  const { concepts: rows } = await callIn(page, 'today', { student, date: null });
  expect(rows[0]?.confidence).toBeNull();
  const replaced = after.copies.find(({ kind }) => kind === 'replaced')?.name ?? '';
  await callIn(page, 'restore_copy', { store, name: replaced });
  const { concepts: back } = await callIn(page, 'today', { student, date: null });
  expect(back[0]?.confidence).toBe(3);
  const gone = await callIn(page, 'remove_student', { student });
  expect(gone.students).toEqual([]);
  await page.evaluate(() => window.driver.kill());
  await drive(page, site.url);
  expect((await callIn(page, 'start', {})).students).toEqual([]);
});
