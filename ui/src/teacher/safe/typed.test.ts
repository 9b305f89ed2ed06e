import { expect, test } from 'vitest';
import { sameWords } from './typed';

test('what is typed to be sure must be the words, not their size', () => {
  expect(sameWords(' remove EVERYTHING ', 'Remove everything')).toBe(true);
  expect(sameWords('remove every', 'Remove everything')).toBe(false);
  expect(sameWords('', 'Remove everything')).toBe(false);
});
