import { beforeEach, expect, test, vi } from 'vitest';
import type { Calls, CheckInTap, Today } from '../lib/backend';

/** Each call waits until the test answers it. */
const waiting: { tap: CheckInTap; go: (out: string[]) => void; fail: (why: unknown) => void }[] =
  [];
vi.mock('../lib/backend/call', async (real) => ({
  ...(await real<object>()),
  call: (name: keyof Calls, tap: CheckInTap) => {
    expect(name).toBe('check_in');
    return new Promise((go, fail) => waiting.push({ tap, go, fail }));
  },
}));
const { CheckIn } = await import('./check-in.svelte');
const { CallFailed } = await import('../lib/backend');
const { drawn } = await import('../lib/ui');

const today = (): Today => ({
  date: '2026-09-16',
  today: '2026-09-16',
  pass: 1,
  day: 3,
  rotation_days: 10,
  said_on: null,
  concepts: ['a', 'b'].map((id) => ({
    concept: { id, strand: 'data', title: id, i_can: id, has_exercises: true },
    phase: 'practice',
    confidence: null,
    outcome: null,
    in_review: true,
  })),
  next_school_day: null,
  catch_up: [],
});
/** Waits until the tap is drawn and sent. */
const settle = async () => {
  await drawn();
  await new Promise((resolve) => setTimeout(resolve));
};

beforeEach(() => {
  waiting.length = 0;
});

test('a tap shows before it is stored, together with the rest of the concept', async () => {
  const checkIn = new CheckIn('s', today());
  checkIn.rate('a', 2);
  expect(checkIn.rows[0]?.confidence).toBe(2);
  await settle();
  expect(waiting[0]?.tap).toEqual({
    student: 's',
    date: '2026-09-16',
    concept: 'a',
    confidence: 2,
    outcome: null,
  });
});

test('taps go one after the other, and the last one counts', async () => {
  const checkIn = new CheckIn('s', today());
  checkIn.rate('a', 0);
  await settle();
  checkIn.rate('a', 3);
  checkIn.mark('b', 'wrong');
  await settle();
  expect(waiting).toHaveLength(1);
  // The first answer must not overwrite the second tap.
  waiting[0]?.go([]);
  await settle();
  expect(checkIn.rows[0]?.confidence).toBe(3);
  waiting[1]?.go(['2026-09-15']);
  await settle();
  expect(waiting.map(({ tap }) => [tap.concept, tap.confidence, tap.outcome])).toEqual([
    ['a', 0, null],
    ['a', 3, null],
    ['b', null, 'wrong'],
  ]);
  expect(checkIn.catchUp).toEqual(['2026-09-15']);
});

test('what could not be stored stays on the screen and can be sent again', async () => {
  const checkIn = new CheckIn('s', today());
  checkIn.rate('a', 1);
  await settle();
  waiting[0]?.fail(new CallFailed({ code: 'storage', detail: 'full' }));
  await settle();
  expect(checkIn.error?.code).toBe('storage');
  expect(checkIn.rows[0]?.confidence).toBe(1);
  checkIn.again();
  await settle();
  expect(waiting[1]?.tap.confidence).toBe(1);
  waiting[1]?.go([]);
  await settle();
  expect(checkIn.error).toBeNull();
});
