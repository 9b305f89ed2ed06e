import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const text = readFileSync('src/lib/theme/colours.css', 'utf8');

function colours(theme: string): (name: string) => string {
  const block = new RegExp(`data-theme='${theme}'\\] \\{([^}]*)\\}`).exec(text)?.[1] ?? '';
  return (name) => {
    const found = new RegExp(`--${name}: (#[0-9a-f]+);`).exec(block)?.[1];
    if (found === undefined) throw new Error(`${theme} has no ${name}`);
    return found.length === 4 ? found.replace(/[0-9a-f]/g, '$&$&') : found;
  };
}

/** Relative luminance and contrast ratio of WCAG 2.2. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const c = parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

const TEXT: [string, string][] = [
  ['ink', 'paper'],
  ['ink', 'sheet'],
  ['ink', 'sunk'],
  ['ink', 'amber-wash'],
  ['ink', 'teal-wash'],
  ['ink', 'plum-wash'],
  ['ink-soft', 'paper'],
  ['ink-soft', 'sheet'],
  ['ink-soft', 'sunk'],
  ['on-plum', 'plum'],
  ['on-plum', 'plum-deep'],
  ['plum', 'paper'],
  ['plum', 'sheet'],
  ['plum', 'plum-wash'],
  ['plum', 'amber-wash'],
  ['teal', 'paper'],
  ['teal', 'sheet'],
  ['teal', 'teal-wash'],
];
const MARKS: [string, string][] = [
  ['edge', 'paper'],
  ['edge', 'sheet'],
  ['edge', 'sunk'],
  ['stone-edge', 'paper'],
  ['stone-edge', 'sheet'],
  ['stone-edge', 'teal-wash'],
  ['amber-edge', 'paper'],
  ['amber-edge', 'amber-wash'],
  ['focus', 'paper'],
  ['focus', 'sheet'],
];

test('black on white is 21 to 1', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
});

describe.each(['light', 'dark', 'contrast', 'contrast_dark'])('%s', (theme) => {
  const of = colours(theme);
  test.each(TEXT)('text %s on %s has 7 to 1', (one, other) => {
    expect(contrast(of(one), of(other))).toBeGreaterThanOrEqual(7);
  });
  test.each(MARKS)('mark %s on %s has 3 to 1', (one, other) => {
    expect(contrast(of(one), of(other))).toBeGreaterThanOrEqual(3);
  });
  test('the stones grow from faint to strong', () => {
    const steps = [1, 2, 3, 4].map((n) => contrast(of(`stone-${n}`), of('sheet')));
    expect(steps).toEqual([...steps].sort((a, b) => a - b));
  });
});
