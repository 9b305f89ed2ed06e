import type { FileReport, ImportReport, Verdict } from '../../lib/backend';
import { valuesOf } from '../../lib/exhaustive';

type Kind = Verdict['kind'];

/** Whether someone has to look at it. */
export const needsLook = (file: FileReport) =>
  file.verdict.kind === 'refused' || file.verdict.kind === 'quarantined' || file.flags.length > 0;

const ORDER = valuesOf<Kind>({
  new: true,
  updated: true,
  known: true,
  older: true,
  quarantined: true,
  refused: true,
});

/** How many files of each verdict, without the verdicts that did not come. */
export function tally(account: ImportReport): { kind: Kind; count: number }[] {
  return ORDER.map((kind) => ({ kind, count: account.tally[kind] })).filter(
    ({ count }) => count > 0,
  );
}
