import type { ConceptDraft, Language, OwnImport, Strand, Text } from '../../lib/backend';
import { valuesOf } from '../../lib/exhaustive';
import { LANGUAGES } from '../../lib/words';

export const STRANDS = valuesOf<Strand>({
  'place-value': true,
  'addition-subtraction': true,
  multiplication: true,
  fractions: true,
  decimals: true,
  measurement: true,
  geometry: true,
  data: true,
  ratio: true,
  'number-system': true,
  expressions: true,
  statistics: true,
});

/** How many lines of an import were imported, and how many were refused. */
export function tally(one: OwnImport): { taken: number; refused: number } {
  return {
    taken: one.files.reduce((sum, file) => sum + file.taken.length, 0),
    refused: one.files.reduce((sum, file) => sum + file.refused.length, 0),
  };
}

/** Whether a draft has this text in its title, statement, codes or heading. */
export function matches(draft: ConceptDraft, words: string): boolean {
  const wanted = words.trim().toLowerCase();
  if (wanted === '') return true;
  const texts = [...Object.values(draft.title), ...Object.values(draft.i_can)];
  return [...texts, draft.under, ...draft.codes].some((text) =>
    text.toLowerCase().includes(wanted),
  );
}

/** The languages that a text has, in the order of the table of languages. */
export function languagesOf(text: Text): Language[] {
  return LANGUAGES.map(({ tag }) => tag).filter((tag) => text[tag] !== undefined);
}

/** The picked drafts. Where one has no strand or grade, it gets the one chosen for all. */
export function filled(
  drafts: ConceptDraft[],
  strand: Strand | null,
  grade: number | null,
): ConceptDraft[] {
  return drafts.map((draft) => ({
    ...draft,
    strand: draft.strand ?? strand,
    grade: draft.grade ?? grade,
  }));
}
