import { expect, test } from 'vitest';
import { before, filled, onward, placeAfter, tally, valueOf } from './enter';

const cell = {
  rating: null,
  outcome: null,
  device_rating: null,
  device_outcome: null,
  seen: null,
  group_result: null,
};

test('only keys of the mode enter values', () => {
  expect(valueOf('rating', '3')).toEqual({ kind: 'rating', rating: 3 });
  expect(valueOf('seen', '0')).toEqual({ kind: 'seen', rating: 0 });
  expect(valueOf('outcome', '1')).toEqual({ kind: 'outcome', outcome: 'right' });
  expect(valueOf('outcome', 'Delete')).toEqual({ kind: 'outcome', outcome: null });
  expect(valueOf('rating', 'Backspace')).toEqual({ kind: 'rating', rating: null });
  for (const [mode, key] of [
    ['rating', '4'],
    ['outcome', '3'],
    ['seen', 'a'],
  ] as const) {
    expect(valueOf(mode, key)).toBeUndefined();
  }
});

test('an entry can be undone', () => {
  const full = filled(filled(cell, { kind: 'rating', rating: 2 }), { kind: 'seen', rating: 1 });
  expect(full).toMatchObject({ rating: 2, seen: 1 });
  expect(filled(full, before(cell, 'rating')).rating).toBeNull();
  expect(filled(full, before(cell, 'seen')).seen).toBeNull();
  const met = { ...cell, group_result: false };
  const seen = filled(met, { kind: 'seen', rating: 3 });
  expect(seen.group_result).toBeNull();
  expect(filled(seen, before(met, 'seen'))).toEqual(met);
});

test('filling goes to the right, then to the next student, and stays at the end', () => {
  expect(onward({ row: 0, column: 0 }, 2, 3)).toEqual({ row: 0, column: 1 });
  expect(onward({ row: 0, column: 2 }, 2, 3)).toEqual({ row: 1, column: 0 });
  expect(onward({ row: 1, column: 2 }, 2, 3)).toEqual({ row: 1, column: 2 });
});

test('arrows stay inside, Enter begins the next student, other keys lead nowhere', () => {
  expect(placeAfter({ row: 0, column: 0 }, 'ArrowUp', 2, 3)).toEqual({ row: 0, column: 0 });
  expect(placeAfter({ row: 0, column: 2 }, 'Enter', 2, 3)).toEqual({ row: 1, column: 0 });
  expect(placeAfter({ row: 1, column: 0 }, 'End', 2, 3)).toEqual({ row: 1, column: 2 });
  expect(placeAfter({ row: 1, column: 0 }, 'x', 2, 3)).toBeNull();
});

test('a cell from a device counts as filled', () => {
  const day = {
    rows: [
      { cells: [{ ...cell, device_rating: 1 }, cell] },
      { cells: [{ ...cell, seen: 0 }, cell] },
    ],
  } as never;
  expect(tally(day, 'rating')).toEqual({ done: 1, all: 4 });
  expect(tally(day, 'seen')).toEqual({ done: 1, all: 4 });
  expect(tally(day, 'outcome')).toEqual({ done: 0, all: 4 });
});
