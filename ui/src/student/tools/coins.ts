/** Pieces of money, largest first. */
export const PIECES = [
  { value_hundredths: 1000, note: true },
  { value_hundredths: 500, note: true },
  { value_hundredths: 100, note: true },
  { value_hundredths: 25, note: false },
  { value_hundredths: 10, note: false },
  { value_hundredths: 5, note: false },
  { value_hundredths: 1, note: false },
] as const;
export const MOST = 10;

/** The number of each piece, in the order of `PIECES`. */
export type Money = readonly number[];
export const START: Money = PIECES.map(() => 0);

export function add(money: Money, piece: number, by: 1 | -1): Money {
  const next = (money[piece] ?? 0) + by;
  if (next < 0 || next > MOST) return money;
  return money.map((count, n) => (n === piece ? next : count));
}
