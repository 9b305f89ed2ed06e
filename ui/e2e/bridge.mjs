// What the runs share: the bridge with a data folder of its own, Chromium as a
// tablet, an accessibility scan, and a count of what was looked at.
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

const TOP = fileURLToPath(new URL('../../', import.meta.url));
const AXE = readFileSync(join(TOP, 'ui/node_modules/axe-core/axe.min.js'), 'utf8');

/** Sizes in CSS pixels. */
export const SIZES = {
  tablet: { width: 800, height: 1280 },
  landscape: { width: 1280, height: 800 },
  phone: { width: 360, height: 740 },
  narrow: { width: 320, height: 640 },
};

/** Starts the program on an empty data folder (or a given one) on a given day. */
export async function startBridge({ today, data } = {}) {
  const own = data ?? mkdtempSync(join(tmpdir(), 'surefoot-e2e-'));
  const binary = process.env.BRIDGE ?? join(TOP, 'target/debug/surefoot-bridge');
  const args = ['--dist', join(TOP, 'ui/dist-bridge'), '--data', own];
  args.push('--config', join(TOP, 'src-tauri/tauri.conf.json'));
  if (today) args.push('--today', today);
  const child = spawn(binary, args, { stdio: ['ignore', 'pipe', 'inherit'] });
  const lines = createInterface({ input: child.stdout });
  const url = await new Promise((resolve, reject) => {
    lines.once('line', resolve);
    child.once('exit', (code) => reject(new Error(`the bridge ended with ${code}`)));
  });
  return {
    url,
    data: own,
    post: async (path, body) => {
      const answer = await fetch(new URL(path, url), {
        method: 'POST',
        body: JSON.stringify(body),
      });
      const got = await answer.json();
      if (!answer.ok) throw new Error(`${path}: ${JSON.stringify(got)}`);
      return got;
    },
    stop: () =>
      new Promise((resolve) => {
        child.removeAllListeners('exit');
        child.once('exit', () => {
          if (!data) rmSync(own, { recursive: true, force: true });
          resolve();
        });
        child.kill();
      }),
  };
}

export function startChromium() {
  return chromium.launch({
    executablePath: process.env.CHROMIUM || '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-background-networking', '--disable-component-update'],
  });
}

/** A page with touch that notes errors, refused styles, and requests to elsewhere. */
export async function openPage(browser, url, size, options = {}) {
  const context = await browser.newContext({
    viewport: size,
    hasTouch: true,
    isMobile: true,
    deviceScaleFactor: 1,
    ...options,
  });
  const page = await context.newPage();
  const trouble = [];
  page.on('pageerror', (error) => trouble.push(String(error)));
  page.on('console', (message) => {
    // A refused call is answered with 422, which the browser notes.
    if (message.type() === 'error' && !message.text().includes('422')) trouble.push(message.text());
  });
  page.on('request', (request) => {
    const { protocol, host } = new URL(request.url());
    if (protocol.startsWith('http') && host !== new URL(url).host) trouble.push(request.url());
  });
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) =>
      console.error(`policy: ${event.effectiveDirective} ${event.sample}`),
    );
  });
  await page.goto(url);
  return { page, context, trouble };
}

/** The findings of axe on the page as it stands: all rules, all severities. */
export async function axe(page) {
  // Colours that are still changing would be measured on their way.
  await page.evaluate(() => Promise.allSettled(document.getAnimations().map((a) => a.finished)));
  if (await page.evaluate(() => !window.axe)) await page.evaluate(AXE);
  const { violations } = await page.evaluate(() => window.axe.run(document));
  return violations.map(
    (v) => `${v.id} (${v.impact}): ${v.nodes.map((n) => n.html.slice(0, 160)).join(' | ')}`,
  );
}

/**
 * Interactive elements smaller than 48 px, and text smaller than 18 px. Cells of a
 * chart of ten columns may be smaller on a phone, never under the 24 px of WCAG 2.2,
 * 2.5.8.
 */
export function tooSmall(page) {
  return page.evaluate(() => {
    const found = [];
    const seen = (e) => e.checkVisibility?.() !== false && e.getClientRects().length > 0;
    for (const e of document.querySelectorAll('button, a, input, select, summary, [role=slider]')) {
      const { width, height } = e.getBoundingClientRect();
      const joined = e.closest('.bar, svg');
      const least = e.closest('[data-small-targets]') ? 24 : 47.5;
      if (seen(e) && !joined && (width < least || height < least))
        found.push(`target ${Math.round(width)}×${Math.round(height)} ${e.outerHTML.slice(0, 90)}`);
    }
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const parent = walker.currentNode.parentElement;
      if (!walker.currentNode.data.trim() || !seen(parent) || parent.closest('.unseen, svg, math'))
        continue;
      const size = parseFloat(getComputedStyle(parent).fontSize);
      if (size < 17.9) found.push(`text ${size}px ${walker.currentNode.data.trim().slice(0, 40)}`);
    }
    return found;
  });
}

/**
 * By how much the page stands out to the side, in px; 0 or less when it does not. Where
 * drawing is contained, what stands out widens no page, so parts are looked at as well.
 */
export function sideways(page) {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const scrolls = (part) => {
      for (let e = part.parentElement; e && e !== document.body; e = e.parentElement) {
        if (getComputedStyle(e).overflowX !== 'visible') return true;
      }
      return false;
    };
    const out = [
      ...document.querySelectorAll('button, input, select, textarea, svg, math, img, table'),
    ]
      .filter((e) => e.checkVisibility() && !e.closest('.unseen') && !scrolls(e))
      .map((e) => Math.ceil(e.getBoundingClientRect().right - 1 - clientWidth));
    return Math.max(scrollWidth - clientWidth, ...out, 0);
  });
}

/** Scans a student's screen as it stands: axe, sizes, and nothing out to the side. */
export async function scanned(check, page, name) {
  check.none(`${name}: axe`, await axe(page));
  check.none(`${name}: sizes`, await tooSmall(page));
  const aside = await sideways(page);
  check.that(`${name}: no sideways`, aside <= 0, `${aside} px`);
}

/** Counts what holds and what does not; `finish` says it and sets the exit status. */
export function checks() {
  let [passed, failed] = [0, 0];
  return {
    that(name, holds, detail = '') {
      if (holds) passed += 1;
      else {
        failed += 1;
        console.log(
          `FAILED ${name} ${typeof detail === 'string' ? detail : JSON.stringify(detail)}`,
        );
      }
    },
    none(name, found) {
      if (found.length > 8) found = [...found.slice(0, 8), `… ${found.length} in all`];
      this.that(name, found.length === 0, `\n  ${found.join('\n  ')}`);
    },
    finish() {
      console.log(`${passed} passed, ${failed} failed`);
      process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
    },
  };
}

/** From the first screen into the sample class. */
export async function enterSample(page) {
  await page.getByTestId('start-sample').tap();
  await page.getByTestId('bar-student').waitFor({ timeout: 180_000 });
}
