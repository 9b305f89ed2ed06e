/** A bar along a ruler; its ends are counted in marks from zero. */
export interface Measured {
  unit: 'unit-cm' | 'unit-in';
  from: number;
  to: number;
}

/** Marks in a unit, and units on the ruler. */
export const UNITS = {
  'unit-cm': { parts: 10, length: 15 },
  'unit-in': { parts: 16, length: 6 },
} as const;

export const START: Measured = { unit: 'unit-cm', from: 0, to: 50 };

/** Changes the unit; the bar then covers three units. */
export function withUnit(of: Measured, unit: Measured['unit']): Measured {
  return unit === of.unit ? of : { unit, from: 0, to: 3 * UNITS[unit].parts };
}

/** Moves an end of the bar. The ends stay in order and on the ruler. */
export function move(of: Measured, end: 'from' | 'to', by: number): Measured {
  const next = { ...of, [end]: of[end] + by };
  const last = UNITS[of.unit].length * UNITS[of.unit].parts;
  return next.from < 0 || next.to > last || next.from >= next.to ? of : next;
}
