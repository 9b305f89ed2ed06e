import type { BoardRow } from '../../lib/backend';
import { say, strandWords } from '../../lib/words';

/** Where a concept stands; a line breaks after its dots, never before one or before a number. */
export const placeWords = (row: BoardRow): string =>
  say('board-place', {
    strand: strandWords(row.concept.strand),
    day: row.day,
    phase: row.phase,
  })
    .replaceAll(' ·', '\u00a0·')
    .replace(/ (?=\d)/g, '\u00a0');
