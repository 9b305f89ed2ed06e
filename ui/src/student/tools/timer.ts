/** A timer nobody has to use: how long it is set to, and what of it has run. */
export interface Timer {
  minutes: number;
  /** What ran before it last waited. */
  ran_ms: number;
  /** Since when it runs, on the device's clock; null while it waits. */
  since_ms: number | null;
}

export const MINUTES = [1, 2, 3, 5, 10, 15];
export const START: Timer = { minutes: 5, ran_ms: 0, since_ms: null };

const MINUTE_MS = 60_000;
const SECOND_MS = 1_000;

export function withMinutes(minutes: number): Timer {
  return { ...START, minutes };
}

/** Time left at a moment, never below nothing. A clock set back gives none back. */
export function left(timer: Timer, now_ms: number): number {
  const runs = timer.since_ms === null ? 0 : Math.max(now_ms - timer.since_ms, 0);
  return Math.max(timer.minutes * MINUTE_MS - timer.ran_ms - runs, 0);
}

/** Sets it going, from the beginning where it was over. */
export function go(timer: Timer, now_ms: number): Timer {
  const begun = left(timer, now_ms) === 0 ? withMinutes(timer.minutes) : timer;
  return { ...begun, since_ms: now_ms };
}

/** Lets it wait. */
export function wait(timer: Timer, now_ms: number): Timer {
  return {
    ...timer,
    ran_ms: timer.minutes * MINUTE_MS - left(timer, now_ms),
    since_ms: null,
  };
}

/** As on a clock, such as 4:05; a second counts until it is over. */
export function face(left_ms: number): string {
  const seconds = Math.ceil(left_ms / SECOND_MS);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

/** Minutes left as they are told: right at the moment when the number changes. */
export function toldMinutes(left_ms: number): number {
  return Math.ceil(left_ms / MINUTE_MS);
}
