import type { ConceptDraft, OwnImport, Strand } from '../../lib/backend';
import { valuesOf } from '../../lib/exhaustive';

/** The strands in the order of the catalogue. */
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

/** How many lines of an import were taken, and how many were not. */
export function tally(one: OwnImport): { taken: number; refused: number } {
  return {
    taken: one.files.reduce((sum, file) => sum + file.taken.length, 0),
    refused: one.files.reduce((sum, file) => sum + file.refused.length, 0),
  };
}

/** Whether a draft has these words in its title, statement, codes or heading. */
export function matches(draft: ConceptDraft, words: string): boolean {
  const wanted = words.trim().toLowerCase();
  if (wanted === '') return true;
  return [draft.title, draft.i_can, draft.under, ...draft.codes].some((text) =>
    text.toLowerCase().includes(wanted),
  );
}

/** The picked drafts with what was chosen for all of them where they say nothing themselves. */
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
