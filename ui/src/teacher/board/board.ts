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

/** Which rows of the board are shown, and in which order. */
export interface BoardView {
  strand: string;
  phase: Phase | '';
  /** Only these seats; none for the whole class. */
  group: number[];
  /** Only the concepts of today's day of the rotation. */
  today: boolean;
  sort: SortKey;
  /** The other way round. */
  reversed: boolean;
}

export type SortKey = 'rank' | 'title' | 'day' | 'has_it' | 'reporters' | 'age';

export const WHOLE_BOARD: BoardView = {
  strand: '',
  phase: '',
  group: [],
  today: false,
  sort: 'rank',
  reversed: false,
};

/** What a row is ordered by; rows with nothing to go by come last either way. */
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
 * The place among the rows of the first that has no rank, in the order of ranks; none in
 * another order, or where every row is alike.
 */
export function firstUnranked(rows: BoardRow[], view: BoardView): number | null {
  if (view.sort !== 'rank') return null;
  const at = rows.findIndex((row) => row.rank === null);
  return at > 0 ? at : null;
}

/** The strands on the board, in the order of their first concept. */
export function strandsOf(board: Board): string[] {
  return [...new Set(board.rows.map((row) => row.concept.strand))].sort();
}

/** The passes that fit beside each other: the latest ones up to today's. */
export function shownPasses(board: Board, most: number): number[] {
  const last = Math.min(board.pass, board.pass_count - 1);
  const first = Math.max(0, last - most + 1);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => first + at);
}

/** Shade of a pass cell by the share needing help: 0 (nobody) to 4. */
export function shade(needs: number, rated: number): number {
  return rated === 0 || needs === 0 ? 0 : Math.min(4, 1 + Math.floor((needs / rated) * 4));
}

/** A pass in words: how many of those who rated need help. */
export function passWords({ needs, rated, last_on }: PassCell): string {
  if (rated === 0) return say('board-no-report');
  const words = say('board-pass-cell', { needs, rated, share: percent(needs / rated) });
  if (last_on === null) return words;
  return `${words}. ${say('board-pass-last', { date: date(last_on, 'short') })}`;
}

/** Message id of a trend. */
export const trendWords = (trend: Trend): MessageId => `board-trend-${kebab(trend)}`;

/** Whether it moves beyond what chance does. */
export const turns = (trend: Trend) => trend === 'rising' || trend === 'falling';

/** A change with its sign, to two places. */
function signed(change: number): string {
  const rounded = Math.round(change * 100) / 100;
  return rounded === 0 ? number(0) : `${rounded > 0 ? '+' : '−'}${number(Math.abs(rounded), 2)}`;
}

/** The test behind a trend in words: how far, over how many passes, how likely by chance. */
export function trendTest(trend: Trend, test: TrendTest): string {
  if (trend === 'too_soon') return say('concept-trend-few', { passes: test.passes });
  return say('concept-trend-test', {
    slope: signed(test.slope ?? 0) === number(0) ? 0 : signed(test.slope ?? 0),
    low: signed(test.low ?? 0),
    high: signed(test.high ?? 0),
    passes: test.passes,
    // Never smaller than it is.
    p: number(Math.max(0.001, Math.ceil(test.p * 1000) / 1000), 3),
    concepts: test.concepts,
  });
}

/** A share from −1 to 1 as hundredths with its sign: "+12", "−5", "0". */
export function ofHundred(share: number): string {
  const whole = Math.round(share * 100);
  if (whole === 0) return '0';
  return `${whole > 0 ? '+' : '−'}${number(Math.abs(whole))}`;
}

/** A measure from −1 to 1 always with two places, so that the numbers of a column align. */
export const hundredths = (value: number): string =>
  exact(Math.abs(value) < 0.005 ? '0.00' : value.toFixed(2));

/** What the teacher reads for a mistake's code. */
export const misconceptionWords = (code: string): string =>
  hasWords(`misconception-${code}`)
    ? sayPart(`misconception-${code}`, 'name')
    : say('concept-mistake-unknown', { code });

/** A concept's strand, day and phase. A line may break after a dot, not before a dot or number. */
export const placeWords = (row: BoardRow): string =>
  say('board-place', {
    strand: strandWords(row.concept.strand),
    day: row.day,
    phase: row.phase,
  })
    .replaceAll(' ·', '\u00a0·')
    .replace(/ (?=\d)/g, '\u00a0');
