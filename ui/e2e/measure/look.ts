// How a screen looks and whether everybody can use it: targets, size and contrast of
// text, reflow, spacing of text, missing words, and axe.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page } from '@playwright/test';
import type { AxeResults, RunOptions } from 'axe-core';
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
/** 1280 × 1024 px at 400 % and at 200 %. */
const NARROWEST = { width: 320, height: 256 };
const ZOOMED = [NARROWEST, { width: 640, height: 512 }];

declare const axe: { run: (context: Document, options: RunOptions) => Promise<AxeResults> };

/** Waits until calls are answered, animations have ended, and changes are painted. */
export async function settled(page: Page): Promise<void> {
  await answered(page.context());
  await page.evaluate(async () => {
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
    await Promise.allSettled(document.getAnimations().map((one) => one.finished));
  });
}

/** Shows a theme until the next change of settings. */
export async function showTheme(page: Page, theme: string): Promise<void> {
  const changed = await page.evaluate((to) => {
    const { dataset } = document.documentElement;
    if (dataset.theme === to) return false;
    dataset.theme = to;
    return true;
  }, theme);
  if (changed) await settled(page);
}

export async function measurable(page: Page): Promise<void> {
  if (!(await page.evaluate(() => 'measure' in window))) await page.evaluate(installMeasures);
}

/**
 * The findings of axe: all severities, and all rules but the one for contrast, which is
 * measured more strictly here, and takes axe two thirds of its time.
 */
async function barriers(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(AXE);
  const { violations } = await page.evaluate(() =>
    axe.run(document, {
      rules: { 'color-contrast': { enabled: false } },
      // Of what is in order, nothing is kept; nor are paths to the elements.
      resultTypes: ['violations'],
      selectors: false,
    }),
  );
  return violations.map(
    (v) => `${v.id} (${v.impact}): ${v.nodes.map((n) => n.html.slice(0, 160)).join(' | ')}`,
  );
}

/** Checks targets and reflow at a size; with `spaced`, also with wide spacing of text. */
async function sized(page: Page, asked: Asked, spaced: boolean): Promise<string[]> {
  return page.evaluate(
    ([of, wide]) => {
      const { targets, reflow, spacing } = window.measure;
      const found = [...targets(of).found, ...reflow()];
      spacing(wide);
      if (wide) found.push(...reflow().map((one) => `spaced: ${one}`));
      spacing(false);
      return found;
    },
    [asked, spaced] as const,
  );
}

async function coloured(page: Page, asked: Asked, themes: readonly string[]): Promise<string[]> {
  const found: string[] = [];
  for (const theme of themes) {
    if (themes.length > 1) await showTheme(page, theme);
    const got = await page.evaluate((of) => window.measure.contrast(of), asked);
    if (got.looked === 0) found.push(`${theme}: no text to read`);
    found.push(...got.found.map((one) => `${theme}: ${one}`));
  }
  return found;
}

export interface How {
  /** Themes for contrast; without it, the one that is shown. */
  themes?: readonly ShownTheme[];
  /** Themes for axe; without it, the one that is shown. */
  axe?: readonly ShownTheme[];
  /**
   * Whether to measure at every size, zoomed, and with wide spacing of text, or only where
   * longer words are cut off first.
   */
  sizes?: boolean | 'tightest';
}

/** Measures the screen as it is now, and as `how` asks. */
export async function look(page: Page, name: string, asked: Asked, how: How = {}): Promise<void> {
  await settled(page);
  await measurable(page);
  const size = page.viewportSize() ?? SIZES.tablet;
  const { theme: shown, words } = await page.evaluate((least) => {
    const { theme = 'light' } = document.documentElement.dataset;
    const missing = document.body.innerText.match(/⟨[^⟩]*⟩?/g) ?? [];
    return { theme, words: [...window.measure.smallText(least), ...missing] };
  }, asked.size);
  const found = [
    ...words,
    ...(await sized(page, asked, how.sizes === true)),
    ...(await coloured(page, asked, how.themes ?? [shown])),
  ];
  for (const theme of how.axe ?? [shown]) {
    await showTheme(page, theme);
    found.push(...(await barriers(page)).map((one) => `${theme}: ${one}`));
  }
  await showTheme(page, shown);

  const { tablet, landscape, phone } = SIZES;
  const all = how.sizes === true ? [...ZOOMED, tablet, landscape, phone] : [NARROWEST, landscape];
  for (const viewport of how.sizes ? all.filter((one) => one.width !== size.width) : []) {
    await page.setViewportSize(viewport);
    const zoomed = ZOOMED.includes(viewport);
    found.push(...(await sized(page, asked, zoomed)).map((one) => `${viewport.width} px: ${one}`));
  }
  await page.setViewportSize(size);
  expect.soft(found, name).toEqual([]);
}
