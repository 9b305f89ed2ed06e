import type { FileReport, ImportReport, Verdict } from '../../lib/backend';
import { valuesOf } from '../../lib/exhaustive';

type Kind = Verdict['kind'];

/** Whether the teacher must check the file. */
export const needsCheck = (file: FileReport) =>
  file.verdict.kind === 'refused' || file.verdict.kind === 'quarantined' || file.flags.length > 0;

const ORDER = valuesOf<Kind>({
  new: true,
  updated: true,
  known: true,
  older: true,
  quarantined: true,
  refused: true,
});

/** How many files have each verdict, without verdicts that no file has. */
export function tally(report: ImportReport): { kind: Kind; count: number }[] {
  return ORDER.map((kind) => ({ kind, count: report.tally[kind] })).filter(
    ({ count }) => count > 0,
  );
}
