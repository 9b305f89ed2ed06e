import type { Confidence, EntryCell, EntryDay, EntryValue, Outcome } from '../../lib/backend';

/** What the teacher enters: ratings or outcomes from paper, or observations. */
export type EntryMode = 'rating' | 'outcome' | 'seen';
export const MODES: EntryMode[] = ['rating', 'outcome', 'seen'];

const KEYS = { wrong: '0', right: '1', not_done: '2' } satisfies Record<Outcome, string>;

export const OUTCOME_KEYS = Object.entries(KEYS) as [Outcome, string][];

/** A cell of the grid, both counted from 0. */
export interface Place {
  row: number;
  column: number;
}

/** The value that a key enters; null in it clears the cell. Undefined for other keys. */
export function valueOf(mode: EntryMode, key: string): EntryValue | undefined {
  const away = key === 'Backspace' || key === 'Delete';
  if (mode === 'outcome') {
    const outcome = away ? null : OUTCOME_KEYS.find(([, its]) => its === key)?.[0];
    return outcome === undefined ? undefined : { kind: 'outcome', outcome };
  }
  if (!away && !/^[0-3]$/.test(key)) return undefined;
  const rating = away ? null : (Number(key) as Confidence);
  return { kind: mode, rating };
}

export function filled(cell: EntryCell, value: EntryValue): EntryCell {
  if (value.kind === 'rating') return { ...cell, rating: value.rating };
  if (value.kind === 'outcome') return { ...cell, outcome: value.outcome };
  // An observation and a record after a group replace each other.
  if (value.kind === 'seen') return { ...cell, seen: value.rating, group_result: null };
  return { ...cell, seen: null, group_result: value.has_it };
}

/** The value that restores a cell after an entry. */
export function before(cell: EntryCell, mode: EntryMode): EntryValue {
  if (mode === 'outcome') return { kind: 'outcome', outcome: cell.outcome };
  if (mode === 'rating') return { kind: 'rating', rating: cell.rating };
  return cell.group_result === null
    ? { kind: 'seen', rating: cell.seen }
    : { kind: 'group_result', has_it: cell.group_result };
}

/** The cell that a key leads to; at an edge the same one. Null for other keys. */
export function placeAfter(at: Place, key: string, rows: number, columns: number): Place | null {
  const { row, column } = at;
  const moves: Record<string, Place> = {
    ArrowLeft: { row, column: column - 1 },
    ArrowRight: { row, column: column + 1 },
    ArrowUp: { row: row - 1, column },
    ArrowDown: { row: row + 1, column },
    Home: { row, column: 0 },
    End: { row, column: columns - 1 },
    Enter: { row: row + 1, column: 0 },
  };
  const to = moves[key];
  if (!to) return null;
  const inside = to.row >= 0 && to.row < rows && to.column >= 0 && to.column < columns;
  return inside ? to : at;
}

/** The next cell: to the right, then the next student's first. */
export function onward(at: Place, rows: number, columns: number): Place {
  if (at.column < columns - 1) return { row: at.row, column: at.column + 1 };
  return at.row < rows - 1 ? { row: at.row + 1, column: 0 } : at;
}

/** Whether a cell has no value of the mode, from paper or from a device. */
export function isEmpty(cell: EntryCell, mode: EntryMode): boolean {
  if (mode === 'rating') return (cell.rating ?? cell.device_rating) === null;
  if (mode === 'outcome') return (cell.outcome ?? cell.device_outcome) === null;
  return cell.seen === null && cell.group_result === null;
}

/** How many cells have a value of the mode. */
export function tally(day: EntryDay, mode: EntryMode): { done: number; all: number } {
  const cells = day.rows.flatMap((row) => row.cells);
  const has = (cell: EntryCell) =>
    mode === 'rating'
      ? (cell.rating ?? cell.device_rating) !== null
      : mode === 'outcome'
        ? (cell.outcome ?? cell.device_outcome) !== null
        : cell.seen !== null || cell.group_result !== null;
  return { done: cells.filter(has).length, all: cells.length };
}
