// Starts the bridge and Chromium for the teacher's runs, and counts checks.
//
// BRIDGE and CHROMIUM name the programs; SHOTS a folder for pictures, if wanted.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

const top = join(dirname(fileURLToPath(import.meta.url)), '../..');
const axe = readFileSync(join(top, 'ui/node_modules/axe-core/axe.min.js'), 'utf8');
const AXE_TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

let passed = 0;
let failed = 0;

/** Counts one check; says it when it fails. */
export function check(words, fits, found = '') {
  if (fits) passed += 1;
  else {
    failed += 1;
    console.log(`FAILED ${words}`, found);
  }
}

/** Runs `doing({ page, url, data, step, scan, shot })` on a fresh data folder, then reports. */
export async function withDesk(today, doing) {
  const data = mkdtempSync(join(tmpdir(), 'surefoot-desk-'));
  const bridge = spawn(
    process.env.BRIDGE ?? join(top, 'target/debug/surefoot-bridge'),
    ['--dist', join(top, 'ui/dist-bridge'), '--data', data, '--today', today],
    { cwd: top, stdio: ['ignore', 'pipe', 'inherit'] },
  );
  const url = await new Promise((ok, no) => {
    createInterface({ input: bridge.stdout }).once('line', ok);
    bridge.once('exit', (code) => no(new Error(`the bridge ended with ${code}`)));
  });
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-background-networking', '--disable-component-update'],
  });
  try {
    const context = await browser.newContext({
      viewport: { width: 1280, height: 800 },
      reducedMotion: 'reduce',
    });
    const page = await context.newPage();
    const said = [];
    page.on('pageerror', (error) => said.push(String(error)));
    page.on('console', (message) => {
      // A refused call answers 422; the screens put it into words.
      if (['error', 'warning'].includes(message.type()) && !/ 422 /.test(message.text())) {
        said.push(message.text());
      }
    });
    page.on('request', (request) => {
      if (new URL(request.url()).hostname !== '127.0.0.1') said.push(`asked ${request.url()}`);
    });
    await page.goto(url);
    await page.evaluate(axe);
    const shot = async (name) => {
      if (!process.env.SHOTS) return;
      mkdirSync(process.env.SHOTS, { recursive: true });
      await page.screenshot({ path: join(process.env.SHOTS, `${name}.png`) });
    };
    const scan = async (name) => {
      await shot(name);
      // A page loaded anew has to be given it again.
      if (await page.evaluate(() => !window.axe)) await page.evaluate(axe);
      const { violations } = await page.evaluate(
        (tags) => window.axe.run(document, { runOnly: tags }),
        AXE_TAGS,
      );
      check(
        `${name}: accessibility`,
        violations.length === 0,
        violations.map((v) => `${v.id} (${v.impact}) ${v.nodes.map((n) => n.html).slice(0, 3)}`),
      );
      const text = await page.evaluate(() => document.body.innerText);
      check(`${name}: words for everything`, !text.includes('⟨'), text.match(/⟨[^⟩]*⟩/g));
    };
    const step = async (name, act) => {
      try {
        await act();
        passed += 1;
      } catch (error) {
        failed += 1;
        console.log(`FAILED ${name}`, error.message.split('\n').slice(0, 6).join('\n'));
        await shot(`failed-${name.replaceAll(' ', '-')}`);
      }
    };
    await doing({ page, url, data, step, scan, shot });
    check(
      'nothing was said on the console and nothing asked of elsewhere',
      said.length === 0,
      said,
    );
  } finally {
    await browser.close();
    bridge.kill();
    rmSync(data, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
  console.log(`${passed} passed, ${failed} failed`);
  process.exitCode = failed === 0 ? 0 : 1;
}
