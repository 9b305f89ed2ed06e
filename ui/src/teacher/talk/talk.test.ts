import { expect, test } from 'vitest';
import type { TalkConcept } from '../../lib/backend';
import { projectorSteps, reasons } from './talk';

const concept: TalkConcept = {
  concept: { id: 'a', strand: 'x', title: 'A', i_can: '', has_exercises: true },
  phase: 'practice',
  chosen: true,
  talked: false,
  way: 'pair_talk',
  minutes: 2,
  worth: 3,
  has_it: 0.5,
  low: 0.4,
  high: 0.6,
  expected_wrong: 11.6,
  sure_wrong: 2.4,
  trend: 'falling',
  talked_lately: false,
  dependants_soon: [],
  misconceptions: [],
  exercise: null,
};

test('the reasons are in the order of their weight', () => {
  const found = reasons(concept);
  expect(found).toHaveLength(3);
  expect(found[0]).toContain('12');
  expect(found[1]).toContain('2');
});

test('while the level is not known, no number of students is told', () => {
  const unknown = { has_it: null, low: null, high: null, expected_wrong: null, sure_wrong: null };
  const [reason, ...rest] = reasons({ ...concept, ...unknown });
  expect(reason).not.toMatch(/[0-9]/);
  expect(rest).toHaveLength(1);
});

test('a concept without a way says why', () => {
  expect(reasons({ ...concept, way: null, phase: 'preview' })).toHaveLength(1);
  const unheard = reasons({ ...concept, way: null });
  expect(unheard).not.toEqual(reasons({ ...concept, way: null, phase: 'preview' }));
});

test('the projector goes from the exercise by the misconception to the answer and the steps', () => {
  const exercise = { item: {}, answer: [], steps: [[]], misconception: {} } as never;
  expect(projectorSteps({ ...concept, exercise })).toEqual(['misconception', 'answer', 'steps']);
  const bare = { item: {}, answer: [], steps: [], misconception: null } as never;
  expect(projectorSteps({ ...concept, exercise: bare })).toEqual(['answer']);
  expect(projectorSteps(concept)).toEqual([]);
});
