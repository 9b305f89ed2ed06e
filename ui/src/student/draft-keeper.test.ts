import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Draft } from '../lib/backend';
import { DraftKeeper, PAUSE_MS } from './draft-keeper';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const typed = (text: string): Draft => ({ kind: 'boxes', texts: [text], half_day: null });

/** A keeper whose calls end when the test lets them. */
function keeper() {
  const sent: [string, Draft | null][] = [];
  const answers: { well: () => void; badly: (error: Error) => void }[] = [];
  const told: unknown[] = [];
  const keeper = new DraftKeeper(
    (...one) => {
      sent.push(one);
      return new Promise((well, badly) => answers.push({ well: () => well(null), badly }));
    },
    (error) => told.push(error),
  );
  keeper.opened(null);
  return { keeper, sent, answers, told };
}

test('sends only the last state once typing pauses', async () => {
  const { keeper: drafts, sent, answers, told } = keeper();
  drafts.change('a', typed('1'));
  await vi.advanceTimersByTimeAsync(PAUSE_MS - 1);
  drafts.change('a', typed('12'));
  await vi.advanceTimersByTimeAsync(PAUSE_MS - 1);
  expect(sent).toEqual([]);
  await vi.advanceTimersByTimeAsync(1);
  expect(sent).toEqual([['a', typed('12')]]);
  answers[0]?.well();
  await vi.advanceTimersByTimeAsync(0);
  expect(told).toEqual([null]);
  // An unchanged draft is not sent again.
  drafts.change('a', typed('12'));
  await vi.advanceTimersByTimeAsync(PAUSE_MS);
  expect(sent).toHaveLength(1);
});

test('a draft that could not be kept is sent again when the screen is left', async () => {
  const { keeper: drafts, sent, answers, told } = keeper();
  drafts.change('a', typed('7'));
  await vi.advanceTimersByTimeAsync(PAUSE_MS);
  const full = new Error('full');
  answers[0]?.badly(full);
  await vi.advanceTimersByTimeAsync(0);
  expect(told).toEqual([full]);
  const leaving = drafts.soon();
  await vi.advanceTimersByTimeAsync(0);
  expect(sent).toHaveLength(2);
  answers[1]?.well();
  await leaving;
  expect(told).toEqual([full, null]);
});

test('nothing is sent for an exercise that an answer ended', async () => {
  const { keeper: drafts, sent } = keeper();
  drafts.change('a', typed('7'));
  let finish: () => unknown = () => null;
  const answering = drafts.during(
    () => new Promise((resolve) => (finish = () => resolve({ over: true }))),
  );
  await vi.advanceTimersByTimeAsync(0);
  drafts.change('a', typed('71'));
  const kept = drafts.now();
  await vi.advanceTimersByTimeAsync(2 * PAUSE_MS);
  finish();
  await answering;
  await kept;
  await vi.advanceTimersByTimeAsync(2 * PAUSE_MS);
  expect(sent).toEqual([]);
});

test('after a first try or a failed answer the draft is kept', async () => {
  for (const ends of [() => Promise.resolve({ over: false }), () => Promise.reject(new Error())]) {
    const { keeper: drafts, sent } = keeper();
    drafts.change('a', typed('7'));
    await drafts.during(ends).catch(() => undefined);
    expect(sent).toEqual([]);
    await vi.advanceTimersByTimeAsync(PAUSE_MS);
    expect(sent).toEqual([['a', typed('7')]]);
  }
});

test('an answer waits for the draft before it', async () => {
  const { keeper: drafts, answers } = keeper();
  drafts.change('a', typed('7'));
  void drafts.soon();
  await vi.advanceTimersByTimeAsync(0);
  const answered = vi.fn(() => Promise.resolve({ over: true }));
  const answering = drafts.during(answered);
  await vi.advanceTimersByTimeAsync(0);
  expect(answered).not.toHaveBeenCalled();
  answers[0]?.well();
  await answering;
  expect(answered).toHaveBeenCalledOnce();
});

test('what is typed while a first answer is being checked is kept after it', async () => {
  const { keeper: drafts, sent } = keeper();
  let finish: () => unknown = () => null;
  void drafts.during(() => new Promise((resolve) => (finish = () => resolve({ over: false }))));
  await vi.advanceTimersByTimeAsync(0);
  drafts.change('a', typed('71'));
  void drafts.soon();
  await vi.advanceTimersByTimeAsync(PAUSE_MS);
  expect(sent).toEqual([]);
  finish();
  await vi.advanceTimersByTimeAsync(0);
  expect(sent).toEqual([['a', typed('71')]]);
});
