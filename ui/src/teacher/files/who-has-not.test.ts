import { expect, test, vi } from 'vitest';
import type { Lacking, LackingKind } from '../../lib/backend';

vi.mock('../desk.svelte', () => ({
  desk: { name: (seat: number, name: string | null) => name ?? `Seat ${seat}` },
}));
const { lackingWords, reminder } = await import('./who-has-not');

const line = (what: LackingKind, seat: number | null = 1, name: string | null = null): Lacking => ({
  seat,
  name,
  what,
});
const late: LackingKind = { kind: 'late', last_on: '2026-09-14', school_days: 6 };
const damaged: LackingKind = {
  kind: 'damaged',
  file_name: 'a.sfhandin',
  read_on: '2026-09-14',
  refusal: { code: 'damaged' },
};
const oldPack: LackingKind = {
  kind: 'old_pack',
  version: 1,
  newest: 3,
  handed_in_on: '2026-09-14',
  other_days: true,
};

test('the line to read out names each student who should hand in once', () => {
  const lines = [line(damaged, 2, 'Bao'), line(late, 2, 'Bao'), line({ kind: 'no_hand_in' })];
  expect(reminder([...lines, line(oldPack, 3, 'Carlos'), line(damaged, null)])).toBe(
    'Please hand in today: Bao and Seat 1.',
  );
  expect(reminder([line(oldPack)])).toBe('');
  expect(reminder([line(damaged, null)])).toContain('a.sfhandin');
});

test('a line says what is missing', () => {
  expect(lackingWords(line(late))).toContain('6 school days ago');
  expect(lackingWords(line(damaged))).toContain('from this seat');
  expect(lackingWords(line(damaged, null))).not.toContain('from this seat');
  expect(lackingWords(line(oldPack))).toContain('Its days are not those of the class');
  expect(lackingWords(line({ ...oldPack, other_days: false }))).not.toContain('Its days');
  expect(lackingWords(line({ ...oldPack, version: 0 }))).toContain('no pack of this class');
});
