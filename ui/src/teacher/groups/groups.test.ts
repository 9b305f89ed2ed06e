import { expect, test } from 'vitest';
import type { GroupMember, KeptGroup } from '../../lib/backend';
import {
  effectOf,
  firstNames,
  gapPercent,
  goodness,
  goOn,
  moved,
  onConcept,
  started,
  wishFault,
  withNext,
} from './groups';

const groups = [
  { slot: 0, concept: 'a', seats: [1, 3], partners: [] },
  { slot: 0, concept: 'b', seats: [2], partners: [5] },
  { slot: 1, concept: 'a', seats: [1], partners: [] },
];

test('a student moves from group to group, and an empty group goes', () => {
  expect(moved(groups, 3, 0, 1).map((g) => g.seats)).toEqual([[1], [2, 3], [1]]);
  expect(moved(groups, 2, 1, 0).map((g) => g.seats)).toEqual([[1, 2, 3], [1]]);
  expect(moved(groups, 9, null, 1).map((g) => g.seats)).toEqual([[1, 3], [2, 9], [1]]);
  expect(moved(groups, 3, 0, null).map((g) => g.seats)).toEqual([[1], [2], [1]]);
  expect(moved(groups, 3, 0, 0)).toBe(groups);
});

test('a new group is in the slot of the student who starts it', () => {
  const after = started(groups, 2, 1, 0, 'c');
  expect(after).toContainEqual({ slot: 0, concept: 'c', seats: [2], partners: [] });
  expect(after.map((g) => g.slot)).toEqual([0, 0, 1]);
  expect(started(groups, 7, null, 1, 'c')).toHaveLength(4);
});

test('a group changes its concept and no other does', () => {
  expect(onConcept(groups, 2, 'z').map((g) => g.concept)).toEqual(['a', 'b', 'z']);
});

test.each([
  [0, 'best'],
  [0.00008, 'gap'],
  [0.03, 'gap'],
  [1, 'rough'],
])('a gap of %d is said as %s', (proven_gap, word) => {
  expect(goodness({ proven_gap, level_known: true } as never)).toBe(word);
  expect(goodness({ proven_gap, level_known: false } as never)).toBeNull();
});

test('wishes that cannot be planned are named', () => {
  const wishes = {
    slots: 2,
    groups_at_once: 3,
    size_least: 2,
    size_most: 5,
    keep_apart: [],
    keep_together: [],
    absent: [],
    with_partner: false,
  };
  expect(wishFault(wishes)).toBeUndefined();
  expect(wishFault({ ...wishes, slots: 0 })).toBe('groups-fault-slots');
  expect(wishFault({ ...wishes, groups_at_once: NaN })).toBe('groups-fault-at-once');
  expect(wishFault({ ...wishes, size_least: 6 })).toBe('groups-fault-size');
});

test('the effect of a change is a direction and a percentage', () => {
  expect(effectOf(1000, 970)).toEqual({ kind: 'less', percent: 3 });
  expect(effectOf(1000, 1025)).toEqual({ kind: 'more', percent: 2.5 });
  expect(effectOf(1000, 1000)).toEqual({ kind: 'same', percent: 0 });
  expect(effectOf(0, 500)).toEqual({ kind: 'same', percent: 0 });
});

test('a gap is never rounded down', () => {
  expect([0.00008, 0.03, 0.0301].map(gapPercent)).toEqual([0.1, 3, 3.1]);
});

const member = (seat: number, name: string | null): GroupMember => ({ seat, name, has_it: 0.4 });

test('a shown name is a first name, told apart by seat if two are alike, or what stands for it', () => {
  const all = [
    member(1, 'Ana Li'),
    member(2, 'Bo  Vandenbroucke'),
    member(3, 'Ana Ruiz'),
    member(4, null),
  ];
  const shown = firstNames([...all, member(1, 'Ana Li')], (one) =>
    one.name === null ? 'Seat 4' : null,
  );
  expect([...shown.values()]).toEqual(['Ana 1', 'Bo', 'Ana 3', 'Seat 4']);
  const covered = firstNames(all, (one) => `Seat ${one.seat}`);
  expect([...covered.values()].join()).not.toMatch(/Ana|Bo/);
});

test('a group goes on with those who need more and with who was absent', () => {
  const group = {
    slot: 1,
    concept: { id: 'a' },
    members: [member(1, null), member(2, null), member(3, null)],
    partners: [member(9, null)],
    missed: [member(3, null), member(7, null)],
  } as KeptGroup;
  const records = [
    { seat: 1, concept: 'a', has_it: true },
    { seat: 2, concept: 'a', has_it: false },
    { seat: 3, concept: 'b', has_it: true },
  ];
  expect(goOn(group, records)).toEqual({ slot: 1, concept: 'a', seats: [2, 3, 7], partners: [9] });
});

test('a second group of a concept joins the first, and nobody is in two at once', () => {
  const member = (seat: number) => ({ seat, name: null, has_it: null });
  const kept = {
    slot: 0,
    concept: { id: 'a', strand: 'x', title: 'A', i_can: '', has_exercises: true },
    members: [member(3), member(4)],
    partners: [],
    missed: [member(2)],
  };
  const next = { slot: 0, concept: 'a', seats: [2, 4], partners: [] };
  // The first group of the concept, the same group before a result was changed, and another.
  expect(withNext(groups, kept, next)).toEqual([groups[1], groups[2], { ...next, seats: [1, 4] }]);
  expect(withNext([], kept, next)).toEqual([next]);
  expect(withNext(groups, kept, { ...next, slot: 1, seats: [] })).toContainEqual(groups[2]);
});
