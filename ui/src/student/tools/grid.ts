/** A grid of ten by ten, with marked squares or with points. */
export interface Grid {
  kind: 'squares' | 'points';
  /** Marked squares: ten times the row from the top plus the column. */
  squares: readonly number[];
  /** Points in the order in which they were put, coordinates from 0 to 10. */
  points: readonly { x: number; y: number }[];
}

export const SIDE = 10;
const MOST_POINTS = 8;
export const START: Grid = { kind: 'squares', squares: [], points: [] };

/** Marks a square, or unmarks it. */
export function turn(grid: Grid, at: number): Grid {
  const squares = grid.squares.includes(at)
    ? grid.squares.filter((one) => one !== at)
    : [...grid.squares, at];
  return { ...grid, squares };
}

/** Puts a point, or removes it. */
export function put(grid: Grid, x: number, y: number): Grid {
  const others = grid.points.filter((p) => p.x !== x || p.y !== y);
  if (others.length < grid.points.length) return { ...grid, points: others };
  if (others.length >= MOST_POINTS) return grid;
  return { ...grid, points: [...others, { x, y }] };
}
