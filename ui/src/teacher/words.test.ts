import { expect, test } from 'vitest';
import { GUIDES } from '../lib/guide/guide.svelte';
import { LANGUAGES, sayIn } from '../lib/words';
import { loaded } from '../lib/words/bundles';

test('every guide has a title and a line in every language', () => {
  for (const at of GUIDES) {
    for (const id of [`guide-${at}-title`, `guide-${at}-1`]) {
      for (const language of LANGUAGES.map(({ tag }) => tag)) {
        expect(loaded(language)?.hasMessage(id), `${id} in ${language}`).toBe(true);
      }
    }
  }
});

test('the place of a concept is worded in every language', () => {
  const place = { strand: 'x', day: 3, phase: 'practice' };
  expect(sayIn('en', 'board-place', place)).toBe('x · day 3 · practice');
  expect(sayIn('es', 'board-place', place)).toBe('x · día 3 · práctica');
});
