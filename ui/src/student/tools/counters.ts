/** A place of a ten-frame: empty, a filled or a ringed counter. */
export type Place = 0 | 1 | 2;
/** The places of one to four ten-frames. */
export type Counters = readonly Place[];

export const MOST_FRAMES = 4;

const empty = (): Place[] => Array.from({ length: 10 }, () => 0);
export const START: Counters = empty();

/** Turns a place: empty, filled, ringed, empty. */
export function turn(counters: Counters, at: number): Counters {
  return counters.map((place, n) => (n === at ? (((place + 1) % 3) as Place) : place));
}

/** Adds a counter on the first empty place, in a new frame if all are full. */
export function add(counters: Counters, kind: 1 | 2): Counters {
  const free = counters.indexOf(0);
  if (free >= 0) return counters.map((place, n) => (n === free ? kind : place));
  if (counters.length >= 10 * MOST_FRAMES) return counters;
  return counters.concat(kind, empty().slice(1));
}

/** Removes the last counter of a kind. */
export function take(counters: Counters, kind: 1 | 2): Counters {
  const last = counters.lastIndexOf(kind);
  return last < 0 ? counters : counters.map((place, n) => (n === last ? 0 : place));
}

export function frames(counters: Counters, count: number): Counters {
  const kept = counters.slice(0, 10 * count);
  return kept.concat(...Array.from({ length: count - kept.length / 10 }, empty));
}

export function count(counters: Counters, kind: Place): number {
  return counters.filter((place) => place === kind).length;
}
