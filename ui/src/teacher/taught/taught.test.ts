import { expect, test } from 'vitest';
import type { HelpView, TaughtAgainEntry } from '../../lib/backend';
import { chosenEntries, helpWords, notedAs, numberWords, onceMoreWords, rangeOf } from './taught';

const help = (change: Partial<HelpView>): HelpView => ({
  says: 'cannot_tell',
  next_on: null,
  until: '2026-10-12',
  passes: 1,
  once_more: 0,
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

test('what cannot be told yet says when to look again, or that results are few', () => {
  const soon = helpWords(help({ next_on: '2026-10-27' }));
  expect(soon).toMatch(/cannot be told yet.*Look again on .*27/);
  expect(helpWords(help({}))).toMatch(/cannot be told whether.*too few results/);
  expect(helpWords(help({ says: 'rose_more', next_on: '2026-10-27' }))).not.toMatch(/27/);
});

test('who was taught once more is counted, unless all were', () => {
  const once = (says: HelpView['says'], once_more: number) =>
    onceMoreWords({ ...entry(1, 'a', [1, 2, 3]), help: help({ says, once_more }) });
  expect(once('no_sign', 0)).toBe('');
  expect(once('no_sign', 2)).toMatch(/^2 of 3/);
  expect(once('taught_once_more', 3)).toBe('');
});

test('a range tells more from fewer', () => {
  expect(rangeOf({ more_low: 0, more_high: 5 })).toEqual({ way: 'more', low: 0, high: 5 });
  expect(rangeOf({ more_low: -2, more_high: 5 })).toEqual({ way: 'mixed', low: 2, high: 5 });
  expect(rangeOf({ more_low: -5, more_high: 0 })).toEqual({ way: 'fewer', low: 0, high: 5 });
});

test('the numbers of a verdict add up', () => {
  const words = (right: number) =>
    numberWords({
      answers: 51,
      right,
      foretold: 18,
      expected: 22,
      more_low: 6,
      more_high: 17,
      practised: 3,
      concepts: 40,
    }).join(' ');
  expect(words(34)).toMatch(/34 of 51.*18.*22.*12 more than expected.*6 to 17 more.*3 exercises/);
  expect(words(20)).toContain('2 fewer than expected');
  expect(words(22)).toContain('About as many');
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
