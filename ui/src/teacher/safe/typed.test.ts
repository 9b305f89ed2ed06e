import { expect, test } from 'vitest';
import { sameWords } from './typed';

test('the typed words must match, except for case and spaces', () => {
  expect(sameWords(' remove EVERYTHING ', 'Remove everything')).toBe(true);
  expect(sameWords('remove every', 'Remove everything')).toBe(false);
  expect(sameWords('', 'Remove everything')).toBe(false);
});
