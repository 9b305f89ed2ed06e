import { expect, test } from 'vitest';
import { reminderFor } from './keep-reminder';

const made = (last_made_on: string | null, new_since = 3, days = 4) => ({
  last_made_on,
  new_since,
  days,
});

test('nothing is asked while nothing is new, or shortly after a hand-in', () => {
  expect(reminderFor(made('2026-09-01', 0), null, '2026-12-01')).toBeNull();
  expect(reminderFor(made('2026-11-27'), null, '2026-12-01')).toBeNull();
});

test('the longer ago, the firmer', () => {
  expect(reminderFor(made('2026-11-26'), null, '2026-12-01')).toEqual({ firm: false, days: 5 });
  expect(reminderFor(made('2026-11-16'), null, '2026-12-01')).toEqual({ firm: true, days: 15 });
});

test('a carry file counts as well, the later of the two', () => {
  expect(reminderFor(made('2026-09-01'), '2026-11-30', '2026-12-01')).toBeNull();
  expect(reminderFor(made('2026-11-30'), '2026-09-01', '2026-12-01')).toBeNull();
});

test('somebody who has made neither is asked after the first days', () => {
  expect(reminderFor(made(null, 3, 1), null, '2026-12-01')).toBeNull();
  expect(reminderFor(made(null, 3, 2), null, '2026-12-01')).toEqual({ firm: false, days: 2 });
  expect(reminderFor(made(null, 3, 10), null, '2026-12-01')).toEqual({ firm: true, days: 10 });
});

test('a file made while the clock was ahead does not end the reminders', () => {
  expect(reminderFor(made('2099-01-01', 900, 180), null, '2027-05-01')).toEqual({
    firm: true,
    days: 180,
  });
  expect(reminderFor(made('2099-01-01'), '2027-04-01', '2027-05-01')).toEqual({
    firm: true,
    days: 30,
  });
});
