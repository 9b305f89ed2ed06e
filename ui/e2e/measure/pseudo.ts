// The pseudo-language: every text is longer than in English, and every vowel, n, c and y
// has an accent. So a word with a plain one was not translated.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page } from '@playwright/test';
import type { Language } from '../../src/lib/backend/contract';
import { LANGUAGE_LINES } from '../languages';
import { SHOTS, TOP } from '../places';
import { SIZES } from '../sizes';
import type { At } from '../walk/way';
import { measurable, settled } from './look';

/** Not part of the program's table of languages. */
export const PSEUDO = 'en-XA' as Language;

const months = (month: 'long' | 'short') =>
  Array.from({ length: 12 }, (_, at) =>
    new Date(Date.UTC(2026, at, 15)).toLocaleDateString('en-US', { month, timeZone: 'UTC' }),
  );
const weekdays = (weekday: 'long' | 'short') =>
  Array.from({ length: 7 }, (_, at) =>
    new Date(Date.UTC(2026, 5, at + 1)).toLocaleDateString('en-US', { weekday, timeZone: 'UTC' }),
  );

/** Words that are the same in every language, by reason. */
const SAME: Record<string, string[]> = {
  'dates are written by the browser in the locale of the language': [
    ...months('long'),
    ...months('short'),
    ...weekdays('long'),
    ...weekdays('short'),
  ],
  'lists are joined by the browser in the locale of the language': ['and'],
  'keys are named as on the keyboard': ['Ctrl'],
  'languages are named in themselves': LANGUAGE_LINES.map(({ name }) => name),
  'names of people in exercises': names('crates/exercises/src/dice.rs', 'const NAMES'),
  'units and signs of measurement': ['cm', 'mm', 'km', 'oz'],
  'the names of file formats': ['CSV', 'QTI', 'CASE', 'JSON', 'XLSX', 'PDF'],
};

/** Texts that are the same in every language. */
const SHAPES: [reason: string, shape: RegExp][] = [
  ['files keep their names', /[^\s“”«»]+\.(pdf|csv|xlsx|xml|json|zip|sf[a-z]+|sqlite)\b/gi],
  ['signs of slips and devices', /\b[0-9A-Z]{3}(-[0-9A-Z]{3})+\b/g],
  ['codes of published standards', /\b[A-Z0-9]+(\.[A-Za-z0-9]+)+\b/g],
  ['ids of own concepts and classes', /\b(own|g\d)-[a-z0-9-]+/g],
];

function names(path: string, start: string): string[] {
  const text = readFileSync(join(TOP, path), 'utf8');
  const from = text.indexOf(start);
  return [...text.slice(from, text.indexOf('];', from)).matchAll(/"([^"]+)"/g)].map(
    ([, name = '']) => name,
  );
}

/** The words of a text that are not translated, except the `typed` ones. */
export function untranslated(text: string, typed: readonly string[]): string[] {
  let rest = text;
  for (const [, shape] of SHAPES) rest = rest.replaceAll(shape, ' ');
  for (const name of typed)
    rest = rest.replaceAll(
      new RegExp(`(?<!\\p{L})${name.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&')}(?!\\p{L})`, 'gu'),
      ' ',
    );
  const same = new Set(Object.values(SAME).flat());
  return (rest.match(/\p{L}{2,}/gu) ?? []).filter(
    (word) => /[aeiouycn]/i.test(word) && !same.has(word),
  );
}

/** All texts of the screen, visible or read out, without mathematics. */
async function texts(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const parent = walker.currentNode.parentElement;
      if (!parent || parent.closest('math, script, style, [lang]:not(html)')) continue;
      found.push(walker.currentNode.nodeValue ?? '');
    }
    for (const element of document.body.querySelectorAll('*')) {
      if (element.closest('math, [lang]:not(html)')) continue;
      for (const name of ['aria-label', 'placeholder', 'title', 'alt', 'aria-valuetext'])
        found.push(element.getAttribute(name) ?? '');
    }
    return found.filter((text) => /\p{L}{2}/u.test(text));
  });
}

/**
 * Checks at each stop that every text is translated, and none is cut off at any of the
 * sizes. Collects the faults of all stops.
 */
export function pseudoAt(
  page: Page,
  kind: string,
  sizes: (keyof typeof SIZES)[],
  faults: string[],
  typed: (stop: string) => readonly string[],
): At {
  return async (stop) => {
    await settled(page);
    for (const text of await texts(page)) {
      const words = untranslated(text, typed(stop));
      if (words.length > 0)
        faults.push(`${stop}: not translated: ${words.join(' ')} (${text.trim().slice(0, 80)})`);
    }
    const first = page.viewportSize();
    await measurable(page);
    for (const size of sizes) {
      await page.setViewportSize(SIZES[size]);
      await settled(page);
      for (const fault of await page.evaluate(() => window.measure.reflow()))
        faults.push(`${stop}, ${size}: ${fault}`);
      if (process.env.PICTURES)
        await page.screenshot({
          path: join(SHOTS, `pseudo-${kind}-${size}-${stop}.png`),
          fullPage: true,
        });
    }
    if (first) await page.setViewportSize(first);
  };
}

export function expectNone(faults: readonly string[]): void {
  expect([...new Set(faults)]).toEqual([]);
}

/** The words of a PDF that lie outside its page, and those that are not translated. */
export function printFaults(name: string, path: string, typed: readonly string[]): string[] {
  const box = execFileSync('pdftotext', ['-bbox', path, '-'], { encoding: 'utf8' });
  const faults: string[] = [];
  let [width, height, words] = [0, 0, 0];
  for (const line of box.split('\n')) {
    const page = /<page width="([\d.]+)" height="([\d.]+)"/.exec(line);
    if (page) [width, height] = [Number(page[1]), Number(page[2])];
    const word = /xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*)</.exec(
      line,
    );
    if (!word) continue;
    words += 1;
    const [left = 0, top = 0, right = 0, bottom = 0] = word.slice(1, 5).map(Number);
    if (left < 0 || top < 0 || right > width || bottom > height)
      faults.push(`${name}: beyond the page: ${word[5]}`);
  }
  if (words === 0) faults.push(`${name}: no words`);
  const text = execFileSync('pdftotext', ['-raw', path, '-'], { encoding: 'utf8' });
  for (const line of text.split('\n')) {
    const found = untranslated(line, typed);
    if (found.length > 0)
      faults.push(`${name}: not translated: ${found.join(' ')} (${line.slice(0, 80)})`);
  }
  return faults;
}
