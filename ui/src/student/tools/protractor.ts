export interface Angle {
  degrees: number;
  /** Whether it opens from the right side. */
  fromRight: boolean;
}

export const START: Angle = { degrees: 60, fromRight: true };

/** Opens the angle, from 0 to 180 degrees. */
export function open(angle: Angle, degrees: number): Angle {
  const next = Math.max(0, Math.min(180, degrees));
  return next === angle.degrees ? angle : { ...angle, degrees: next };
}

export function flip(angle: Angle, fromRight: boolean): Angle {
  return fromRight === angle.fromRight ? angle : { ...angle, fromRight };
}
