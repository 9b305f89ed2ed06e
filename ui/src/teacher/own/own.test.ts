import { expect, test } from 'vitest';
import type { ConceptDraft, OwnImport } from '../../lib/backend';
import { filled, matches, tally } from './own';

const draft: ConceptDraft = {
  line: 0,
  at: 'CFItems[1]',
  key: 'k',
  id: 'own-k',
  title: { en: 'Read a gauge', es: 'Leer un medidor' },
  i_can: { en: 'The student reads a water gauge.' },
  strand: null,
  grade: 4,
  before: [],
  codes: ['OF.4.W.1'],
  under: 'Measuring water',
};

test('a draft is found by its words, its code and its heading', () => {
  for (const words of ['', 'GAUGE', 'leer', 'of.4.w', 'measuring'])
    expect(matches(draft, words)).toBe(true);
  expect(matches(draft, 'fractions')).toBe(false);
});

test('what was chosen for all fills only what is missing', () => {
  expect(filled([draft], 'data', 5)).toEqual([{ ...draft, strand: 'data', grade: 4 }]);
  expect(filled([{ ...draft, grade: null }], null, 5)[0]).toMatchObject({ strand: null, grade: 5 });
});

test('an import counts the lines of all its files', () => {
  const line = { line: 2, id: 'a', words: 'b', left_out: [], missing_in: [] };
  const refused = { line: 3, at: '', fault: { code: 'no_key' as const } };
  const one: OwnImport = {
    number: 1,
    kind: 'exercises',
    made_on: '2026-09-14',
    undone: false,
    files: [
      { file: 'a', taken: [line, line], refused: [] },
      { file: 'b', taken: [line], refused: [refused] },
    ],
  };
  expect(tally(one)).toEqual({ taken: 3, refused: 1 });
});
