import { expect, test } from 'vitest';
import type { ReportInfo } from '../../lib/backend';
import { faults, firstChoice, mostOfEach, valuesFor } from './report';

const sheet: ReportInfo = {
  name: 'sheet',
  section: 'sheet',
  title: '',
  about: '',
  fields: [
    { kind: 'concepts' },
    { kind: 'count', most: 20 },
    { kind: 'numbers' },
    { kind: 'paper' },
  ],
  previewed: true,
};

test('a report is sent what it asks for and nothing else', () => {
  const chosen = { ...firstChoice(3), concepts: ['c'], count: 4, seed: 7 };
  expect(valuesFor(sheet, chosen, '2026-09-30')).toEqual({ concepts: ['c'], count: 4, seed: 7 });
  expect(valuesFor({ ...sheet, fields: [] }, chosen, '2026-09-30')).toEqual({});
  const ofDay: ReportInfo = { ...sheet, fields: [{ kind: 'day' }, { kind: 'halves' }] };
  expect(valuesFor(ofDay, chosen, '2026-09-30')).toEqual({ halves: true });
});

test('what is missing or out of range keeps a report from being made', () => {
  const chosen = firstChoice(1);
  expect(mostOfEach(sheet)).toBe(20);
  expect(faults(sheet, chosen)).toEqual(['concepts']);
  expect(faults(sheet, { ...chosen, concepts: ['c'] })).toEqual([]);
  expect(faults(sheet, { ...chosen, concepts: ['c'], count: 21 })).toEqual(['count']);
  expect(faults(sheet, { ...chosen, concepts: ['c'], count: 1.5 })).toEqual(['count']);
  expect(faults({ ...sheet, fields: [{ kind: 'group' }] }, chosen)).toEqual(['group']);
});

test('a page is for today, for the next day, or for a chosen one', () => {
  const page: ReportInfo = { ...sheet, fields: [{ kind: 'day' }] };
  const dateOf = (change: Partial<ReturnType<typeof firstChoice>>) =>
    valuesFor(page, { ...firstChoice(1), ...change }, '2026-12-31').date;
  expect(dateOf({})).toBeUndefined();
  expect(dateOf({ day: 'next' })).toBe('2027-01-01');
  expect(dateOf({ day: 'other', date: '2027-02-03' })).toBe('2027-02-03');
  expect(dateOf({ day: 'other', date: '' })).toBeUndefined();
});
