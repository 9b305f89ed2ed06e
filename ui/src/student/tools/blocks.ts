/** The number of each base-ten block, from small cubes to large ones. */
export type Blocks = readonly [number, number, number, number];

export const PLACES = ['cubes', 'rods', 'flats', 'large'] as const;
/** The most of each kind: a ten can then always be split. */
export const MOST = 20;

export const START: Blocks = [0, 0, 0, 0];

function change(blocks: Blocks, by: Record<number, number>): Blocks {
  const next = blocks.map((count, place) => count + (by[place] ?? 0));
  if (next.some((count) => count < 0 || count > MOST)) return blocks;
  return next as unknown as Blocks;
}

export function add(blocks: Blocks, place: number, by: 1 | -1): Blocks {
  return change(blocks, { [place]: by });
}

/** Trades ten of a kind for one of the next. */
export function trade(blocks: Blocks, place: number): Blocks {
  return change(blocks, { [place]: -10, [place + 1]: 1 });
}

/** Trades one of a kind for ten of the one before. */
export function split(blocks: Blocks, place: number): Blocks {
  return place === 0 ? blocks : change(blocks, { [place]: -1, [place - 1]: 10 });
}
