import type { Roster, RosterLine } from '../../lib/backend';

/** Letters of a name at most, as in the program. */
export const LONGEST_NAME = 40;

/** A line of a roster with what the teacher made of it. */
export interface RosterRow extends RosterLine {
  /** Whether it becomes a seat. */
  taken: boolean;
  /** The name of the seat, if the teacher wrote one; otherwise it is suggested. */
  written: string | null;
}

/** Rows with the same name, which may be one student or several. */
export interface Twins {
  name: string;
  rows: RosterRow[];
}

const lettersOf = (name: string): number => Array.from(name).length;
/** The same for names that differ only in capitals and accents. */
const fold = (name: string): string =>
  name.normalize('NFD').replace(/\p{M}/gu, '').toLocaleLowerCase().trim();

export const rowsOf = (roster: Roster): RosterRow[] =>
  roster.lines.map((line) => ({
    ...line,
    taken: line.reading === 'name' || line.reading === 'too_long',
    written: null,
  }));

/** Takes the first names for the last names, and the other way round. */
export const swapped = (rows: RosterRow[]): RosterRow[] =>
  rows.map((row) =>
    row.reading === 'heading' || row.last === ''
      ? row
      : { ...row, first: row.last, last: row.first },
  );

/** The names of the seats, row by row: the first name, with as much of the last as tells it apart. */
export function namesBy(rows: RosterRow[]): Map<RosterRow, string> {
  const taken = rows.filter((row) => row.taken);
  const ways: ((row: RosterRow) => string)[] = [
    (row) => row.first || row.last,
    (row) => (row.last === '' ? row.first : `${row.first} ${Array.from(row.last)[0] ?? ''}.`),
    (row) => `${row.first} ${row.last}`.trim(),
  ];
  const names = new Map<RosterRow, string>();
  for (const row of rows) {
    const name = (way: number, of: RosterRow) => of.written ?? ways[way]?.(of) ?? '';
    const alone = (way: number) =>
      !taken.some((other) => other !== row && fold(name(way, other)) === fold(name(way, row)));
    const way = [0, 1, 2].find(alone) ?? 1;
    names.set(row, name(way, row).trim());
  }
  return names;
}

/** Taken rows of the same name. Those that the teacher called different students are left out. */
export function twinsOf(rows: RosterRow[], different: ReadonlySet<string>): Twins[] {
  const names = namesBy(rows);
  const groups = new Map<string, RosterRow[]>();
  for (const row of rows.filter((one) => one.taken)) {
    const key = fold(names.get(row) ?? '');
    if (key !== '') groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups]
    .filter(([key, of]) => of.length > 1 && !different.has(key))
    .map(([, of]) => ({ name: names.get(of[0] as RosterRow) ?? '', rows: of }));
}

/** What the teacher says of twins: that they are different students. */
export const asDifferent = (different: ReadonlySet<string>, twins: Twins): ReadonlySet<string> =>
  new Set([...different, fold(twins.name)]);

/** Takes only the first of twins. */
export const asOne = (rows: RosterRow[], twins: Twins): RosterRow[] =>
  rows.map((row) => (twins.rows.slice(1).includes(row) ? { ...row, taken: false } : row));

export type NameFault = 'empty' | 'long';

/** What is wrong with the name of a taken row. */
export function faultOf(row: RosterRow, name: string): NameFault | null {
  if (!row.taken) return null;
  if (name === '') return 'empty';
  return lettersOf(name) > LONGEST_NAME ? 'long' : null;
}

export const letters = lettersOf;

/** The names of the seats, and whether something must be answered or mended first. */
export interface RosterChoice {
  names: string[];
  open: number;
}

export function choiceOf(rows: RosterRow[], different: ReadonlySet<string>): RosterChoice {
  const names = namesBy(rows);
  const taken = rows.filter((row) => row.taken);
  const faults = taken.filter((row) => faultOf(row, names.get(row) ?? '') !== null).length;
  return {
    names: taken.map((row) => names.get(row) ?? ''),
    open: faults + twinsOf(rows, different).length,
  };
}
