/** A fraction strip: one whole in equal parts, shaded from the left. */
export interface Strip {
  parts: number;
  shaded: number;
}

export const PARTS = [1, 2, 3, 4, 5, 6, 8, 10, 12];
export const MOST_STRIPS = 6;

export const START: readonly Strip[] = [
  { parts: 2, shaded: 1 },
  { parts: 4, shaded: 0 },
];

type Strips = readonly Strip[];

export function add(strips: Strips, parts: number): Strips {
  return strips.length >= MOST_STRIPS ? strips : [...strips, { parts, shaded: 0 }];
}

export function remove(strips: Strips, at: number): Strips {
  return strips.filter((_, n) => n !== at);
}

/** Shades parts, within the strip. */
export function shade(strips: Strips, at: number, shaded: number): Strips {
  const strip = strips[at];
  if (!strip || shaded < 0 || shaded > strip.parts) return strips;
  return strips.map((one, n) => (n === at ? { ...one, shaded } : one));
}

/** Pairs of strips, counted from 0, that are shaded to the same length. */
export function same(strips: Strips): [number, number][] {
  return strips.flatMap((a, i) =>
    strips
      .map((b, j): [Strip, number] => [b, j])
      .filter(([b, j]) => j > i && a.shaded > 0 && a.shaded * b.parts === b.shaded * a.parts)
      .map(([, j]): [number, number] => [i, j]),
  );
}
