import { expect, test } from 'vitest';
import type { WarmUp } from '../../lib/backend';
import { swapped, taken } from './warm-up';

test('what was left out or has no exercise is not shown', () => {
  const one = (id: string, left_out: boolean, exercise: unknown) => ({
    concept: { id },
    choice: { swaps: 0, level: null, own: null, left_out },
    exercise,
  });
  const concepts = [one('a', false, {}), one('b', true, {}), one('c', false, null)];
  const warmUp = { concepts } as unknown as WarmUp;
  expect(taken(warmUp).map(({ concept }) => concept.id)).toEqual(['a']);
});

test('a swap goes to the next exercise and after the last to the first', () => {
  const choice = { swaps: 3, level: null, own: 'x', left_out: false };
  expect(swapped(choice)).toEqual({ ...choice, own: null, swaps: 4 });
  expect(swapped({ ...choice, swaps: 200 }).swaps).toBe(0);
});
