// Exercises side by side, one of each concept in both languages, and every kind of
// picture with its words, as images in shots/ for a teacher to look over. Also how
// long prompt and picture take to be drawn: printed, and no check, since it is the
// machine's as much as ours (wanted are 2 ms).
//
//   node e2e/contact.e2e.mjs [level] [seed]
import { execFileSync } from 'node:child_process';
import { createServer } from 'node:http';
import { mkdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { checks, openPage, startChromium } from './bridge.mjs';

const UI = fileURLToPath(new URL('../', import.meta.url));
const DIST = join(UI, 'dist-contact');
const SHOTS = join(UI, '../shots');
const TYPES = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' };
const SUREFOOT = process.env.SUREFOOT ?? join(UI, '../target/debug/surefoot');
const CARDS = 12;
const [level = '2', seed = '3'] = process.argv.slice(2);

/** Exercises, as the command gives them. */
function exercises(...more) {
  const lines = execFileSync(SUREFOOT, ['exercises', '--concept', 'all', ...more], {
    maxBuffer: 1 << 28,
    encoding: 'utf8',
  });
  return lines
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));
}

process.chdir(UI);
await build({ configFile: 'test/contact/vite.config.ts', logLevel: 'warn' });
const server = createServer((request, response) => {
  const path = new URL(request.url, 'http://x').pathname;
  response.setHeader('Content-Type', TYPES[extname(path) || '.html'] ?? 'application/octet-stream');
  response.end(readFileSync(join(DIST, path === '/' ? 'index.html' : path)));
});
await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
const url = `http://127.0.0.1:${server.address().port}/`;

const check = checks();
const browser = await startChromium();
mkdirSync(SHOTS, { recursive: true });

try {
  const { page, trouble } = await openPage(browser, url, { width: 1720, height: 1200 });
  await page.waitForFunction(() => window.contact);
  const show = (items, language, figures) =>
    page.evaluate((args) => window.contact.show(...args), [items, language, figures]);
  const shot = (name) => page.screenshot({ path: join(SHOTS, `${name}.png`), fullPage: true });

  const items = exercises('--level', level, '--seed', seed);
  check.that('every concept has an exercise', items.length >= 140, String(items.length));
  for (const language of ['en', 'es']) {
    for (let at = 0; at < items.length; at += CARDS) {
      const some = items.slice(at, at + CARDS);
      await show(some, language, false);
      check.that(
        `${language} from ${at}: a card each`,
        (await page.getByTestId('card').count()) === some.length,
      );
      const empty = await page.evaluate(() =>
        [...document.querySelectorAll('[data-testid=card]')]
          .filter((card) => card.textContent.trim().length < 20)
          .map((card) => card.textContent),
      );
      check.none(`${language} from ${at}: words`, empty);
      await shot(`exercises-${language}-${String(at / CARDS + 1).padStart(2, '0')}`);
    }
  }

  // Each kind of picture, three times at most.
  const more = exercises('--seed', '0', '--count', '2');
  const seen = new Map();
  const pictured = [];
  for (const item of more) {
    const pictures = [...item.prompt, ...item.hints.flat(), ...item.steps.flat()].filter(
      (block) => block.kind === 'figure',
    );
    const fresh = pictures.filter((block) => {
      const kind = block.figure.drawing.kind;
      seen.set(kind, (seen.get(kind) ?? 0) + 1);
      return seen.get(kind) <= 3;
    });
    if (fresh.length > 0) pictured.push({ ...item, prompt: fresh, hints: [], steps: [] });
  }
  check.that('kinds of pictures', seen.size >= 20, String(seen.size));
  for (const language of ['en', 'es']) {
    for (let at = 0; at < pictured.length; at += 20) {
      await show(pictured.slice(at, at + 20), language, true);
      await shot(`figures-${language}-${at / 20 + 1}`);
    }
  }

  const times = await page.evaluate(([some, runs]) => window.contact.time(some, runs), [more, 5]);
  const sorted = times.map((one) => one.milliseconds).sort((a, b) => a - b);
  const at = (part) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))];
  console.log(
    `prompt and picture: ${at(0.5).toFixed(2)} ms in the middle, ${at(0.95).toFixed(2)} ms for 95 in 100, ` +
      `${at(1).toFixed(2)} ms at most, of ${sorted.length}`,
  );
  times.sort((a, b) => b.milliseconds - a.milliseconds);
  for (const one of times.slice(0, 5))
    console.log(`slow: ${one.concept} ${one.level} ${one.milliseconds.toFixed(2)} ms`);
  check.that('each was drawn and timed', times.length === more.length, String(times.length));
  check.none('no errors, nothing from elsewhere', trouble);
} catch (error) {
  check.that('the run came to its end', false, String(error.stack));
} finally {
  await browser.close();
  server.close();
  check.finish();
}
