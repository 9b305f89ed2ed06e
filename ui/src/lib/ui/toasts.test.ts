import { expect, test } from 'vitest';
import { toast, toasts } from '.';

test('a repeated note replaces the first; a note with undo does not', () => {
  toast('Saved.');
  toast('Saved.');
  toast('Taken away.', () => undefined);
  toast('Taken away.', () => undefined);
  expect(toasts.map((shown) => shown.words)).toEqual(['Saved.', 'Taken away.', 'Taken away.']);
});
