import { expect, test } from 'vitest';
import type { FileReport, Verdict } from '../../lib/backend';
import { needsCheck, tally } from './import-report';

function file(file_name: string, verdict: Verdict, flags: FileReport['flags'] = []): FileReport {
  return { file_name, verdict, seat: 1, name: null, class_title: null, new_entries: 0, flags };
}

test('refused, quarantined and flagged files need a check', () => {
  const files = [
    file('a', { kind: 'known' }),
    file('b', { kind: 'updated' }),
    file('c', { kind: 'refused', refusal: { code: 'damaged' } }),
    file('d', { kind: 'new' }, [{ code: 'future_date', date: '2030-01-01', entries: 1 }]),
    file('e', { kind: 'quarantined' }),
  ];
  expect(files.map(needsCheck)).toEqual([false, false, true, true, true]);
});

test('verdicts that no file has are left out', () => {
  const report = {
    import: 1,
    made_on: '2026-11-24',
    tally: { new: 3, updated: 0, known: 1, older: 0, quarantined: 0, refused: 2 },
    to_check: 2,
    files: [],
    cancelled: false,
    undone: false,
  };
  expect(tally(report)).toEqual([
    { kind: 'new', count: 3 },
    { kind: 'known', count: 1 },
    { kind: 'refused', count: 2 },
  ]);
});
