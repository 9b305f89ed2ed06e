import { expect, test, vi } from 'vitest';
import type { Lacking, LackingKind } from '../../lib/backend';

vi.mock('../desk.svelte', () => ({
  desk: { name: (seat: number, name: string | null) => name ?? `Seat ${seat}` },
}));
const way = vi.hoisted(() => ({ now: 'file' }));
vi.mock('./class-folder.svelte', () => ({ packWay: () => way.now }));
const { lackingWords, notJoinedWords, reminder, shortName } = await import('./who-has-not');

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
const ofNobody: LackingKind = {
  kind: 'damaged_of_nobody',
  files: 3,
  file_name: 'b.sfhandin',
  read_on: '2026-09-14',
};
const oldPack: LackingKind = {
  kind: 'old_pack',
  version: 1,
  newest: 3,
  handed_in_on: '2026-09-14',
  other_days: true,
};

test('the line to read out names each student who should hand in once', () => {
  const lines = [line(damaged, 2, 'Bao'), line(late, 2, 'Bao'), line(late)];
  expect(reminder([...lines, line(oldPack, 3, 'Carlos'), line(ofNobody, null)])).toBe(
    'Please hand in today: Bao and Seat 1.',
  );
  expect(reminder([line(oldPack)])).toBe('');
});

test('words that somebody put into the name of a file are never read out, and are short', () => {
  const said = { ...ofNobody, file_name: `Wren does not know ${'x'.repeat(300)}` };
  expect(reminder([line(said, null)])).toBe('');
  expect(lackingWords(line(said, null)).length).toBeLessThan(200);
  expect(shortName('hand-in-abcdefghijkl.sfhandin')).toBe('hand-in-abcdefghijkl.sfhandin');
});

test('who never handed in has one sentence', () => {
  const seats = [
    { seat: 1, name: 'Ana' },
    { seat: 2, name: null },
  ];
  expect(notJoinedWords(seats)).toContain('2 seats have never handed in: Ana and Seat 2.');
});

test('what to do about an older pack depends on how packs travel', () => {
  const words = ['file', 'folder', 'elsewhere'].map((one) => {
    way.now = one;
    return lackingWords(line(oldPack));
  });
  way.now = 'file';
  expect(words[0]).toContain('Give it out again');
  expect(words[1]).toContain('class folder');
  expect(words[2]).toContain('computer that saves the packs');
});

test('a line says what is missing', () => {
  expect(lackingWords(line(late))).toContain('6 school days ago');
  expect(lackingWords(line(damaged))).toContain('from this seat');
  expect(lackingWords(line(ofNobody, null))).toContain('3 files');
  expect(lackingWords(line(oldPack))).toContain('Its days are not those of the class');
  expect(lackingWords(line({ ...oldPack, other_days: false }))).not.toContain('Its days');
  expect(lackingWords(line({ ...oldPack, version: 0 }))).toContain('no pack of this class');
});
