import { expect, test } from 'vitest';
import type { PacingFound, PacingList } from '../../lib/backend';
import { lessonsOf } from './pacing';

const found = (id: string) => ({ concept: { id }, date: '2026-09-14' }) as PacingFound;

test('a near line sets the concept that was chosen, and none that the list names itself', () => {
  const list = {
    found: [found('a')],
    near: [
      { line: 'x', choices: [found('b'), found('c')] },
      { line: 'y', choices: [found('a')] },
    ],
    missed: [],
    day_first: null,
  } satisfies PacingList;
  const ids = (chosen: Record<number, string>) =>
    lessonsOf(list, chosen).map(({ concept }) => concept.id);
  expect(ids({})).toEqual(['a']);
  expect(ids({ 0: 'c', 1: 'a' })).toEqual(['a', 'c']);
  expect(ids({ 0: '' })).toEqual(['a']);
});
