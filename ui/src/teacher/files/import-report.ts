import type { FileReport, ImportReport, Verdict } from '../../lib/backend';
import { valuesOf } from '../../lib/exhaustive';

type Kind = Verdict['kind'];

/** Whether the teacher must check the file. */
export const needsCheck = (file: FileReport) =>
  file.verdict.kind === 'refused' || file.verdict.kind === 'quarantined' || file.flags.length > 0;

const changed = (file: FileReport) =>
  file.verdict.kind === 'new' || file.verdict.kind === 'updated' ? 0 : 1;

/** Files to check first, then those with new entries, then the others. */
export function toCheckFirst(files: FileReport[]): FileReport[] {
  const rank = (file: FileReport) => (needsCheck(file) ? -1 : changed(file));
  return files
    .map((file, place) => ({ file, place }))
    .sort((a, b) => rank(a.file) - rank(b.file) || a.place - b.place)
    .map(({ file }) => file);
}

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
  return ORDER.map((kind) => ({
    kind,
    count: report.files.filter((file) => file.verdict.kind === kind).length,
  })).filter(({ count }) => count > 0);
}
