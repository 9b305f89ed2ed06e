import { expect, test } from 'vitest';
import type { HelpView, TaughtAgainEntry } from '../../lib/backend';
import { chosenEntries, helpWords, notedAs, numberWords, rangeOf } from './taught';

const help = (change: Partial<HelpView>): HelpView => ({
  says: 'cannot_tell',
  next_on: null,
  until: '2026-10-12',
  passes: 1,
  numbers: null,
  ...change,
});

const entry = (id: number, concept: string, seats: number[], whole_class = false) =>
  ({
    id,
    date: '2026-09-28',
    concept: { id: concept, title: concept, i_can: '', has_exercises: true },
    came_from: 'talk',
    whole_class,
    members: seats.map((seat) => ({ seat, name: null, recorded: null })),
    note: 'strips',
    help: help({}),
  }) as unknown as TaughtAgainEntry;

test('what cannot be told yet says when it could, or that answers are few', () => {
  const soon = helpWords(help({ next_on: '2026-10-27' }));
  expect(soon).toMatch(/cannot be told yet.*Look again on .*27/);
  expect(helpWords(help({}))).toMatch(/too few answers/);
  expect(helpWords(help({ says: 'rose_more', next_on: '2026-10-27' }))).not.toMatch(/27/);
});

test('a range tells more from fewer in whole answers', () => {
  expect(rangeOf({ more_low: 0.6, more_high: 5.2 })).toEqual({ way: 'more', low: 1, high: 5 });
  expect(rangeOf({ more_low: -0.4, more_high: 5.2 })).toEqual({ way: 'more', low: 0, high: 5 });
  expect(rangeOf({ more_low: -2.2, more_high: 5 })).toEqual({ way: 'mixed', low: 2, high: 5 });
  expect(rangeOf({ more_low: -5, more_high: -0.2 })).toEqual({ way: 'fewer', low: 0, high: 5 });
});

test('the numbers name answers, what was foretold and the range', () => {
  const words = numberWords({
    answers: 51,
    right: 34,
    foretold: 18.2,
    expected: 21.7,
    more_low: 6.1,
    more_high: 17.2,
    concepts: 40,
  });
  expect(words.join(' ')).toMatch(/34 of 51.*18.*22.*6 to 17/);
});

test('entries are chosen by concept or by student, and can be noted again', () => {
  const entries = [entry(1, 'a', [1, 2]), entry(2, 'b', [2, 3], true)];
  const ids = (choice: string) => chosenEntries(entries, choice).map(({ id }) => id);
  expect(ids('')).toEqual([1, 2]);
  expect(ids('concept:b')).toEqual([2]);
  expect(ids('seat:1')).toEqual([1]);
  expect(notedAs(entry(1, 'a', [1, 2]), null)).toEqual({
    replaces: null,
    date: '2026-09-28',
    concept: 'a',
    came_from: 'talk',
    seats: [1, 2],
    note: 'strips',
  });
  expect(notedAs(entry(2, 'b', [2, 3], true), 2).seats).toEqual([]);
});
