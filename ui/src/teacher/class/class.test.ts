import { describe, expect, test } from 'vitest';
import { closedDates, closureRanges, months, withDates } from './calendar';
import { lightest, load, moved, spread, unevenStrands } from './rotation';
import { lessonsOutside, yearFault, yearSum } from './year';

const week = [1, 2, 3, 4, 5];

describe('closures', () => {
  test('form one range over a weekend, two over a school day', () => {
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
  test('are there once each, in order', () => {
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
  test('is there once, and the others stay in order', () => {
    expect(moved(days, 'a', 1)).toEqual([['b'], ['c', 'a'], []]);
  });
  test('stays where it is at the ends and on its own day', () => {
    expect(moved(days, 'a', -1)).toBe(days);
    expect(moved(days, 'a', 3)).toBe(days);
    expect(moved(days, 'a', 0)).toBe(days);
  });
  test('the load is from the fullest to the emptiest day', () => {
    expect(load(days)).toEqual({ most: 2, least: 0 });
  });
});

test('the lightest day is the first of the shortest', () => {
  expect(lightest([['a', 'b'], ['c'], ['d']])).toBe(1);
  expect(lightest([[], ['c']])).toBe(0);
});

describe('a year as edited', () => {
  const year = {
    first_day: '2026-08-31',
    last_day: '2026-09-11',
    weekdays: week,
    closures: ['2026-09-07'],
  };
  test('counts its school days and passes', () => {
    expect(yearSum(year, 4)).toEqual({ school_days: 9, passes: 3 });
    expect(yearFault(year)).toBeUndefined();
  });
  test.each([
    [{ first_day: '' }, 'new-class-fault-dates-none'],
    [{ last_day: '2026-08-30' }, 'new-class-fault-dates-order'],
    [{ last_day: '2028-08-30' }, 'new-class-fault-dates-long'],
    [{ weekdays: [] }, 'new-class-fault-weekdays'],
    [{ weekdays: [6], last_day: '2026-09-04' }, 'new-class-fault-no-day'],
  ])('%j is %s', (change, id) => {
    expect(yearFault({ ...year, ...change })).toBe(id);
  });
  test('counts first lessons outside the year', () => {
    const placed = (taught_from: string | null) => ({ taught_from }) as never;
    const rotation = [[placed('2026-08-30'), placed(null)], [placed('2026-08-31')]];
    expect(lessonsOutside(rotation, year)).toBe(1);
  });
});

test('a strand is uneven when one day has two of it more than another', () => {
  const placed = (strand: string, id: string) => ({
    concept: { id, strand, title: id, i_can: id, has_exercises: true },
    grade: 4,
    taught_from: null,
    phase: 'preview' as const,
  });
  const [a, b, c, d] = ['a', 'b', 'c', 'd'].map((id) => placed('data', id));
  const x = placed('fractions', 'x');
  if (!a || !b || !c || !d) throw new Error('four concepts');
  expect(unevenStrands([[a, b], [c, x], [d]])).toEqual([]);
  expect(unevenStrands([[a, b, x], [c, d], []])).toEqual([{ strand: 'data', least: 0, most: 2 }]);
});

test('several concepts go to the lightest day one after the other', () => {
  expect(spread([['a', 'b'], ['c'], []], ['x', 'y', 'z'])).toEqual([
    ['a', 'b'],
    ['c', 'y'],
    ['x', 'z'],
  ]);
  expect(spread([['a']], [])).toEqual([['a']]);
});
