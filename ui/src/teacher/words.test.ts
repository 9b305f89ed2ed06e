import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { GUIDES } from '../lib/guide/guide.svelte';
import { hasWords, LANGUAGES, sayIn } from '../lib/words';
import { loaded } from '../lib/words/bundles';
import { trendWords } from './board/board';

const sources = readdirSync('src/teacher', { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.(svelte|ts)$/.test(file) && !file.endsWith('.test.ts'))
  .map((file) => readFileSync(`src/teacher/${file}`, 'utf8'));

test('every message that the screens name is there', () => {
  const ids = sources.flatMap((text) =>
    [...text.matchAll(/'((?:[a-z]+-)+[a-z0-9]+(?:-[a-z0-9]+)*)'/g)].map((match) => match[1] ?? ''),
  );
  const ours = ids.filter((id) =>
    /^(desk|board|concept|files|held|journal|class-part|seats|calendar|rotation|lessons|pack|slips|assign|new-class|action|tab|flag|groups|talk|enter|compare|roster-file|own|pacing|removed|guide)-/.test(
      id,
    ),
  );
  // Hooks for the tests share the look of ids.
  const hooks = new Set(
    sources.flatMap((text) =>
      [...text.matchAll(/data-testid="([\w-]+)"/g)].map((match) => match[1]),
    ),
  );
  expect(ours.length).toBeGreaterThan(200);
  expect(ours.filter((id) => !hasWords(id) && !hooks.has(id))).toEqual([]);
});

test('every value that comes by code has its words', () => {
  const trends = [
    'rising',
    'falling',
    'maybe_rising',
    'maybe_falling',
    'no_clear_change',
    'too_soon',
  ] as const;
  const verdicts = ['new', 'updated', 'known', 'older', 'quarantined', 'refused'];
  const ids = [
    ...trends.map(trendWords),
    ...verdicts.flatMap((kind) => [`files-tally-${kind}`, `files-verdict-${kind}`]),
    ...['known', 'older', 'quarantined'].map((kind) => `files-verdict-${kind}-words`),
    ...['seats', 'calendar', 'rotation', 'exercises', 'concepts', 'pack'].map(
      (part) => `class-part-${part}`,
    ),
    ...['preview', 'practice', 'review'].map((phase) => `phase-${phase}`),
    ...['right', 'wrong', 'not-done'].map((outcome) => `outcome-${outcome}`),
    ...['teach-again', 'pair-talk', 'short-look'].map((way) => `talk-way-${way}`),
    ...['slip', 'answer', 'steps', 'concept'].map((step) => `talk-next-${step}`),
    ...['over', 'under', 'near', 'unclear', 'too-little'].map((word) => `compare-verdict-${word}`),
    ...['rating', 'outcome', 'seen'].flatMap((mode) => [
      `enter-mode-${mode}`,
      `enter-keys-${mode}`,
      `enter-foot-${mode}`,
    ]),
    ...['board', 'compare'].map((part) => `board-part-${part}`),
    ...[
      'size',
      'not-needed',
      'absent',
      'twice-in-slot',
      'twice-on-concept',
      'apart',
      'split',
      'too-many-groups',
      'too-many-copies',
      'no-such-slot',
    ].map((kind) => `groups-broken-${kind}`),
    ...['system', 'light', 'dark', 'contrast', 'contrast-dark'].map((theme) => `theme-${theme}`),
  ];
  expect(ids.filter((id) => !hasWords(id))).toEqual([]);
});

test('every guide has a title and a line in every language', () => {
  for (const at of GUIDES) {
    for (const id of [`guide-${at}-title`, `guide-${at}-1`]) {
      for (const language of LANGUAGES.map(({ tag }) => tag)) {
        expect(loaded(language)?.hasMessage(id), `${id} in ${language}`).toBe(true);
      }
    }
  }
});

test('every trouble of a pacing list has its words', () => {
  const troubles = ['no-such-concept', 'no-date', 'outside-year', 'twice'];
  expect(troubles.filter((one) => !hasWords(`pacing-${one}`))).toEqual([]);
});

test('the place of a concept is worded in every language', () => {
  const place = { strand: 'x', day: 3, phase: 'practice' };
  expect(sayIn('en', 'board-place', place)).toBe('x · day 3 · practice');
  expect(sayIn('es', 'board-place', place)).toBe('x · día 3 · práctica');
});
