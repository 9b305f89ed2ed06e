import type { FileAccount, ImportAccount, Verdict } from '../../lib/backend';

type Kind = Verdict['kind'];

/** Whether someone has to look at it. */
export const needsLook = (file: FileAccount) =>
  file.verdict.kind === 'refused' || file.verdict.kind === 'held' || file.flags.length > 0;

/** The files to look at first, then the others; each in the order of their names. */
export function lookFirst(files: FileAccount[]): FileAccount[] {
  return [...files.filter(needsLook), ...files.filter((file) => !needsLook(file))];
}

const ORDER: Kind[] = ['new', 'updated', 'known', 'older', 'held', 'refused'];

/** How many files of each verdict, without the verdicts that did not come. */
export function tally(account: ImportAccount): { kind: Kind; count: number }[] {
  return ORDER.map((kind) => ({
    kind,
    count: account.files.filter((file) => file.verdict.kind === kind).length,
  })).filter(({ count }) => count > 0);
}
