import { expect, test } from 'vitest';
import type { FileReport, Verdict } from '../../lib/backend';
import { toCheckFirst, needsCheck, tally } from './import-report';

function file(file_name: string, verdict: Verdict, flags: FileReport['flags'] = []): FileReport {
  return { file_name, verdict, seat: 1, name: null, class_title: null, new_entries: 0, flags };
}

const files = [
  file('a', { kind: 'known' }),
  file('b', { kind: 'updated' }),
  file('c', { kind: 'refused', refusal: { code: 'damaged' } }),
  file('d', { kind: 'new' }, [{ code: 'future_date', date: '2030-01-01', entries: 1 }]),
  file('e', { kind: 'quarantined' }),
];

test('files to check come first, then those with new entries, in the order of names', () => {
  expect(toCheckFirst(files).map((one) => one.file_name)).toEqual(['c', 'd', 'e', 'b', 'a']);
  expect(files.map(needsCheck)).toEqual([false, false, true, true, true]);
});

test('every file is counted under one verdict', () => {
  const report = { import: 1, made_on: '2026-11-24', files, cancelled: false, undone: false };
  const counts = tally(report);
  expect(counts.reduce((sum, { count }) => sum + count, 0)).toBe(files.length);
  expect(counts.map(({ kind }) => kind)).toEqual([
    'new',
    'updated',
    'known',
    'quarantined',
    'refused',
  ]);
});
