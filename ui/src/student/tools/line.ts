import type { NumberLine, Rational } from '../../lib/backend';
import { tickAt } from '../../lib/answer/line';

/** A number line with a point and its hops. */
export interface Line {
  from: number;
  to: number;
  /** Parts of each whole. */
  parts: number;
  /** The tick of the point, from the left end. */
  at: number;
  /** Hops from tick to tick, in order. */
  hops: { from: number; to: number }[];
}

/** Ranges of whole numbers to choose from. */
export const RANGES = [
  [0, 1],
  [0, 2],
  [0, 10],
  [0, 20],
  [0, 100],
  [-10, 10],
] as const;
export const PARTS = [1, 2, 3, 4, 5, 6, 8, 10, 12];
/** The most ticks that can be told apart. */
const MOST_TICKS = 100;
const MOST_HOPS = 12;

export const START: Line = { from: 0, to: 10, parts: 1, at: 0, hops: [] };

/** The numbers of parts that can be told apart on a range. */
export function partsFor(from: number, to: number): number[] {
  return PARTS.filter((parts) => parts * (to - from) <= Math.max(MOST_TICKS, to - from));
}

/** Changes the range. The point goes to zero, or to the left end. */
export function withRange(line: Line, from: number, to: number): Line {
  const parts = partsFor(from, to).includes(line.parts) ? line.parts : 1;
  return { from, to, parts, at: -Math.min(from, 0) * parts, hops: [] };
}

/** Changes the parts. The point stays on its whole number. */
export function withParts(line: Line, parts: number): Line {
  return { ...line, parts, at: Math.floor(line.at / line.parts) * parts, hops: [] };
}

/** Puts the point on a tick, without a hop. */
export function put(line: Line, tick: number): Line {
  const at = Math.max(0, Math.min(ticks(line), tick));
  return at === line.at ? line : { ...line, at, hops: [] };
}

/** Hops by ticks, but not over the end of the line. */
export function hop(line: Line, by: number): Line {
  const to = line.at + by;
  if (to < 0 || to > ticks(line)) return line;
  const hops = [...line.hops, { from: line.at, to }].slice(-MOST_HOPS);
  return { ...line, at: to, hops };
}

/** The number of ticks after the first. */
export function ticks(line: Line): number {
  return (line.to - line.from) * line.parts;
}

export function at(line: Line, tick: number): Rational {
  return tickAt(drawn(line), tick);
}

export function size(line: Line, by: number): Rational {
  return tickAt({ ...drawn(line), from: { top: 0, bottom: 1 } }, by);
}

/** The line as figures take it. */
export function drawn(line: Line): NumberLine {
  const whole = (value: number): Rational => ({ top: value, bottom: 1 });
  const every = line.to - line.from > 20 ? 10 : line.to - line.from > 10 ? 2 : 1;
  const labels: NumberLine['labels'] = [];
  for (let value = line.from; value <= line.to; value += every)
    labels.push({ at: whole(value), label: { kind: 'number', text: String(value) } });
  const base: NumberLine = {
    from: whole(line.from),
    to: whole(line.to),
    step: { top: 1, bottom: line.parts },
    labels,
    points: [],
    jumps: [],
    rays: [],
    vertical: false,
  };
  const place = (tick: number) => tickAt(base, tick);
  return {
    ...base,
    points: [{ at: place(line.at), label: null }],
    jumps: line.hops.map((one) => ({ from: place(one.from), to: place(one.to), label: null })),
  };
}
