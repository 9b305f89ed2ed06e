import { expect, test } from 'vitest';
import { GUIDES } from '../lib/guide/guide.svelte';
import { sayIn } from '../lib/words';
import { loaded } from '../lib/words/bundles';

test('every guide has a title and a line in both languages', () => {
  for (const at of GUIDES) {
    for (const id of [`guide-${at}-title`, `guide-${at}-1`]) {
      for (const language of ['en', 'es'] as const) {
        expect(loaded(language)?.hasMessage(id), `${id} in ${language}`).toBe(true);
      }
    }
  }
});

test('the place of a concept is worded in both languages', () => {
  const place = { strand: 'x', day: 3, phase: 'practice' };
  expect(sayIn('en', 'board-place', place)).toBe('x · day 3 · practice');
  expect(sayIn('es', 'board-place', place)).toBe('x · día 3 · práctica');
});
