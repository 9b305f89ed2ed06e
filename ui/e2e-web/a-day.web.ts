// A student's day in a browser: nothing installed, nothing sent, and all of it there again.
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, given, test } from './fixtures';
import { joinBy } from './screens';

test('a day: join, rate, practise, hand in, and everything after a reload', async ({
  page,
  site,
  desk,
  room,
  hook,
  hooks,
}) => {
  await page.goto(site.url);
  await expect(hook('start-teacher'), 'no teacher here').toHaveCount(0);
  await test.step('going back from the file dialog is no error', async () => {
    await hook('start-student').tap();
    const chooser = page.waitForEvent('filechooser');
    await hook('join-pick').tap();
    await (await chooser).element().evaluate((input) => input.dispatchEvent(new Event('cancel')));
    await expect(hook('join-pick')).toBeEnabled();
    await expect(page.getByRole('alert')).toHaveCount(0);
    await hook('join-back').tap();
  });
  await joinBy(page, room.pack, room.codes[0] ?? '');
  const rates = await hooks('rate-', '-1').all();
  expect(rates).toHaveLength(7);
  for (const button of [...rates, ...(await hooks('outcome-', '-wrong').all())]) await button.tap();
  await expect(page.getByText('All rated.')).toBeVisible();

  await page.reload();
  await hooks('student-').first().tap();
  await expect(page.getByText('All rated.')).toBeVisible();
  await expect(page.locator('[role=radio][aria-checked=true]')).toHaveCount(7);

  await hook('tab-practice').tap();
  await hook('practice-sure-1').tap();
  await hook('practice-show-steps').tap();
  await hook('practice-next').tap();
  await expect(hook('practice-sure-1')).toBeVisible();
  await hook('practice-stop').tap();
  await expect(hook('practice-summary')).toBeVisible();

  await hook('tab-handin').tap();
  const download = page.waitForEvent('download');
  await hook('hand-in-make').tap();
  const file = await (await download).path();
  await expect(page.getByText('the downloads of this browser')).toBeVisible();

  await test.step('the desk reads it', async () => {
    const name = (await download).suggestedFilename();
    expect(name).toMatch(/^hand-in-.*\.sfhandin$/);
    expect(readFileSync(file).length).toBeGreaterThan(200);
    const folder = mkdtempSync(join(tmpdir(), 'surefoot-hand-in-'));
    writeFileSync(`${folder}/${name}`, readFileSync(file));
    await desk.pick(folder);
    const job = await desk.call('import_hand_ins', { from: 'folder' });
    await expect
      .poll(async () => (await desk.call('job', { job: job?.job ?? 0 })).result?.kind)
      .toBe('import');
    const seats = await desk.call('class_setup', { class: room.id });
    expect(JSON.stringify(seats), 'a device of the seat').toContain('"devices":[{');
  });
});

test('after the first visit it opens and works without the web space', async ({
  page,
  site,
  room,
  hook,
  hooks,
}) => {
  await page.goto(site.url);
  await joinBy(page, room.pack, room.codes[0] ?? '');
  await page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state);
  await site.stop();
  await page.goto(site.url);
  await hooks('student-').first().tap();
  await hooks('rate-', '-0').first().tap();
  await hooks('outcome-', '-wrong').first().tap();
  await hook('tab-practice').tap();
  await hook('practice-sure-1').tap();
  await hook('practice-show-steps').tap();
  await hook('tab-path').tap();
  await hook('tab-handin').tap();
  const download = page.waitForEvent('download');
  await hook('hand-in-make').tap();
  expect((await download).suggestedFilename()).toMatch(/\.sfhandin$/);
});

test('a pack by a link beside the page, by drop, and none from elsewhere', async ({
  page,
  site,
  room,
  hook,
}) => {
  const { name, bytes } = given(room.pack);
  site.extra.set('room-3.sfclass', Buffer.from(bytes));
  await page.goto(`${site.url}?pack=room-3.sfclass`);
  await expect(page.getByText('Room 3')).toBeVisible();
  expect(new URL(page.url()).search, 'a reload does not offer it again').toBe('');

  await page.goto(`${site.url}?pack=https://example.org/room-3.sfclass`);
  await expect(hook('start-student')).toBeVisible();
  await page.goto(`${site.url}?pack=../room-3.sfclass`);
  await expect(hook('start-student')).toBeVisible();
  expect(site.asked).not.toContain('/school/room-3.sfclass');

  const dropped = await page.evaluateHandle(
    ({ name, bytes }) => {
      const data = new DataTransfer();
      data.items.add(new File([new Uint8Array(bytes)], name));
      return data;
    },
    { name, bytes },
  );
  await page.dispatchEvent('body', 'drop', { dataTransfer: dropped });
  await expect(page.getByText('Room 3')).toBeVisible();
});

test('a second tab says so, and goes on once the first is closed', async ({ page, site, hook }) => {
  await page.goto(site.url);
  await expect(hook('start-student')).toBeVisible();
  const second = await page.context().newPage();
  await second.goto(site.url);
  await expect(second.getByText('Surefoot is open in another tab or window.')).toBeVisible();
  await expect(hook('start-student'), 'the first goes on').toBeVisible();
  await page.close();
  await second.getByRole('button', { name: 'Try again' }).tap();
  await expect(second.getByTestId('start-student')).toBeVisible();
});

test('a plain sentence where there is no private storage', async ({ page, site }) => {
  site.extra.set(
    'worker.js',
    `delete self.FileSystemSyncAccessHandle;\n${String(site.file('worker.js'))}`,
  );
  await page.goto(site.url);
  await expect(page.getByText('This browser cannot keep your work.')).toBeVisible();
});

test('a plain sentence where storage is refused', async ({ page, site }) => {
  site.extra.set(
    'worker.js',
    `StorageManager.prototype.getDirectory = () => Promise.reject(new DOMException('no', 'SecurityError'));
     ${String(site.file('worker.js'))}`,
  );
  await page.goto(site.url);
  await expect(page.getByText('This browser is set to keep nothing.')).toBeVisible();
});
