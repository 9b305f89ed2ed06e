// The program is killed in the middle of check-ins: nothing that it acknowledged is lost.
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { type Browser, chromium, type Page } from '@playwright/test';
import config from '../playwright.web.config';
import { callIn, drive, joined } from './driver';
import { expect, test } from './fixtures';
import type { OwnClass } from '../e2e/own-class';

/** Kills of each kind. */
const KILLS = Number(process.env.WEB_KILLS ?? 200);

/** Longest time of writing before a kill. */
const MOST_MS = 120;

/** Check-ins of whose acknowledgement a killed browser may not have told. */
const MOST_UNTOLD = 40;

/** What was said of each concept: confidence and outcome, such as `3 wrong`. */
type Said = Record<string, string>;

const OUTCOMES = ['right', 'wrong', 'not_done'];

/** The n-th check-in: every concept in turn. The same is said again after twelve rounds. */
function nth(ids: string[], n: number): [concept: string, said: string] {
  const round = Math.floor(n / ids.length);
  return [ids[n % ids.length] ?? '', `${round % 4} ${OUTCOMES[round % 3] ?? ''}`];
}

/** What was said after so many check-ins from the `first` on. */
function after(before: Said, ids: string[], first: number, count: number): Said {
  const said = { ...before };
  for (let n = first; n < first + count; n += 1) {
    const [concept, last] = nth(ids, n);
    said[concept] = last;
  }
  return said;
}

async function begun(page: Page, room: OwnClass): Promise<{ student: string; ids: string[] }> {
  const student = await joined(page, room);
  const { concepts } = await callIn(page, 'today', { student, date: null });
  return { student, ids: concepts.map(({ concept }) => concept.id) };
}

/** Makes check-ins, one after the other, from the `first` on. Says on the console how many were
 * acknowledged. Does not end by itself. */
function write(page: Page, student: string, ids: string[], first: number): Promise<void> {
  return page.evaluate(
    async ({ student, ids, first }) => {
      const counted = window as unknown as { acknowledged: number };
      counted.acknowledged = 0;
      for (let n = first; ; n += 1) {
        // As `nth` says.
        const round = Math.floor(n / ids.length);
        const outcome = ['right', 'wrong', 'not_done'][round % 3];
        const concept = ids[n % ids.length];
        const args = { student, date: '2026-09-16', concept, confidence: round % 4, outcome };
        const reply = await window.driver.ask({
          do: 'call',
          ...{ name: 'check_in', args: JSON.stringify(args), place: '' },
        });
        if (!reply.answer?.includes('"done"')) throw new Error(JSON.stringify(reply));
        counted.acknowledged += 1;
        console.log(`acknowledged ${counted.acknowledged}`);
      }
    },
    { student, ids, first },
  );
}

/** What is there after a new start. */
async function found(page: Page, student: string): Promise<Said> {
  const { concepts } = await callIn(page, 'today', { student, date: null });
  return Object.fromEntries(
    concepts.flatMap(({ concept, confidence, outcome }) =>
      confidence === null ? [] : [[concept.id, `${confidence} ${outcome ?? ''}`]],
    ),
  );
}

/** How many of the check-ins after `count` are there too; null if one before is lost. */
function later(there: Said, expected: (count: number) => Said, count: number, most: number) {
  for (let more = 0; more <= most; more += 1) {
    const wanted = expected(count + more);
    const same = (concept: string) => wanted[concept] === there[concept];
    if (Object.keys({ ...wanted, ...there }).every(same)) return more;
  }
  return null;
}

test(`${KILLS} kills of the worker lose nothing acknowledged`, async ({ page, site, room }) => {
  test.setTimeout(3_600_000);
  await drive(page, site.url);
  const { student, ids } = await begun(page, room);
  let before: Said = {};
  let first = 0;
  let count = 0;
  for (let kill = 0; kill < KILLS; kill += 1) {
    void write(page, student, ids, first).catch(() => undefined);
    await pause(10 + Math.random() * MOST_MS);
    const acknowledged = await page.evaluate(() => {
      window.driver.kill();
      return (window as unknown as { acknowledged: number }).acknowledged;
    });
    await page.evaluate(() => window.driver.open());
    const there = await found(page, student);
    const from = before;
    const at = first;
    // One more was on its way.
    const more = later(there, (n) => after(from, ids, at, n), acknowledged, 1);
    expect(more, `kill ${kill} after ${acknowledged}: ${JSON.stringify(there)}`).not.toBeNull();
    before = there;
    first += acknowledged + (more ?? 0);
    count += acknowledged;
  }
  console.log(`acknowledged check-ins: ${count}`);
  expect(count, 'something was written').toBeGreaterThan(KILLS);
});

interface Running {
  process: ChildProcess;
  browser: Browser;
  page: Page;
}

/** Starts a browser that can be killed, on a folder of its own. */
async function start(data: string): Promise<Running> {
  const program = config.use?.launchOptions?.executablePath ?? 'chromium';
  rmSync(join(data, 'DevToolsActivePort'), { force: true });
  rmSync(join(data, 'SingletonLock'), { force: true });
  const child = spawn(
    program,
    [
      ...['--headless=new', '--no-sandbox', '--disable-gpu', '--no-first-run'],
      ...['--disable-background-networking', '--disable-component-update'],
      ...['--remote-debugging-port=0', `--user-data-dir=${data}`, 'about:blank'],
    ],
    { stdio: 'ignore', detached: true },
  );
  for (let tried = 0; ; tried += 1) {
    await pause(50);
    try {
      const [port] = readFileSync(join(data, 'DevToolsActivePort'), 'utf8').split('\n');
      const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port ?? ''}`);
      const context = browser.contexts()[0];
      if (!context) throw new Error('no context');
      return { process: child, browser, page: context.pages()[0] ?? (await context.newPage()) };
    } catch (error) {
      if (tried > 200) throw error;
    }
  }
}

/** Kills the browser with all its processes. */
async function kill({ process: child, browser }: Running): Promise<void> {
  const gone = new Promise((over) => child.once('exit', over));
  if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
  await gone;
  await browser.close().catch(() => undefined);
}

test(`${KILLS} kills of the browser lose nothing acknowledged`, async ({ site, room }) => {
  test.setTimeout(3_600_000);
  const data = mkdtempSync(join(tmpdir(), 'surefoot-killed-'));
  let running = await start(data);
  await drive(running.page, site.url);
  const { student, ids } = await begun(running.page, room);
  let before: Said = {};
  let first = 0;
  let count = 0;
  for (let nth = 0; nth < KILLS; nth += 1) {
    let acknowledged = 0;
    running.page.on('console', (message) => {
      const said = /^acknowledged (\d+)$/.exec(message.text());
      if (said) acknowledged = Number(said[1]);
    });
    void write(running.page, student, ids, first).catch(() => undefined);
    await pause(50 + Math.random() * 3 * MOST_MS);
    await kill(running);
    running = await start(data);
    await drive(running.page, site.url);
    const there = await found(running.page, student);
    const from = before;
    const at = first;
    // More may have been acknowledged than this test was told before the browser died.
    const more = later(there, (n) => after(from, ids, at, n), acknowledged, MOST_UNTOLD);
    expect(more, `kill ${nth} after ${acknowledged}: ${JSON.stringify(there)}`).not.toBeNull();
    before = there;
    first += acknowledged + (more ?? 0);
    count += acknowledged;
  }
  await kill(running);
  rmSync(data, { recursive: true, force: true });
  console.log(`acknowledged check-ins: ${count}`);
  expect(count, 'something was written').toBeGreaterThan(KILLS);
});
