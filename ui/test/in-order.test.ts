import { expect, test } from 'vitest';
import { inOrder } from '../src/lib/in-order';

test('a change asked for while another is on its way builds on it', async () => {
  const run = inOrder();
  let stored = { language: 'en', theme: 'light' };
  const change = (part: Partial<typeof stored>) =>
    run(async () => {
      const next = { ...stored, ...part };
      await new Promise((done) => setTimeout(done, 5));
      stored = next;
    });
  await Promise.all([change({ language: 'es' }), change({ theme: 'dark' })]);
  expect(stored).toEqual({ language: 'es', theme: 'dark' });
});

test('a failure is told to the one who asked and stops nobody else', async () => {
  const run = inOrder();
  const failed = run(() => Promise.reject(new Error('full')));
  const after = run(() => Promise.resolve('kept'));
  await expect(failed).rejects.toThrow('full');
  await expect(after).resolves.toBe('kept');
});
