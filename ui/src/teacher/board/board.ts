import type { Board, BoardRow, PassCell, Phase, Trend, TrendTest } from '../../lib/backend';
import {
  date,
  exact,
  hasWords,
  kebab,
  number,
  percent,
  say,
  sayPart,
  strandWords,
  type MessageId,
} from '../../lib/words';

export interface BoardView {
  strand: string;
  phase: Phase | '';
  /** Only these seats; empty for the whole class. */
  group: number[];
  today: boolean;
  sort: SortKey;
  /** Whether the order is reversed. */
  reversed: boolean;
  columns: Column[];
}

/** The columns that can be chosen, in the order of the table. */
export const COLUMNS = ['reports', 'ratings', 'results', 'practice', 'trend', 'passes'] as const;
export type Column = (typeof COLUMNS)[number];

export type SortKey = 'rank' | 'title' | 'day' | 'has_it' | 'reporters' | 'age';

export const WHOLE_BOARD: BoardView = {
  strand: '',
  phase: '',
  group: [],
  today: false,
  sort: 'rank',
  reversed: false,
  columns: ['reports', 'trend', 'passes'],
};

const says: Record<Column, (row: BoardRow) => boolean> = {
  reports: () => true,
  ratings: (row) => row.latest.some((count) => count > 0),
  results: ({ results: { right, wrong } }) => right + wrong > 0,
  practice: ({ practice: { alone, with_help, wrong } }) => alone + with_help + wrong > 0,
  trend: (row) => row.trend !== 'too_soon',
  passes: (row) => row.passes.some((pass) => pass.rated > 0),
};

/** The columns that have something to say about at least one concept. */
export const saying = (board: Board): Column[] =>
  COLUMNS.filter((column) => board.rows.some((row) => says[column](row)));

/** Whether the shares of the ranked rows leave the order of the ranks somewhere. */
export function ordersDiffer(rows: BoardRow[], view: BoardView): boolean {
  if (view.sort !== 'rank') return false;
  const shares = rows.flatMap((row) => (row.rank === null ? [] : (row.has_it ?? [])));
  const shown = shares.map((share) => Math.round(share * 100));
  const step = (a: number, b: number) => (view.reversed ? a < b : a > b);
  return shown.some((share, at) => at > 0 && step(shown[at - 1] ?? share, share));
}

/** The value that a row is ordered by. Rows without one come last in either order. */
const keys: Record<SortKey, (row: BoardRow) => number | string | null> = {
  rank: (row) => row.rank,
  title: (row) => row.concept.title,
  day: (row) => row.day,
  has_it: (row) => row.has_it,
  reporters: (row) => row.reporters,
  age: (row) => row.newest_days,
};

function compare(a: number | string, b: number | string): number {
  if (typeof a === 'string' && typeof b === 'string') return a.localeCompare(b);
  return Number(a) - Number(b);
}

export function shownRows(board: Board, view: BoardView): BoardRow[] {
  const key = keys[view.sort];
  const sign = view.reversed ? -1 : 1;
  return board.rows
    .filter((row) => view.strand === '' || row.concept.strand === view.strand)
    .filter((row) => view.phase === '' || row.phase === view.phase)
    .filter((row) => !view.today || row.day === board.day)
    .map((row, place) => ({ row, place, by: key(row) }))
    .sort((a, b) => {
      if (a.by === null || b.by === null) {
        return Number(a.by === null) - Number(b.by === null) || a.place - b.place;
      }
      return sign * compare(a.by, b.by) || a.place - b.place;
    })
    .map(({ row }) => row);
}

/**
 * The index of the first row without a rank, if rows are ordered by rank and only some
 * have one; otherwise -1.
 */
export function firstUnranked(rows: BoardRow[], view: BoardView): number | null {
  if (view.sort !== 'rank') return null;
  const at = rows.findIndex((row) => row.rank === null);
  return at > 0 ? at : null;
}

export function strandsOf(board: Board): string[] {
  return [...new Set(board.rows.map((row) => row.concept.strand))].sort();
}

/** The passes that fit beside each other: the latest ones, up to today's. */
export function shownPasses(board: Board, most: number): number[] {
  const last = Math.min(board.pass, board.pass_count - 1);
  const first = Math.max(0, last - most + 1);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => first + at);
}

/** The shade of a pass by the share that needs help: 0 (nobody) to 4. */
export function shade(needs: number, rated: number): number {
  return rated === 0 || needs === 0 ? 0 : Math.min(4, 1 + Math.floor((needs / rated) * 4));
}

/** A pass in words; without a share as long as nobody knows how many can do it. */
export function passWords({ needs, rated, last_on }: PassCell, shares = true): string {
  if (rated === 0) return say('board-no-report');
  const words = shares
    ? say('board-pass-cell', { needs, rated, share: percent(needs / rated) })
    : say('board-pass-count', { needs, rated });
  if (last_on === null) return words;
  return `${words}. ${say('board-pass-last', { date: date(last_on, 'short') })}`;
}

export const trendWords = (trend: Trend): MessageId => `board-trend-${kebab(trend)}`;

/** Whether the trend is more than chance. */
export const turns = (trend: Trend) => trend === 'rising' || trend === 'falling';

function signed(change: number): string {
  const rounded = Math.round(change * 100) / 100;
  return rounded === 0 ? number(0) : `${rounded > 0 ? '+' : '−'}${number(Math.abs(rounded), 2)}`;
}

/** The test behind a trend in words: slope, passes and p-value. */
export function trendTest(trend: Trend, test: TrendTest): string {
  if (trend === 'too_soon') return say('concept-trend-few', { passes: test.passes });
  return say('concept-trend-test', {
    slope: signed(test.slope ?? 0) === number(0) ? 0 : signed(test.slope ?? 0),
    low: signed(test.low ?? 0),
    high: signed(test.high ?? 0),
    passes: test.passes,
    // Rounded up: p must not look smaller than it is.
    p: number(Math.max(0.001, Math.ceil(test.p * 1000) / 1000), 3),
    concepts: test.concepts,
  });
}

/** A share from −1 to 1 as signed hundredths: "+12", "−5", "0". */
export function ofHundred(share: number): string {
  const whole = Math.round(share * 100);
  if (whole === 0) return '0';
  return `${whole > 0 ? '+' : '−'}${number(Math.abs(whole))}`;
}

/** A measure from −1 to 1 with two decimals, so that the numbers of a column align. */
export const hundredths = (value: number): string =>
  exact(Math.abs(value) < 0.005 ? '0.00' : value.toFixed(2));

/** The teacher's name of a misconception. */
export const misconceptionWords = (code: string): string =>
  hasWords(`misconception-${code}`)
    ? sayPart(`misconception-${code}`, 'name')
    : say('concept-misconception-other');

/** A concept's strand, day and phase. Lines break only after a dot. */
export const placeWords = (row: BoardRow): string =>
  say('board-place', {
    strand: strandWords(row.concept.strand),
    day: row.day,
    phase: row.phase,
  })
    .replaceAll(' ·', '\u00a0·')
    .replace(/ (?=\d)/g, '\u00a0');
