export type Time = number;

export const START: Time = 3 * 60;
const ROUND = 12 * 60;

/** Turns the hands by minutes, on or back. */
export function turn(time: Time, minutes: number): Time {
  return (((time + minutes) % ROUND) + ROUND) % ROUND;
}

/** The time as clock figures take it. */
export function drawn(time: Time): { hour: number; minute: number } {
  return { hour: Math.floor(time / 60) || 12, minute: time % 60 };
}
