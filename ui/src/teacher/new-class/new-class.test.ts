import { describe, expect, test } from 'vitest';
import { asNewClass, datesBetween, defaultForm, faults, totals, weekdayOf } from './new-class';

const grades = { 3: 37, 4: 40, 5: 30 };

test('weekdays are those of ISO 8601', () => {
  // 2024-01-01 and 2026-11-23 are Mondays.
  expect(weekdayOf('2026-11-23')).toBe(1);
  expect(weekdayOf('2026-11-29')).toBe(7);
  expect(weekdayOf('2024-02-29')).toBe(4);
});

test('36 weeks of 5 days are 180 school days, 18 passes of 10', () => {
  const form = {
    ...defaultForm('2026-11-24'),
    first_day: '2026-08-31',
    last_day: '2027-05-07',
    grades: [4],
  };
  const sum = totals(form, grades);
  expect(sum.school_days).toBe(180);
  expect(sum.passes).toBe(18);
  expect(sum.concepts).toBe(40);
});

test('closures on school days take days away, others do not', () => {
  const form = { ...defaultForm('2026-11-24'), first_day: '2026-11-23', last_day: '2026-11-29' };
  expect(totals({ ...form, closures: ['2026-11-26', '2026-11-28'] }, grades).school_days).toBe(4);
});

test('the rotation holds no more concepts than its days do', () => {
  const form = { ...defaultForm('2026-11-24'), grades: [3, 4], rotation_days: 10 };
  const sum = totals({ ...form, concepts_a_day: 6 }, grades);
  expect(sum.concepts).toBe(60);
  expect(sum.offered).toBe(77);
});

test('the suggested year fits the date', () => {
  expect(defaultForm('2026-11-24').first_day).toBe('2026-08-31');
  expect(defaultForm('2027-03-01').first_day).toBe('2026-08-31');
  expect(defaultForm('2027-07-10').first_day).toBe('2027-08-30');
});

test('dates are counted over months and leap days', () => {
  expect(datesBetween('2028-02-28', '2028-03-01')).toEqual([
    '2028-02-28',
    '2028-02-29',
    '2028-03-01',
  ]);
  expect(datesBetween('2028-03-01', '2028-02-28')).toEqual([]);
  expect(datesBetween('', '2028-02-28')).toEqual([]);
});

describe('what is wrong is said by field', () => {
  const good = {
    ...defaultForm('2026-11-24'),
    title: 'Room 7',
    by_names: false,
    seat_count: 24,
    grades: [4],
  };
  const of = (change: Partial<typeof good>) => {
    const form = { ...good, ...change };
    return Object.keys(faults(form, totals(form, grades)));
  };

  test('nothing in a good form', () => expect(of({})).toEqual([]));
  test.each([
    [{ title: '  ' }, 'title'],
    [{ title: 'x'.repeat(61) }, 'title'],
    [{ seat_count: 0 }, 'seats'],
    [{ seat_count: 61 }, 'seats'],
    [{ seat_count: 2.5 }, 'seats'],
    [{ by_names: true, names: [] }, 'seats'],
    [{ last_day: '2026-08-01' }, 'dates'],
    [{ last_day: '2028-08-01' }, 'dates'],
    [{ first_day: '' }, 'dates'],
    [{ weekdays: [] }, 'weekdays'],
    [{ grades: [] }, 'grades'],
    [{ rotation_days: 21 }, 'rotation'],
    [{ concepts_a_day: 0 }, 'rotation'],
  ])('%j is wrong at %s', (change, field) => expect(of(change)).toEqual([field]));
});

test('seats without names become empty names', () => {
  const form = { ...defaultForm('2026-11-24'), title: ' A ', by_names: false, seat_count: 2 };
  expect(asNewClass(form)).toMatchObject({ title: 'A', names: ['', ''] });
});
