import type { PacingFound, PacingList } from '../../lib/backend';

/** The concept chosen for each near line, by its place; '' leaves the line out. */
export type NearChoices = Record<number, string>;

/** The first lessons to set: those found, and the chosen ones of near lines. */
export function lessonsOf(list: PacingList, chosen: NearChoices): PacingFound[] {
  const all = [...list.found];
  list.near.forEach((near, at) => {
    const one = near.choices.find(({ concept }) => concept.id === chosen[at]);
    if (one && !all.some(({ concept }) => concept.id === one.concept.id)) all.push(one);
  });
  return all;
}
