// What other pages, links and half a web space can do to a student's pages.
import { callIn, callOn, drive, joined } from './driver';
import { expect, given, test } from './fixtures';

declare global {
  interface Window {
    refused: string[];
  }
}

test('a page cannot say that a student typed the PIN', async ({ page, site, room }) => {
  await drive(page, site.url);
  const student = await joined(page, room);
  await callIn(page, 'set_pin', {
    student,
    pin: '4711',
    pin_signs: room.pin_signs[0] ?? '',
    seat_code: room.codes[0] ?? '',
  });
  await page.evaluate(() => window.driver.kill());
  await page.evaluate((student) => window.driver.open([student]), student);
  const refused = await callOn(page, 'today', { student, date: null });
  expect(refused.failed).toEqual({ code: 'locked' });
  expect(await callIn(page, 'unlock', { student, pin: '4711' })).toEqual({ kind: 'open' });
  await callIn(page, 'today', { student, date: null });
});

test('no student to show where the server answers a page for what is missing', async ({
  page,
  site,
  hook,
}) => {
  site.extra.set('sample/student.sqlite', String(site.file('index.html')));
  await page.goto(`${site.url}?sample`);
  await expect(hook('start-student')).toBeVisible();
  await page.goto('about:blank');
  await drive(page, site.url);
  expect(await callIn(page, 'start', {})).toMatchObject({ students: [], damaged: [] });
});

test('a pack whose name has a percent sign', async ({ page, site, room, hook }) => {
  const name = 'Room 3 100%.sfclass';
  site.extra.set(name, Buffer.from(given(room.pack).bytes));
  for (const asked of [encodeURIComponent(name), name]) {
    await page.goto(`${site.url}?pack=${asked}`);
    await expect(hook('join-next')).toBeVisible();
    await expect(page.getByText('Room 3')).toBeVisible();
  }
});

test('in the frame of another page it does not start', async ({ page, site, hook }) => {
  site.extra.set(
    'around.html',
    '<!doctype html><link rel="icon" href="data:," /><title>around</title><iframe src="./"></iframe>',
  );
  const around = `${site.url}around.html`;
  await page.goto(around);
  const inside = page.frameLocator('iframe');
  await expect(inside.getByText('Surefoot does not run inside another page.')).toBeVisible();
  await expect(inside.getByTestId('start-student')).toHaveCount(0);
  await page.goto(site.url);
  await expect(hook('start-student'), 'in a tab of its own it does').toBeVisible();
  const policy = await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    return (await fetch('./')).headers.get('Content-Security-Policy');
  });
  expect(policy, 'kept, the browser refuses it too').toContain("frame-ancestors 'none'");
});

test('the program asks nothing elsewhere, from the first visit on, without headers', async ({
  page,
  site,
  hook,
}) => {
  // Were it asked, the fixture would see the request.
  const tried = `fetch('https://elsewhere.example/').catch(() => undefined);
    self.addEventListener('securitypolicyviolation', ({ blockedURI }) => {
      new BroadcastChannel('refused').postMessage(blockedURI);
    });\n`;
  site.extra.set('worker.js', tried + String(site.file('worker.js')));
  await page.addInitScript(() => {
    window.refused = [];
    new BroadcastChannel('refused').onmessage = ({ data }) => window.refused.push(String(data));
  });
  await page.goto(site.url);
  await expect(hook('start-student')).toBeVisible();
  await expect
    .poll(() => page.evaluate(() => window.refused))
    .toEqual(['https://elsewhere.example/']);
});
