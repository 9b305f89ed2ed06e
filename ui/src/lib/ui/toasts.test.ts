import { expect, test } from 'vitest';
import { toast, toasts } from '.';

test('a note said again takes its own place; one with a way back stands by itself', () => {
  toast('Saved.');
  toast('Saved.');
  toast('Taken away.', () => undefined);
  toast('Taken away.', () => undefined);
  expect(toasts.map((shown) => shown.words)).toEqual(['Saved.', 'Taken away.', 'Taken away.']);
});
