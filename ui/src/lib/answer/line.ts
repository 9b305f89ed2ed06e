import type { NumberLine, Rational } from '../backend/contract';
import { ticks, value } from '../figures/geometry';
import { number } from '../words';

/** The number of ticks after the first. */
export function tickCount(line: NumberLine): number {
  return ticks(value(line.from), value(line.to), value(line.step)).length - 1;
}

/** The exact value of a tick: from + at · step. */
export function tickAt(line: NumberLine, at: number): Rational {
  const top = line.from.top * line.step.bottom + at * line.step.top * line.from.bottom;
  const bottom = line.from.bottom * line.step.bottom;
  const shared = gcd(Math.abs(top), bottom);
  return { top: top / shared, bottom: bottom / shared };
}

/** A value in words. */
export function words(of: Rational): string {
  return of.bottom === 1 ? number(of.top) : `${of.top}/${of.bottom}`;
}

function gcd(a: number, b: number): number {
  return b === 0 ? Math.max(a, 1) : gcd(b, a % b);
}
