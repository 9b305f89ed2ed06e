import { expect, test } from 'vitest';
import { assignFaults, beginAssignment } from './assignment';

const draft = beginAssignment('2026-12-28', ['a'], [7, 2]);

test('it begins today, lasts a week over the turn of the year, and lists seats in order', () => {
  expect(draft).toMatchObject({ from: '2026-12-28', due: '2027-01-04', seats: [2, 7] });
  expect(assignFaults(draft, false)).toEqual({});
});

test.each([
  [{ concepts: [] }, 'concepts'],
  [{ concepts: ['1', '2', '3', '4', '5', '6', '7'] }, 'concepts'],
  [{ items_each: 0 }, 'amount'],
  [{ items_each: 21 }, 'amount'],
  [{ due: '2026-12-27' }, 'dates'],
  [{ seats: [] }, 'seats'],
])('%j is wrong at %s', (change, field) => {
  expect(Object.keys(assignFaults({ ...draft, ...change }, false))).toEqual([field]);
});

test('no seats are needed for the whole class', () => {
  expect(assignFaults({ ...draft, seats: [] }, true)).toEqual({});
});
