/** Minutes since twelve, from 0 to 719. */
export type Time = number;

export const START: Time = 3 * 60;
const ROUND = 12 * 60;

/** The hands turned on, or back; the hour hand goes with the minute hand. */
export function turn(time: Time, minutes: number): Time {
  return (((time + minutes) % ROUND) + ROUND) % ROUND;
}

/** As the pictures of clocks take it. */
export function drawn(time: Time): { hour: number; minute: number } {
  return { hour: Math.floor(time / 60) || 12, minute: time % 60 };
}
