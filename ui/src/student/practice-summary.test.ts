import { render, screen } from '@testing-library/svelte';
import { beforeEach, expect, test, vi } from 'vitest';
import type { Reason, Summary } from '../lib/backend';
import { LANGUAGES, setLanguage } from '../lib/words';
import PracticeSummary from './PracticeSummary.svelte';
import { reasonWords } from './reason';

beforeEach(() => setLanguage('en'));

const concept = {
  id: 'g4-factors',
  strand: 'multiplication-division',
  title: 'Factors',
  i_can: 'I can find factors.',
  has_exercises: true,
};

const summary: Summary = {
  finished: 3,
  alone: 2,
  with_help: 0,
  minutes: 4,
  evenings_done: 1,
  evenings_planned: 3,
  concepts: [
    {
      concept,
      said: 1,
      thought: [1, 0, 0, 2],
      thought_right: [1, 0, 0, 1],
      finished: 3,
      alone: 2,
      with_help: 0,
    },
  ],
  more: true,
};

const show = (change: Partial<Summary>) =>
  render(PracticeSummary, {
    summary: { ...summary, ...change },
    onmore: vi.fn(),
    onfinish: vi.fn(),
    ontools: vi.fn(),
  });

test('the confidence is beside the results, for each confidence that was chosen', () => {
  show({});
  const rows = screen.getAllByRole('row').map((row) => row.textContent.replace(/\s+/g, ' ').trim());
  expect(rows).toHaveLength(3);
  expect(rows[0]).toContain('You thought');
  expect(rows[1]).toMatch(/Not yet.*1.* of .*1.* on your own/);
  expect(rows[2]).toMatch(/Could teach it.*1.* of .*2.* on your own/);
  expect(screen.getByTestId('practice-summary').textContent).toContain('2 of 3 evenings');
});

const NONE_RIGHT = {
  thought: [0, 2, 0, 0],
  thought_right: [0, 0, 0, 0],
  finished: 2,
  alone: 0,
  with_help: 0,
};

test('what went right comes first and is counted, in every language', () => {
  for (const { tag } of LANGUAGES) {
    setLanguage(tag);
    const other = { ...concept, id: 'g4-angles', title: 'Angles' };
    const helped = { concept: other, said: null, ...NONE_RIGHT, with_help: 1 };
    const none = {
      concept: { ...concept, id: 'g4-area', title: 'Area' },
      said: null,
      ...NONE_RIGHT,
    };
    const concepts = [...summary.concepts, helped, none] as Summary['concepts'];
    const { unmount } = show({ finished: 7, alone: 2, with_help: 1, concepts });
    const lines = [...screen.getByTestId('practice-summary').children];
    expect(lines[1]?.textContent).toMatch(/3.* 7/);
    const well = [...screen.getByTestId('practice-well').querySelectorAll('li')];
    expect(well.map((line) => line.textContent.replace(/\s+/g, ' ').trim())).toEqual([
      expect.stringMatching(/^Factors.*2.* 3/),
      expect.stringMatching(/^Angles.*1.* 2/),
    ]);
    expect(screen.getByTestId('practice-again').textContent).toMatch(/Area/);
    expect(screen.getByTestId('practice-again').textContent).not.toMatch(/Factors|Angles/);
    unmount();
  }
});

test('an evening without a right answer has no wall of wrong ones', () => {
  show({ finished: 2, alone: 0, concepts: [{ concept, said: 1, ...NONE_RIGHT } as never] });
  const { textContent: words } = screen.getByTestId('practice-summary');
  expect(words).toContain('You kept at 2 hard exercises.');
  expect(words).not.toMatch(/[Nn]ot on your own|On your own: |second try|0.* of /);
  expect(screen.queryByTestId('practice-well')).toBeNull();
  expect(screen.getByTestId('practice-again').textContent).toContain('Factors');
});

test('after the planned evenings of a week the evening is free, but practice can go on', () => {
  show({ finished: 0, evenings_done: 3, concepts: [] });
  expect(screen.getByTestId('practice-summary').textContent).toContain('Tonight is free');
  expect(screen.getByTestId('practice-more')).toBeTruthy();
});

test('an evening more than planned is not shown as a fourth of three', () => {
  show({ evenings_done: 3 });
  expect(screen.getByTestId('practice-summary').textContent).toContain('4 of 4 evenings');
});

const REASONS: Reason[] = [
  { code: 'assigned', due: '2026-10-02', done: 1, of: 3 },
  { code: 'marked_not_yet', on: '2026-10-01' },
  { code: 'marked_with_help', on: '2026-10-01' },
  { code: 'wrong_last_time', on: '2026-10-01' },
  { code: 'time_to_see_again', days: 9 },
  { code: 'focus' },
  { code: 'chosen' },
  { code: 'first_practice' },
  { code: 'before', concept: 'g4-factors' },
];

test.each(LANGUAGES.map(({ tag }) => tag))('every reason has words in %s', (language) => {
  setLanguage(language);
  const words = REASONS.map((reason) => reasonWords(reason, [{ concept, reason }]));
  expect(new Set(words).size).toBe(REASONS.length);
  for (const one of words) expect(one).not.toMatch(/reason-|[{}]/);
  expect(words[8]).toContain('Factors');
  expect(reasonWords({ code: 'before', concept: 'other' })).not.toMatch(/reason-/);
});
