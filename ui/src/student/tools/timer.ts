/** A timer: how long it is set to, and how long it has run. */
export interface Timer {
  minutes: number;
  /** Time that ran before the last pause. */
  ran_ms: number;
  /** When it was last started, on the device's clock; null while paused. */
  since_ms: number | null;
}

export const MINUTES = [1, 2, 3, 5, 10, 15];
export const START: Timer = { minutes: 5, ran_ms: 0, since_ms: null };

const MINUTE_MS = 60_000;
const SECOND_MS = 1_000;

export function withMinutes(minutes: number): Timer {
  return { ...START, minutes };
}

/** The time left at a moment. A clock that is set back adds no time. */
export function left(timer: Timer, now_ms: number): number {
  const runs = timer.since_ms === null ? 0 : Math.max(now_ms - timer.since_ms, 0);
  return Math.max(timer.minutes * MINUTE_MS - timer.ran_ms - runs, 0);
}

/** Starts it; if it was over, from the beginning. */
export function go(timer: Timer, now_ms: number): Timer {
  const begun = left(timer, now_ms) === 0 ? withMinutes(timer.minutes) : timer;
  return { ...begun, since_ms: now_ms };
}

export function wait(timer: Timer, now_ms: number): Timer {
  return {
    ...timer,
    ran_ms: timer.minutes * MINUTE_MS - left(timer, now_ms),
    since_ms: null,
  };
}

/** As on a clock, such as 4:05, rounded up. */
export function face(left_ms: number): string {
  const seconds = Math.ceil(left_ms / SECOND_MS);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

/** The minutes left, rounded up. */
export function toldMinutes(left_ms: number): number {
  return Math.ceil(left_ms / MINUTE_MS);
}
