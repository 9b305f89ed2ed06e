import { beforeEach, expect, test } from 'vitest';
import type { Say } from '../backend';
import { row, tokens } from '../math/tokens';
import { spoken } from '../math/spoken';
import { date, exact, opening, pieces, plain, say, setLanguage } from '.';
import { n, over } from '../../../test/samples/figures';

beforeEach(() => setLanguage('en'));

const sentence: Say = {
  id: 'g3-fraction-on-line-step-jumps',
  args: {
    steps: { kind: 'count', value: 3 },
    step: { kind: 'math', expr: over(1, 4) },
    fraction: { kind: 'math', expr: over(3, 4) },
  },
};

test('mathematics is in the place of its argument in a sentence', () => {
  expect(pieces(sentence)).toEqual([
    { text: '3 jumps from 0 make ' },
    { expr: over(3, 4) },
    { text: '.' },
  ]);
});

test('a sentence read out says the mathematics', () => {
  expect(plain(sentence)).toBe('3 jumps from 0 make 3 over 4.');
  setLanguage('es');
  expect(plain(sentence)).toContain('3 sobre 4');
});

test.each([
  ['1234', '1,234'],
  ['-1234567.50', '−1,234,567.50'],
  ['0.125', '0.125'],
  ['999', '999'],
  ['x+1', 'x+1'],
])('%s is written %s', (text, shown) => {
  expect(exact(text)).toBe(shown);
});

test('exact decimals keep their last zeros and every digit', () => {
  expect(exact('12345678901234567890.10')).toBe('12,345,678,901,234,567,890.10');
});

test('a date is the same day in each time zone', () => {
  expect(date('2026-09-16', 'day')).toBe('September 16, 2026');
  setLanguage('es');
  expect(date('2026-09-16', 'day')).toBe('16 de septiembre de 2026');
});

test('plural forms follow the language', () => {
  expect(say('today-left', { left: 1 })).toBe('1 more to rate');
  setLanguage('es');
  expect(say('today-left', { left: 1 })).toBe('Falta 1 por valorar');
  expect(say('today-left', { left: 3 })).toBe('Faltan 3 por valorar');
});

test('mathematics in a row and read out', () => {
  const mixed = { kind: 'mixed', whole: n(2), top: n(3), bottom: n(4) } as const;
  expect(row(mixed)).toBe('23/4');
  expect(tokens(mixed)).toEqual([{ text: '2' }, { top: '3', bottom: '4' }]);
  expect(spoken(mixed)).toBe('2 and 3 over 4');
  expect(row({ kind: 'power', base: n(10), exponent: n(3) })).toBe('10³');
  expect(spoken({ kind: 'relation', left: n(3), sign: 'at_most', right: n(-5) })).toBe(
    '3 is at most minus 5',
  );
  expect(row({ kind: 'money', hundredths: 1250 })).toBe('$12.50');
  expect(row({ kind: 'time', hour: 7, minute: 5 })).toBe('7:05');
});

test('a date has a capital at the beginning, and none within a sentence', () => {
  setLanguage('es');
  expect(opening(date('2026-09-16'))).toBe('Miércoles, 16 de septiembre');
  expect(date('2026-09-16')).toBe('miércoles, 16 de septiembre');
  expect(opening('')).toBe('');
  setLanguage('en');
  expect(opening(date('2026-09-16'))).toBe('Wednesday, September 16');
});
