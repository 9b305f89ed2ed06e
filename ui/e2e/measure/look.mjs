// What is measured at one stop of a way: targets, contrast in every theme, reflow,
// spacing of text, and axe. The code that runs in the page is in `page`.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { axe } from '../bridge.mjs';

export const PAGE = ['common', 'targets', 'contrast', 'reflow']
  .map((name) => readFileSync(fileURLToPath(new URL(`page/${name}.js`, import.meta.url)), 'utf8'))
  .join('\n');
export const THEMES = ['light', 'dark', 'contrast', 'contrast_dark'];

/** What is asked of a screen: side of a target, contrast of text, of large text, of marks. */
export const STUDENT = { target: 48, spaced: false, text: 7, large: 7, mark: 3 };
export const DESK = { target: 24, spaced: true, text: 4.5, large: 3, mark: 3 };

/** 320 px is 1280 px at 400 %, 640 px is 1280 px at 200 %; 1280 by 1024 is taken. */
const ZOOMED = [
  ['at 400 %', { width: 320, height: 256 }],
  ['at 200 %', { width: 640, height: 512 }],
];

/** Waits until nothing moves and what was changed is painted. */
export async function settled(page) {
  await page.evaluate(async () => {
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
    await Promise.allSettled(document.getAnimations().map((one) => one.finished));
  });
}

/** Shows a theme until the next change of settings. */
export function showTheme(page, theme) {
  return page.evaluate((to) => (document.documentElement.dataset.theme = to), theme);
}

/** How much was looked at, and what was let pass on which ground. */
export function tally() {
  return { stops: 0, targets: 0, colours: 0, lowest: Infinity, spared: {} };
}

/**
 * Measures the page as it stands: contrast in every theme if `colours`, and axe in
 * `axeThemes`.
 */
export async function look(page, name, asked, { check, sums, size, colours, axeThemes }) {
  await settled(page);
  await page.evaluate(PAGE);
  sums.stops += 1;
  const spare = (of) => {
    for (const [why, count] of Object.entries(of))
      sums.spared[why] = (sums.spared[why] ?? 0) + count;
  };

  const targets = () =>
    page.evaluate((args) => window.measure.targets(...args), [asked.target, asked.spaced]);
  const here = await targets();
  sums.targets += here.looked;
  spare(here.spared);
  check.none(`${name}: targets`, here.found);

  const found = [];
  for (const theme of THEMES.filter((one) => colours || axeThemes.includes(one))) {
    await showTheme(page, theme);
    if (colours) {
      const got = await page.evaluate(
        (args) => window.measure.contrast(...args),
        [asked.text, asked.large, asked.mark],
      );
      sums.colours += got.looked;
      sums.lowest = Math.min(sums.lowest, got.lowest);
      if (theme === 'light') spare(got.spared);
      found.push(...got.found.map((one) => `${theme}: ${one}`));
    }
    if (axeThemes.includes(theme)) {
      found.push(...(await axe(page)).map((one) => `${theme}: ${one}`));
    }
  }
  await showTheme(page, 'light');
  check.none(`${name}: contrast and axe`, found);

  const cut = [];
  const reflow = async (at) => {
    const got = await page.evaluate(() => window.measure.reflow());
    cut.push(...got.map((one) => `${at}: ${one}`));
  };
  await reflow('as it is');
  await page.evaluate(() => window.measure.spacing(true));
  await reflow('spaced');
  for (const [zoom, viewport] of ZOOMED) {
    await page.setViewportSize(viewport);
    await reflow(`${zoom}, spaced`);
    await page.evaluate(() => window.measure.spacing(false));
    await reflow(zoom);
    if (viewport.width === 320) {
      const narrow = await targets();
      check.none(`${name}: targets ${zoom}`, narrow.found);
    }
    await page.evaluate(() => window.measure.spacing(true));
  }
  await page.evaluate(() => window.measure.spacing(false));
  await page.setViewportSize(size);
  check.none(`${name}: reflow`, cut);
}
