// Versions of the program on a web space: whole, between sessions, and chosen by the person alone.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { PAGES, type Site } from './site';

/** The service worker under another version. */
const renamed = (offline: unknown, version: string) =>
  String(offline).replace(/VERSION = "[0-9a-f]{16}"/, `VERSION = "${version}"`);

/** Puts a version with another title in the place of the files. */
function replace(site: Site, title: string, version: string): void {
  site.extra.delete('offline.js');
  const page = String(site.file('index.html')).replace(
    /<title>[^<]*<\/title>/,
    `<title>${title}</title>`,
  );
  site.extra.set('index.html', page);
  site.extra.set('offline.js', renamed(site.file('offline.js'), version));
}

/** Visits a place until its service worker has it. */
async function visit(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.evaluate(async () => (await navigator.serviceWorker.ready).scope);
}

/** Lets the browser look for a new version, and waits until it is there. */
async function look(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (!registration.waiting) await new Promise((over) => setTimeout(over, 50));
  });
}

/** Closes all pages and opens one, until it has a title. */
async function reopen(page: Page, url: string, title: string): Promise<void> {
  await expect
    .poll(async () => {
      await page.goto('about:blank');
      await page.goto(url);
      return page.title();
    })
    .toBe(title);
}

test('a new version comes between sessions, and the one before can be used', async ({
  page,
  site,
}) => {
  await visit(page, site.url);
  replace(site, 'Next', '0123456789abcdef');
  await page.reload();
  await look(page);
  await page.reload();
  expect(await page.title(), 'never in the middle of a session').toBe('Surefoot');
  await page.goto(`${site.url}?version=before`);
  await expect(page.getByTestId('start-student'), 'one that waits is not before').toBeVisible();
  expect(
    await page.evaluate(async () => (await navigator.serviceWorker.ready).waiting),
  ).not.toBeNull();
  await reopen(page, site.url, 'Next');

  const yes = page.locator('#yes-en');
  await page.goto(`${site.url}?version=before`);
  await expect(yes, 'a link asks').toBeVisible();
  await page.goto(`${site.url}?version=before&sure=yes`);
  await expect(yes, 'a link cannot say yes').toBeVisible();
  await page.goto(site.url);
  expect(await page.title(), 'asked, not answered').toBe('Next');
  await page.goto(`${site.url}?version=before`);
  if (process.env.PICTURES) await page.screenshot({ path: 'shots-web-version.png' });
  await yes.tap();
  await expect(page, 'no reload chooses again').toHaveURL(site.url);
  expect(await page.title()).toBe('Surefoot');
  await page.goto(site.url);
  expect(await page.title(), 'it stays').toBe('Surefoot');
  await page.goto(`${site.url}?version=newest`);
  await page.locator('#yes-es').tap();
  await expect(page).toHaveURL(site.url);
  expect(await page.title()).toBe('Next');
});

test('half an upload is never kept, and the whole one is', async ({ page, site }) => {
  await visit(page, site.url);
  replace(site, 'Next', '0123456789abcdef');
  const wasm = 'program/program_bg.wasm';
  const asked = () => site.asked.filter((path) => path.endsWith(wasm)).length;
  const before = asked();
  site.extra.set(wasm, readFileSync(join(PAGES, wasm)).subarray(0, 2_000_000));
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (registration.installing) await new Promise((over) => setTimeout(over, 50));
  });
  expect(asked(), 'it was fetched').toBeGreaterThan(before);
  const kept = await page.evaluate(async () => (await caches.keys()).join(' '));
  expect(kept).not.toContain('0123456789abcdef');
  await reopen(page, site.url, 'Surefoot');
  await expect(page.getByTestId('start-student')).toBeVisible();
  site.extra.delete(wasm);
  await look(page);
  await reopen(page, site.url, 'Next');
  await expect(page.getByTestId('start-student')).toBeVisible();
});

test('another folder of the same name takes nothing away', async ({ page, site }) => {
  await visit(page, site.url);
  const trial = `${site.url}trial/index.html`;
  for (const name of readdirSync(PAGES, { recursive: true, encoding: 'utf8' })) {
    const file = /\.\w+$/.test(name) ? readFileSync(join(PAGES, name)) : null;
    if (file) site.extra.set(`trial/${name}`, file);
  }
  const offline = readFileSync(join(PAGES, 'offline.js'));
  for (const version of ['1', '2', '3']) {
    site.extra.set('trial/offline.js', renamed(offline, version.repeat(16)));
    await page.goto(trial);
    await expect
      .poll(async () => {
        await page.goto('about:blank');
        await page.goto(trial);
        return page.evaluate(async () => {
          const registration = await navigator.serviceWorker.getRegistration();
          await registration?.update();
          return (await caches.keys()).filter((name) => name.includes('/trial/')).join(' ');
        });
      })
      .toContain(version.repeat(16));
  }
  await page.goto('about:blank');
  await site.stop();
  await page.goto(site.url);
  await expect(page.getByTestId('start-student')).toBeVisible();
});
