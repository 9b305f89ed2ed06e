import { render } from '@testing-library/svelte';
import { afterEach, describe, expect, test } from 'vitest';
import type { Entry, Expr, Say } from '../backend';
import { typed } from '../answer/typed';
import Math from '../math/Math.svelte';
import { spoken } from '../math/spoken';
import { row } from '../math/tokens';
import { exact, LANGUAGES, number, percent, plain, say, setDecimalSign, setLanguage } from '.';

const decimal = (text: string): Expr => ({ kind: 'number', text });
const PAIR: Expr = { kind: 'pair', x: decimal('1.5'), y: decimal('2') };

afterEach(() => {
  setDecimalSign('language');
  setLanguage('en');
});

describe.each(LANGUAGES.map(({ tag }) => tag))('%s', (language) => {
  test('numbers are written with a point unless a comma is asked for', () => {
    setLanguage(language);
    for (const sign of ['language', 'point'] as const) {
      setDecimalSign(sign);
      expect(exact('-1234.50')).toBe('−1,234.50');
      expect(number(12345.5, 1)).toBe('12,345.5');
      expect(row(PAIR)).toBe('(1.5, 2)');
    }
    setDecimalSign('comma');
    expect(exact('-1234.50')).toBe('−1\u{202f}234,50');
    expect(number(12345.5, 1)).toBe('12\u{202f}345,5');
    expect(percent(0.125)).not.toContain('.');
    expect(row(PAIR)).toBe('(1,5; 2)');
    expect(row({ kind: 'money', hundredths: 350 })).toBe('$3,50');
  });

  test('numbers in sentences have the chosen sign too, and still choose the plural', () => {
    setLanguage(language);
    setDecimalSign('comma');
    expect(say('practice-over-text', { finished: 1200, minutes: number(4) })).toContain(
      '1\u{202f}200',
    );
    const left = say('entry-squares-count', { count: 1 });
    expect(say('entry-squares-count', { count: 2 })).not.toBe(left.replace('1', '2'));
    const measures: Say = {
      id: 'answer-several',
      args: { numbers: { kind: 'numbers', texts: ['3.5', '2'] } },
    };
    expect(plain(measures)).toContain('3,5; 2');
  });
});

test('the sign reaches mathematics as it is set and as it is read', () => {
  setDecimalSign('comma');
  const { container } = render(Math, { props: { expr: PAIR } });
  expect(container.querySelector('math')?.textContent).toBe('(1,5;2)');
  expect(spoken(decimal('0.25'))).toBe('0,25');
});

test('the number pad has the sign of the student', () => {
  const entries: Entry[] = [
    { kind: 'decimal', signed: true, unit: null },
    { kind: 'money' },
    { kind: 'several_numbers', fields: [], decimals: true, signed: false },
    { kind: 'coordinates', frame: null },
  ];
  for (const [sign, key] of [
    ['comma', ','],
    ['point', '.'],
  ] as const) {
    setDecimalSign(sign);
    for (const entry of entries) expect(typed(entry)?.keys).toContain(key);
  }
});
