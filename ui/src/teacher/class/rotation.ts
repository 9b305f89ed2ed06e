import type { PlacedConcept } from '../../lib/backend';

/** The concept ids of each day. */
export type Days = string[][];

export const daysOf = (rotation: PlacedConcept[][]): Days =>
  rotation.map((day) => day.map(({ concept }) => concept.id));

/** Moves a concept to the end of another day, counted from 0. */
export function moved(days: Days, concept: string, to: number): Days {
  if (to < 0 || to >= days.length || days[to]?.includes(concept)) return days;
  return days.map((day, at) => {
    const without = day.filter((id) => id !== concept);
    return at === to ? [...without, concept] : without;
  });
}

/** How many concepts the fullest and the emptiest day have, and the difference. */
export function load(days: Days): { most: number; least: number } {
  const sizes = days.map((day) => day.length);
  return { most: Math.max(0, ...sizes), least: sizes.length === 0 ? 0 : Math.min(...sizes) };
}

/** The most days in a rotation. */
export const LONGEST_ROTATION = 20;

/** The strands with at least two concepts more on one day than on another. */
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

/** The first day, from 0, with the fewest concepts. */
export const lightest = (days: Days): number =>
  days.reduce((best, day, at) => (day.length < (days[best]?.length ?? Infinity) ? at : best), 0);

/** Adds each concept to the day that is the lightest by then. */
export function spread(days: Days, concepts: string[]): Days {
  return concepts.reduce<Days>((now, concept) => {
    const day = lightest(now);
    return now.map((ids, at) => (at === day ? [...ids, concept] : ids));
  }, days);
}
