import { expect, test } from 'vitest';
import { allWritten, inOrder, Newest } from './requests';

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

test('a failed write rejects its own promise and stops no other', async () => {
  const run = inOrder();
  const failed = run(() => Promise.reject(new Error('full')));
  const after = run(() => Promise.resolve('kept'));
  await expect(failed).rejects.toThrow('full');
  await expect(after).resolves.toBe('kept');
});

test('a lock waits for all writes, also for those that fail', async () => {
  const order: string[] = [];
  let fail: (error: Error) => unknown = () => null;
  const failed = inOrder()(() => new Promise((_, reject) => (fail = reject)));
  const written = inOrder()(() => Promise.resolve(order.push('written')));
  const locked = allWritten().then(() => order.push('locked'));
  await written;
  await new Promise((done) => setTimeout(done, 5));
  expect(order).toEqual(['written']);
  fail(new Error('full'));
  await expect(failed).rejects.toThrow('full');
  await locked;
  expect(order).toEqual(['written', 'locked']);
});

test('only the answer to the newest request is in time', () => {
  const newest = new Newest();
  const first = newest.start();
  expect(first()).toBe(true);
  const second = newest.start();
  expect([first(), second()]).toEqual([false, true]);
  newest.drop();
  expect([first(), second()]).toEqual([false, false]);
});
