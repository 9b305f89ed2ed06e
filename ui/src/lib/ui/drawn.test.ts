import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { drawn } from '.';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** Whether the promise has resolved by now. */
async function come(promise: Promise<void>): Promise<boolean> {
  const still = Symbol('still');
  return (await Promise.race([promise, Promise.resolve(still)])) !== still;
}

test('it resolves after the next frame', async () => {
  let frame: FrameRequestCallback = () => undefined;
  vi.stubGlobal('requestAnimationFrame', (call: FrameRequestCallback) => {
    frame = call;
    return 1;
  });
  const waiting = drawn();
  expect(await come(waiting)).toBe(false);
  frame(0);
  expect(await come(waiting)).toBe(false);
  await vi.advanceTimersByTimeAsync(0);
  expect(await come(waiting)).toBe(true);
});

test('it resolves without a frame: soon, or at once when the page is hidden', async () => {
  vi.stubGlobal('requestAnimationFrame', () => 1);
  const soon = drawn();
  await vi.advanceTimersByTimeAsync(59);
  expect(await come(soon)).toBe(false);
  await vi.advanceTimersByTimeAsync(1);
  expect(await come(soon)).toBe(true);
  const hidden = drawn();
  document.dispatchEvent(new Event('visibilitychange'));
  expect(await come(hidden)).toBe(true);
});
