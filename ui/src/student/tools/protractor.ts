/** An angle laid on a protractor. */
export interface Angle {
  /** From 0 to 180 degrees. */
  degrees: number;
  /** Opens from the right side; else from the left. */
  fromRight: boolean;
}

export const START: Angle = { degrees: 60, fromRight: true };

/** Opened to so many degrees; stays between closed and straight. */
export function open(angle: Angle, degrees: number): Angle {
  const next = Math.max(0, Math.min(180, degrees));
  return next === angle.degrees ? angle : { ...angle, degrees: next };
}

/** Laid from the other side, as wide open as before. */
export function flip(angle: Angle, fromRight: boolean): Angle {
  return fromRight === angle.fromRight ? angle : { ...angle, fromRight };
}
