import { describe, expect, test } from 'vitest';
import { closedDates, closureRanges, months, withDates } from './calendar';
import { load, moved } from './rotation';

const week = [1, 2, 3, 4, 5];

describe('closures', () => {
  test('lie together over a weekend, apart over a school day', () => {
    const ranges = closureRanges(['2026-11-27', '2026-11-26', '2026-11-30', '2026-12-02'], week);
    expect(ranges.map(({ first, last }) => [first, last])).toEqual([
      ['2026-11-26', '2026-11-30'],
      ['2026-12-02', '2026-12-02'],
    ]);
  });
  test('of a range are its school days only', () => {
    expect(closedDates('2026-11-26', '2026-11-30', week)).toEqual([
      '2026-11-26',
      '2026-11-27',
      '2026-11-30',
    ]);
    expect(closedDates('2026-11-28', '2026-11-29', week)).toEqual([]);
    expect(closedDates('2026-11-26', '', week)).toEqual(['2026-11-26']);
  });
  test('stand once each, in order', () => {
    expect(withDates(['b', 'a'], ['b', 'c'])).toEqual(['a', 'b', 'c']);
  });
});

test('months begin and end with the school year', () => {
  const found = months({
    first_day: '2026-11-29',
    last_day: '2026-12-02',
    weekdays: week,
    closures: [],
  });
  expect(found).toEqual([
    { first: '2026-11-29', lead: 6, dates: ['2026-11-29', '2026-11-30'] },
    { first: '2026-12-01', lead: 1, dates: ['2026-12-01', '2026-12-02'] },
  ]);
});

describe('a concept moved to another day', () => {
  const days = [['a', 'b'], ['c'], []];
  test('stands there once and the others stay in order', () => {
    expect(moved(days, 'a', 1)).toEqual([['b'], ['c', 'a'], []]);
  });
  test('stays where it is at the ends and on its own day', () => {
    expect(moved(days, 'a', -1)).toBe(days);
    expect(moved(days, 'a', 3)).toBe(days);
    expect(moved(days, 'a', 0)).toBe(days);
  });
  test('the load is told from the fullest to the emptiest day', () => {
    expect(load(days)).toEqual({ most: 2, least: 0 });
  });
});
