import type { PlacedConcept } from '../../lib/backend';

/** Concept ids day by day. */
export type Days = string[][];

export const daysOf = (rotation: PlacedConcept[][]): Days =>
  rotation.map((day) => day.map(({ concept }) => concept.id));

/** The rotation with a concept at the end of another day (from 0); others stay in order. */
export function moved(days: Days, concept: string, to: number): Days {
  if (to < 0 || to >= days.length || days[to]?.includes(concept)) return days;
  return days.map((day, at) => {
    const without = day.filter((id) => id !== concept);
    return at === to ? [...without, concept] : without;
  });
}

/** The fullest and the emptiest day: how many concepts, and the difference. */
export function load(days: Days): { most: number; least: number } {
  const sizes = days.map((day) => day.length);
  return { most: Math.max(0, ...sizes), least: sizes.length === 0 ? 0 : Math.min(...sizes) };
}

/** Days in a rotation at most. */
export const LONGEST_ROTATION = 20;

/** Strands of which one day has at least two concepts more than another. */
export function unevenStrands(
  rotation: PlacedConcept[][],
): { strand: string; least: number; most: number }[] {
  const strands = [...new Set(rotation.flat().map(({ concept }) => concept.strand))].sort();
  return strands
    .map((strand) => {
      const of = rotation.map((day) => day.filter((one) => one.concept.strand === strand).length);
      return { strand, least: Math.min(...of), most: Math.max(...of) };
    })
    .filter(({ least, most }) => most - least > 1);
}

/** The day (from 0) with the fewest concepts; of equals the first. */
export const lightest = (days: Days): number =>
  days.reduce((best, day, at) => (day.length < (days[best]?.length ?? Infinity) ? at : best), 0);

/** The rotation with concepts added, each on what is then the lightest day. */
export function spread(days: Days, concepts: string[]): Days {
  return concepts.reduce<Days>((now, concept) => {
    const day = lightest(now);
    return now.map((ids, at) => (at === day ? [...ids, concept] : ids));
  }, days);
}

/** A choice of the form: one concept, or a whole grade. */
export type Choice = { concept: string } | { grade: number };
const WHOLE = 'grade:';
export const wholeGrade = (grade: number): string => `${WHOLE}${grade}`;

/** What a picked value means; nothing for no choice. */
export function choiceOf(value: string): Choice | null {
  if (value === '') return null;
  return value.startsWith(WHOLE)
    ? { grade: Number(value.slice(WHOLE.length)) }
    : { concept: value };
}

/** The concepts that a choice names. */
export function chosenBy(choice: Choice, offered: PlacedConcept[]): PlacedConcept[] {
  return offered.filter((one) =>
    'grade' in choice ? one.grade === choice.grade : one.concept.id === choice.concept,
  );
}
