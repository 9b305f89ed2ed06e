// Every picture and every way to answer on one page: seen by axe, and each way
// to answer filled in by taps and by keys. Pictures of the page go to shots/.
import { createServer } from 'node:http';
import { mkdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { PAGE, settled, STUDENT } from './measure/look.mjs';
import { axe, checks, openPage, sideways, SIZES, startChromium, tooSmall } from './bridge.mjs';

const UI = fileURLToPath(new URL('../', import.meta.url));
const DIST = join(UI, 'dist-gallery');
const SHOTS = join(UI, '../shots');
const TYPES = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' };

process.chdir(UI);
await build({ configFile: 'test/gallery/vite.config.ts', logLevel: 'warn' });
const server = createServer((request, response) => {
  const path = new URL(request.url, 'http://x').pathname;
  const file = join(DIST, path === '/' ? 'index.html' : path);
  response.setHeader('Content-Type', TYPES[extname(file)] ?? 'application/octet-stream');
  response.end(readFileSync(file));
});
await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
const url = `http://127.0.0.1:${server.address().port}/`;

const check = checks();
const browser = await startChromium();
mkdirSync(SHOTS, { recursive: true });

try {
  const { page, trouble } = await openPage(browser, url, SIZES.tablet);
  const given = async (name) => JSON.parse(await page.getByTestId(`given-${name}`).textContent());
  const entry = (name) => page.getByTestId(`entry-${name}`);
  const field = (name, n) => entry(name).getByTestId(`answer-field-${n}`);

  /** Waits for what an entry gives, and compares. */
  async function gives(name, expected) {
    const wanted = JSON.stringify(expected);
    let got = null;
    for (let n = 0; n < 20; n += 1) {
      got = JSON.stringify(await given(name));
      if (got === wanted) break;
      await page.waitForTimeout(25);
    }
    check.that(`${name} gives ${wanted}`, got === wanted, got);
  }
  /** Types into the boxes by keys, one text a box. */
  async function type(name, ...texts) {
    for (const [n, text] of texts.entries()) {
      await field(name, n).focus();
      await page.keyboard.type(text);
    }
  }
  /** Types into the boxes by the pad; ▸ goes to the next box. */
  async function pad(name, keys) {
    await field(name, 0).tap();
    for (const key of keys) {
      await entry(name)
        .getByTestId(key === '▸' ? 'pad-next' : `pad-${key}`)
        .tap();
    }
  }

  await page.getByRole('heading', { name: 'Gallery' }).waitFor();
  check.that('nothing is given before it is filled in', (await given('whole_number-0')) === null);
  await pad('whole_number-0', '409');
  await gives('whole_number-0', { kind: 'whole_number', text: '409' });
  await pad('whole_number-1', '−7');
  await gives('whole_number-1', { kind: 'whole_number', text: '−7' });
  await pad('decimal-0', '12.05');
  await gives('decimal-0', { kind: 'decimal', text: '12.05' });
  await pad('fraction-0', '3▸4');
  await gives('fraction-0', { kind: 'fraction', top: '3', bottom: '4' });
  await pad('mixed-0', '2▸1▸8');
  await gives('mixed-0', { kind: 'mixed', whole: '2', top: '1', bottom: '8' });
  await type('money-0', '3.50');
  await gives('money-0', { kind: 'money', text: '3.50' });
  await type('time-0', '10', '42');
  await gives('time-0', { kind: 'time', hour: '10', minute: '42', half_day: null });
  await type('time-1', '7', '05');
  await gives('time-1', null);
  await entry('time-1').getByTestId('answer-half-pm').tap();
  await gives('time-1', { kind: 'time', hour: '7', minute: '05', half_day: 'pm' });
  await type('duration-0', '1', '25');
  await gives('duration-0', { kind: 'duration', hours: '1', minutes: '25' });
  await type('duration-1', '45');
  await gives('duration-1', { kind: 'duration', hours: '', minutes: '45' });
  await entry('comparison-0').getByTestId('answer-choice-0').focus();
  await page.keyboard.press('>');
  await gives('comparison-0', { kind: 'comparison', sign: 'greater' });
  await entry('one_choice-0').getByTestId('answer-choice-3').tap();
  await gives('one_choice-0', { kind: 'one_choice', index: 3 });
  await page.keyboard.press('ArrowUp');
  await gives('one_choice-0', { kind: 'one_choice', index: 2 });
  for (const n of [0, 1, 2, 2]) {
    await entry('several_choices-0').getByTestId(`answer-choice-${n}`).tap();
  }
  await gives('several_choices-0', { kind: 'several_choices', indexes: [0, 1] });
  await entry('ordering-0').getByTestId('order-earlier-1').tap();
  await gives('ordering-0', { kind: 'ordering', order: [1, 0, 2] });
  await entry('ordering-0').getByTestId('order-later-0').focus();
  await page.keyboard.press('Enter');
  await gives('ordering-0', { kind: 'ordering', order: [0, 1, 2] });
  await pad('expression-0', ['3', '(', 'x', '+', '2', ')']);
  await gives('expression-0', { kind: 'expression', text: '3(x+2)' });
  await pad('equation-0', ['c', '=', '9', 't']);
  await gives('equation-0', { kind: 'equation', text: 'c=9t' });
  await type('coordinates-0', '3', '-2');
  await gives('coordinates-0', { kind: 'coordinates', x: '3', y: '-2' });

  // --- tapped on pictures
  const tapAt = async (locator, x, y, width, height) => {
    const svg = locator.locator('svg');
    const box = await svg.boundingBox();
    await svg.tap({ position: { x: (x / width) * box.width, y: (y / height) * box.height } });
  };
  const grid = entry('coordinates-1').getByTestId('answer-grid');
  // 340 for 8 steps of the grid, 52 at the left, 22 at the top: (2, -1).
  const size = await grid
    .locator('svg')
    .evaluate((e) => [e.viewBox.baseVal.width, e.viewBox.baseVal.height]);
  await tapAt(grid, 52 + 6 * 42.5 + 5, 22 + 4 * 42.5 - 5, ...size);
  await gives('coordinates-1', { kind: 'coordinates', x: '2', y: '-1' });
  const line = entry('number_line_point-0').getByTestId('answer-line');
  await tapAt(line, 36 + (488 * 3) / 8 + 6, 34, 560, 96);
  await gives('number_line_point-0', { kind: 'number_line_point', at: { top: 3, bottom: 4 } });
  await line.focus();
  await page.keyboard.press('ArrowRight');
  await gives('number_line_point-0', { kind: 'number_line_point', at: { top: 1, bottom: 1 } });
  const ray = entry('number_line_ray-0');
  await ray.getByTestId('answer-line').focus();
  await page.keyboard.press('End');
  await ray.getByTestId('answer-ray-open').tap();
  await ray.getByTestId('answer-ray-left').tap();
  await gives('number_line_ray-0', {
    kind: 'number_line_ray',
    from: { top: 2, bottom: 1 },
    open: true,
    rightward: false,
  });
  await type('angle-0', '75');
  await gives('angle-0', { kind: 'angle', text: '75' });
  const turn = entry('angle-1').getByTestId('answer-angle');
  await tapAt(turn, 240, 60, 480, 246);
  await gives('angle-1', { kind: 'angle', text: '90' });
  await turn.focus();
  await page.keyboard.press('ArrowRight');
  await gives('angle-1', { kind: 'angle', text: '91' });
  for (const n of [0, 5, 3, 3])
    await entry('shaded_fraction-0').getByTestId(`answer-part-${n}`).tap();
  await gives('shaded_fraction-0', { kind: 'shaded_fraction', parts: [0, 5] });
  const round = entry('shaded_fraction-1');
  for (const n of [1, 4]) {
    await round.getByTestId(`answer-part-${n}`).focus();
    await page.keyboard.press('Enter');
  }
  await gives('shaded_fraction-1', { kind: 'shaded_fraction', parts: [1, 4] });
  for (let n = 0; n < 3; n += 1) await entry('plot-0').getByTestId('plot-more-1').tap();
  await entry('plot-0').getByTestId('plot-less-1').tap();
  await gives('plot-0', { kind: 'plot', heights: [0, 10] });
  await entry('grid_area-0').getByTestId('answer-square-0-0').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press(' ');
  await gives('grid_area-0', {
    kind: 'grid_area',
    cells: [
      [0, 0],
      [1, 1],
    ],
  });
  await pad('quotient_remainder-0', '12▸3');
  await gives('quotient_remainder-0', {
    kind: 'quotient_remainder',
    quotient: '12',
    remainder: '3',
  });
  await type('several_numbers-0', '4', '2.5');
  await gives('several_numbers-0', { kind: 'several_numbers', texts: ['4', '2.5'] });

  // --- looks
  for (const [name, viewport] of Object.entries(SIZES)) {
    await page.setViewportSize(viewport);
    check.that(`${name}: no sideways`, (await sideways(page)) <= 0, `${await sideways(page)} px`);
    check.none(`${name}: sizes`, await tooSmall(page));
    await page.evaluate(PAGE);
    check.none(`${name}: reflow`, await page.evaluate(() => window.measure.reflow()));
    await page.evaluate(() => window.measure.spacing(true));
    check.none(`${name}, spaced: reflow`, await page.evaluate(() => window.measure.reflow()));
    await page.evaluate(() => window.measure.spacing(false));
    const targets = await page.evaluate(
      (least) => window.measure.targets(least, false),
      STUDENT.target,
    );
    check.none(`${name}: targets`, targets.found);
    check.that(`${name}: targets are looked at`, targets.looked > 100, targets.looked);
  }
  await page.setViewportSize(SIZES.tablet);
  for (const theme of ['light', 'dark', 'contrast', 'contrast_dark']) {
    await page.evaluate((to) => (document.documentElement.dataset.theme = to), theme);
    check.none(`${theme}: axe`, await axe(page));
    await settled(page);
    const colours = await page.evaluate(
      (args) => window.measure.contrast(...args),
      [STUDENT.text, STUDENT.large, STUDENT.mark],
    );
    check.none(`${theme}: contrast`, colours.found);
    await page.screenshot({ path: join(SHOTS, `gallery-${theme}.png`), fullPage: true });
  }
  check.none('no errors, nothing from elsewhere', trouble);
} catch (error) {
  check.that('the run came to its end', false, String(error.stack));
} finally {
  await browser.close();
  server.close();
  check.finish();
}
