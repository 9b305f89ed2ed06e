import { expect, test } from 'vitest';
import type { Board, BoardRow } from '../../lib/backend';
import { sayIn } from '../../lib/words';
import {
  firstUnranked,
  hundredths,
  ordersDiffer,
  passWords,
  placeWords,
  saying,
  shade,
  shownPasses,
  shownRows,
  strandsOf,
  WHOLE_BOARD,
} from './board';

function row(id: string, change: Partial<BoardRow>): BoardRow {
  return {
    concept: { id, strand: 'fractions', title: id, i_can: '', has_exercises: true },
    grade: 4,
    phase: 'practice',
    day: 1,
    rank: null,
    has_it: null,
    low: null,
    high: null,
    reporters: 0,
    ask_first: true,
    sure_and_wrong: false,
    latest: [0, 0, 0, 0],
    results: { right: 0, wrong: 0 },
    practice: { alone: 0, with_help: 0, wrong: 0 },
    newest_days: null,
    trend: 'too_soon',
    passes: [],
    misconceptions: [],
    ...change,
  };
}

const board: Board = {
  class_title: 'Room 7',
  today: '2026-11-24',
  group: [],
  pass: 4,
  day: 2,
  pass_count: 18,
  seats: 24,
  seats_reporting: 24,
  newest_report_days: 1,
  typical_report_days: 2,
  level_known: true,
  rows: [
    row('weak', { rank: 1, has_it: 0.3, day: 2, reporters: 20, newest_days: 3 }),
    row('unheard', { phase: 'preview' }),
    row('strong', { rank: 2, has_it: 0.9, day: 1, reporters: 24, newest_days: 1 }),
  ],
  misconceptions: [],
  misconceptions_left_out: 0,
};
const ids = (rows: BoardRow[]) => rows.map((one) => one.concept.id);

test('weakest first, concepts without a report last', () => {
  expect(ids(shownRows(board, WHOLE_BOARD))).toEqual(['weak', 'strong', 'unheard']);
});

test('in reverse order, concepts without a report still come last', () => {
  const view = { ...WHOLE_BOARD, sort: 'has_it' as const, reversed: true };
  expect(ids(shownRows(board, view))).toEqual(['strong', 'weak', 'unheard']);
});

test('rows without a rank are separated, but only in the order of ranks', () => {
  const rows = shownRows(board, WHOLE_BOARD);
  expect(firstUnranked(rows, WHOLE_BOARD)).toBe(2);
  expect(firstUnranked(rows, { ...WHOLE_BOARD, sort: 'title' })).toBeNull();
  expect(firstUnranked(rows.slice(0, 2), WHOLE_BOARD)).toBeNull();
  expect(firstUnranked(rows.slice(2), WHOLE_BOARD)).toBeNull();
});

test('filters hide what does not fit', () => {
  expect(ids(shownRows(board, { ...WHOLE_BOARD, today: true }))).toEqual(['weak']);
  expect(ids(shownRows(board, { ...WHOLE_BOARD, phase: 'preview' }))).toEqual(['unheard']);
  expect(ids(shownRows(board, { ...WHOLE_BOARD, strand: 'data' }))).toEqual([]);
});

test('strands come once each', () => {
  expect(strandsOf(board)).toEqual(['fractions']);
});

test('the latest passes are shown, up to the pass of today', () => {
  expect(shownPasses(board, 3)).toEqual([2, 3, 4]);
  expect(shownPasses({ ...board, pass: 0 }, 6)).toEqual([0]);
  expect(shownPasses({ ...board, pass: 30 }, 2)).toEqual([16, 17]);
});

test('the shade grows with the share needing help', () => {
  expect(shade(0, 20)).toBe(0);
  expect(shade(0, 0)).toBe(0);
  expect(shade(1, 20)).toBe(1);
  expect(shade(10, 20)).toBe(3);
  expect(shade(20, 20)).toBe(4);
});

test('a pass tells share and counts in words', () => {
  expect(passWords({ needs: 6, rated: 24, last_on: null })).toBe(
    sayIn('en', 'board-pass-cell', { needs: 6, rated: 24, share: '25%' }),
  );
  expect(passWords({ needs: 6, rated: 24, last_on: '2026-11-02' })).toContain('Nov 2');
  const unknown = passWords({ needs: 6, rated: 24, last_on: null }, false);
  expect(unknown).toContain('6 of 24');
  expect(unknown).not.toContain('%');
  expect(passWords({ needs: 0, rated: 0, last_on: null })).toBe(sayIn('en', 'board-no-report'));
});

test('the place of a concept never begins a line with a dot', () => {
  expect(placeWords(row('x', { day: 3 }))).toBe('Fractions\u00a0· day\u00a03\u00a0· practice');
});

test('measures always have two decimals', () => {
  expect([0.5, -0.25, 0.001, -0.001, 1].map(hundredths)).toEqual([
    '0.50',
    '−0.25',
    '0.00',
    '0.00',
    '1.00',
  ]);
});

test('a column is offered once it has something to say', () => {
  expect(saying(board)).toEqual(['reports']);
  const later = row('later', {
    trend: 'falling',
    latest: [0, 1, 0, 0],
    passes: [{ rated: 1, needs: 0, last_on: null }],
  });
  expect(saying({ ...board, rows: [...board.rows, later] })).toEqual([
    'reports',
    'ratings',
    'trend',
    'passes',
  ]);
  const practised = row('practised', { practice: { alone: 0, with_help: 0, wrong: 2 } });
  const marked = row('marked', { results: { right: 1, wrong: 0 } });
  expect(saying({ ...board, rows: [practised, marked] })).toEqual([
    'reports',
    'results',
    'practice',
  ]);
});

test('the order is explained only where the shares shown leave it', () => {
  const rows = (...shares: (number | null)[]) =>
    shares.map((has_it, at) => row(String(at), { rank: at + 1, has_it }));
  expect(ordersDiffer(rows(0.3, 0.35, 0.4), WHOLE_BOARD)).toBe(false);
  expect(ordersDiffer(rows(0.3, 0.4, 0.34), WHOLE_BOARD)).toBe(true);
  expect(ordersDiffer(rows(0.304, 0.303), WHOLE_BOARD)).toBe(false);
  expect(ordersDiffer(rows(null, null), WHOLE_BOARD)).toBe(false);
  expect(ordersDiffer(rows(0.3, 0.4, 0.34), { ...WHOLE_BOARD, sort: 'title' })).toBe(false);
  expect(ordersDiffer(rows(0.4, 0.35, 0.3), { ...WHOLE_BOARD, reversed: true })).toBe(false);
});
