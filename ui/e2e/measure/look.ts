// How a screen looks and whether everybody can use it: targets, size and contrast of
// text, reflow, spacing of text, missing words, and axe.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page } from '@playwright/test';
import type { AxeResults } from 'axe-core';
import { answered } from '../fixtures';
import { UI } from '../places';
import { SIZES } from '../sizes';
import { type Asked, installMeasures } from './page';

export const THEMES = ['light', 'dark', 'contrast', 'contrast_dark'] as const;
export type ShownTheme = (typeof THEMES)[number];

/** WCAG 2.2 AAA and a finger's width for students, AA for the desk. */
export const STUDENT: Asked = { target: 48, spaced: false, size: 18, text: 7, large: 7, mark: 3 };
export const DESK: Asked = { target: 24, spaced: true, size: 0, text: 4.5, large: 3, mark: 3 };

/** Whether to measure every screen in every theme and language, or a covering sample. */
export const ALL = process.env.MEASURE_ALL === '1';

const AXE = readFileSync(join(UI, 'node_modules/axe-core/axe.min.js'), 'utf8');
/** 320 px is 1280 px at 400 %, 640 px is 1280 px at 200 %; 1280 by 1024 is taken. */
const ZOOMED = [
  { width: 320, height: 256 },
  { width: 640, height: 512 },
];

declare const axe: { run: (context: Document) => Promise<AxeResults> };

/** Waits until calls are answered, nothing moves, and what was changed is painted. */
export async function settled(page: Page): Promise<void> {
  await answered(page.context());
  await page.evaluate(async () => {
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
    await Promise.allSettled(document.getAnimations().map((one) => one.finished));
  });
}

/** Shows a theme until the next change of settings. */
export async function showTheme(page: Page, theme: ShownTheme): Promise<void> {
  await page.evaluate((to) => (document.documentElement.dataset.theme = to), theme);
  await settled(page);
}

export async function measurable(page: Page): Promise<void> {
  if (!(await page.evaluate(() => 'measure' in window))) await page.evaluate(installMeasures);
}

/** The findings of axe: all rules, all severities. */
async function barriers(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(AXE);
  const { violations } = await page.evaluate(() => axe.run(document));
  return violations.map(
    (v) => `${v.id} (${v.impact}): ${v.nodes.map((n) => n.html.slice(0, 160)).join(' | ')}`,
  );
}

interface How {
  /** Themes in which contrast is measured; else only in the one that is shown. */
  themes?: readonly ShownTheme[];
  /** Themes for axe; else the one that is shown. */
  axe?: readonly ShownTheme[];
  /** Whether to measure on every size of screen, zoomed, and with wide spacing of text. */
  sizes?: boolean;
}

/** Measures the screen as it is now, and as a reader may set it. */
export async function look(page: Page, name: string, asked: Asked, how: How = {}): Promise<void> {
  await settled(page);
  await measurable(page);
  const found: string[] = [];
  const note = (where: string, some: string[]) =>
    found.push(...some.map((one) => (where ? `${where}: ${one}` : one)));
  const sized = async (where: string) =>
    note(
      where,
      await page.evaluate(
        (of) => [...window.measure.targets(of).found, ...window.measure.reflow()],
        asked,
      ),
    );

  note('', await page.evaluate((least) => window.measure.smallText(least), asked.size));
  const missing = await page.evaluate(() => document.body.innerText.match(/⟨[^⟩]*⟩?/g) ?? []);
  note('no words for', missing);
  await sized('');

  const shown = await page.evaluate(() => document.documentElement.dataset.theme ?? 'light');
  const [themes, axeThemes] = [how.themes ?? [shown], how.axe ?? [shown]];
  for (const theme of new Set([...themes, ...axeThemes])) {
    if (theme !== shown || themes.length > 1) await showTheme(page, theme as ShownTheme);
    if (themes.includes(theme as ShownTheme)) {
      const got = await page.evaluate((of) => window.measure.contrast(of), asked);
      if (got.looked === 0) note(theme, ['no text to read']);
      note(theme, got.found);
    }
    if (axeThemes.includes(theme as ShownTheme)) note(theme, await barriers(page));
  }
  await showTheme(page, shown as ShownTheme);

  const size = page.viewportSize();
  if (how.sizes && size) {
    for (const viewport of [size, ...ZOOMED]) {
      await page.setViewportSize(viewport);
      if (viewport !== size) await sized(`${viewport.width} px`);
      await page.evaluate(() => window.measure.spacing(true));
      note(`${viewport.width} px, spaced`, await page.evaluate(() => window.measure.reflow()));
      await page.evaluate(() => window.measure.spacing(false));
    }
    for (const viewport of [SIZES.landscape, SIZES.tablet, SIZES.phone]) {
      await page.setViewportSize(viewport);
      await sized(`${viewport.width} px`);
    }
    await page.setViewportSize(size);
  }
  expect.soft(found, name).toEqual([]);
}
