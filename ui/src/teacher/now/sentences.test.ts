import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Certainty, HelpSays, Sentence, SentenceKind } from '../../lib/backend';
import { LANGUAGES } from '../../lib/words';
import { sentenceWords, studentsOf } from './sentences';

const concept = { id: 'a', strand: 'x', title: 'Area', i_can: '', has_exercises: true };
const student = { seat: 3, name: 'Ada' };
const kinds: SentenceKind[] = [
  {
    kind: 'talk',
    date: '2026-11-24',
    is_today: true,
    way: 'pair_talk',
    minutes: 2,
    wrong: 14,
  },
  {
    kind: 'talk',
    date: '2026-11-24',
    is_today: false,
    way: 'short_look',
    minutes: 1,
    wrong: null,
  },
  { kind: 'sure_and_wrong', sure: 20, rated: 22 },
  { kind: 'weak', heads: { about: 9, low: 6, high: 12, of: 24 }, low: 11, rated: 22 },
  { kind: 'weak', heads: null, low: 11, rated: 22 },
  { kind: 'nothing_weak', concepts: 12 },
  { kind: 'together', students: [student, { seat: 4, name: null }], estimated: true },
  { kind: 'together', students: [student, { seat: 4, name: null }], estimated: false },
  {
    kind: 'taught_again',
    help: 'rose_more',
    since: '2026-11-03',
    taught: 24,
    next_on: null,
  },
  { kind: 'sure_but_wrong', students: [student] },
  { kind: 'unsure_but_right', students: [student, { seat: 4, name: null }] },
];
const steps: Certainty[] = ['counted', 'clear', 'likely', 'not_sure', 'ratings_alone', 'ask_first'];
const sentence = (says: SentenceKind, certainty: Certainty): Sentence => ({
  says,
  certainty,
  concept: says.kind === 'nothing_weak' ? null : concept,
  actions: [],
});
const all = ({ main, rest }: { main: string; rest: string[] }) => [main, ...rest].join(' ');

test('every kind has words, with its numbers and without a name', () => {
  for (const says of kinds) {
    const words = all(sentenceWords(sentence(says, 'clear')));
    expect(words).not.toMatch(/⟨|Ada|%|undefined/);
    const { students, ...rest } = { students: [], date: '', ...says, kind: '' };
    const numbers = JSON.stringify({ ...rest, since: '' }).match(/\b\d+\b/g) ?? [];
    const told = says.kind === 'weak' && says.heads !== null ? ['9', '6', '12', '24'] : numbers;
    for (const number of told.filter((n) => n !== '1' && says.kind !== 'talk')) {
      expect(words).toContain(number);
    }
    if (students.length > 1) expect(words).toContain(String(students.length));
  }
  const [talk, , , weak] = kinds.map((says) => all(sentenceWords(sentence(says, 'clear'))));
  expect(talk).toContain('14');
  expect(weak).toContain('“Area” is weak');
});

test('every step of certainty has its own words', () => {
  const weak = kinds.filter(({ kind }) => kind === 'weak');
  for (const says of weak) {
    const words = steps.map((step) => all(sentenceWords(sentence(says, step))));
    expect(new Set(words).size).toBe(steps.length);
    expect(words.join()).not.toContain('⟨');
  }
  const [estimated] = weak;
  const main = (step: Certainty) => estimated && sentenceWords(sentence(estimated, step)).main;
  expect(main('likely')).toContain('likely weak');
  expect(main('not_sure')).toContain('may be weak');
});

test('what came of teaching again is said in the words of the verdict', () => {
  const words = (help: HelpSays, taught: number, next_on: string | null) =>
    all(
      sentenceWords(
        sentence({ kind: 'taught_again', help, since: '2026-11-03', taught, next_on }, 'clear'),
      ),
    );
  expect(words('rose_more', 24, null)).toBe(
    '“Area”: results on it rose more than on what was not taught again. 24 students were taught it again on Tuesday, November 3.',
  );
  expect(words('likely_rose_more', 1, null)).toMatch(/likely rose more.*One student was/);
  expect(words('no_sign', 24, null)).toContain('no sign');
  expect(words('cannot_tell', 24, '2026-12-01')).toMatch(/cannot be told yet.*Look again on .*1/);
  expect(words('cannot_tell', 24, null)).toMatch(/cannot be told whether/);
});

test('students are those of the sentence; a sentence about the class has none', () => {
  const counts = kinds.map((says) => studentsOf(sentence(says, 'counted')).length);
  expect(counts).toEqual([0, 0, 0, 0, 0, 0, 2, 2, 0, 1, 2]);
});

test('nobody is called a fool', () => {
  for (const { tag } of LANGUAGES) {
    for (const file of ['screens-now', 'screens-teaching']) {
      const text = readFileSync(`../shared/messages/${tag}/${file}.ftl`, 'utf8');
      expect(text).not.toMatch(/fool|engañ|tont/i);
    }
  }
});
