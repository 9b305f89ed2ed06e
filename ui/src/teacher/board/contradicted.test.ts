import { expect, test } from 'vitest';
import type { CalibrationVerdict, Comparison, Contradiction } from '../../lib/backend';
import { byConcept, byStudent } from './contradicted';

const contradiction = (seat: number, id: string): Contradiction => ({
  student: { seat, name: null, has_it: null },
  concept: { id, strand: 'x', title: id, i_can: '', has_exercises: true },
  rating: 2,
  results: { right: 0, wrong: 2 },
  practice: { alone: 0, with_help: 0, wrong: 0 },
});
const student = (seat: number, verdict: CalibrationVerdict) => ({
  student: { seat, name: null, has_it: null },
  answers: 30,
  verdict,
  bias: null,
  low: null,
  high: null,
  gamma: null,
  brier: null,
});
const comparison: Comparison = {
  sure_but_wrong: [contradiction(1, 'a'), contradiction(2, 'b'), contradiction(3, 'b')],
  unsure_but_right: [contradiction(1, 'b')],
  students: [
    student(1, 'near'),
    student(2, 'over'),
    student(3, 'too_little'),
    student(4, 'under'),
    student(5, 'unclear'),
  ],
  agreement: {
    table: [
      [0, 0, 0, 0],
      [0, 0, 0, 0],
      [0, 0, 0, 0],
      [0, 0, 0, 0],
    ],
    pairs: 0,
    kappa: null,
    standard_error: null,
  },
};

test('both orders tell the same pairs of a student and a concept', () => {
  const pairs = (lists: { sure: Contradiction[]; unsure: Contradiction[] }[]) =>
    lists
      .flatMap(({ sure, unsure }) => [
        ...sure.map((one) => `sure ${one.student.seat} ${one.concept.id}`),
        ...unsure.map((one) => `unsure ${one.student.seat} ${one.concept.id}`),
      ])
      .sort();
  expect(pairs(byStudent(comparison))).toEqual(pairs(byConcept(comparison)));
  expect(pairs(byConcept(comparison))).toHaveLength(4);
  expect(byConcept(comparison).map((line) => line.concept.id)).toEqual(['b', 'a']);
});

test('a student of whom it is true over the year is in the list without a concept', () => {
  const lines = byStudent(comparison);
  expect(lines.map((line) => [line.student.seat, line.verdict])).toEqual([
    [1, null],
    [2, 'over'],
    [3, null],
    [4, 'under'],
  ]);
  expect(lines[3]?.sure).toEqual([]);
});
