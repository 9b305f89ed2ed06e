import { describe, expect, test } from 'vitest';
import type { LineReading, Roster } from '../../lib/backend';
import { asDifferent, asOne, choiceOf, faultOf, namesBy, rowsOf, swapped, twinsOf } from './roster';

type Line = [first: string, last?: string, reading?: LineReading];
const roster = (...lines: Line[]): Roster => ({
  title: '',
  lines: lines.map(([first, last = '', reading = 'name'], at) => ({
    line: at + 1,
    first,
    last,
    reading,
  })),
});
const rows = (...lines: Line[]) => rowsOf(roster(...lines));
const nobody: ReadonlySet<string> = new Set();
const names = (of: ReturnType<typeof rows>) => choiceOf(of, nobody).names;

describe('names of seats', () => {
  test('are first names, with as much of the last as tells them apart', () => {
    expect(names(rows(['Ana', 'Ruiz'], ['Bao', 'Tran']))).toEqual(['Ana', 'Bao']);
    expect(names(rows(['Ana', 'Ruiz'], ['ana', 'Lopez'], ['Bao', 'Tran']))).toEqual([
      'Ana R.',
      'ana L.',
      'Bao',
    ]);
    expect(names(rows(['Ana', 'Ruiz'], ['Ana', 'Rojas']))).toEqual(['Ana Ruiz', 'Ana Rojas']);
  });

  test('leave out headings, and lines that are not taken', () => {
    const all = rows(
      ['Name', '', 'heading'],
      ['Ana', 'Ruiz'],
      ['', '', 'no_name'],
      ['Bao', '', 'full'],
    );
    expect(names(all)).toEqual(['Ana']);
    expect(names(all.map((row) => ({ ...row, taken: true })))).toEqual(['Name', 'Ana', '', 'Bao']);
  });

  test('are as written, and a long or empty one is a fault', () => {
    const [long] = rows(['x'.repeat(41), 'Fox', 'too_long']);
    if (!long) throw new Error('no row');
    expect(faultOf(long, namesBy([long]).get(long) ?? '')).toBe('long');
    const short = { ...long, written: 'Max' };
    expect(choiceOf([short], nobody)).toEqual({ names: ['Max'], open: 0 });
    expect(choiceOf([{ ...long, written: ' ' }], nobody).open).toBe(1);
  });

  test('are taken the other way round', () => {
    expect(names(swapped(rows(['Tran', 'Bao'], ['李明'])))).toEqual(['Bao', '李明']);
  });
});

describe('the same name twice', () => {
  const twice = rows(['José', 'Ruiz'], ['Bao', 'Tran'], ['Jose', 'Ruiz']);

  test('is asked', () => {
    const [twins] = twinsOf(twice, nobody);
    expect(twins?.rows.map((row) => row.line)).toEqual([1, 3]);
    expect(choiceOf(twice, nobody).open).toBe(1);
  });

  test('can be different students', () => {
    const [twins] = twinsOf(twice, nobody);
    if (!twins) throw new Error('no twins');
    const choice = choiceOf(twice, asDifferent(nobody, twins));
    expect(choice.open).toBe(0);
    expect(choice.names).toHaveLength(3);
  });

  test('can be one student', () => {
    const [twins] = twinsOf(twice, nobody);
    if (!twins) throw new Error('no twins');
    expect(choiceOf(asOne(twice, twins), nobody)).toEqual({ names: ['José', 'Bao'], open: 0 });
  });
});
