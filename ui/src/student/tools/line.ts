import type { NumberLine, Rational } from '../../lib/backend';
import { tickAt } from '../../lib/answer/line';

/** A number line with one point on it and the hops that it made. */
export interface Line {
  from: number;
  to: number;
  /** Parts that each whole is cut into. */
  parts: number;
  /** The tick the point is on, from the left end. */
  at: number;
  /** Hops from tick to tick, in their order. */
  hops: { from: number; to: number }[];
}

/** Stretches of whole numbers to choose from, as `from` and `to`. */
export const RANGES = [
  [0, 1],
  [0, 2],
  [0, 10],
  [0, 20],
  [0, 100],
  [-10, 10],
] as const;
export const PARTS = [1, 2, 3, 4, 5, 6, 8, 10, 12];
/** More ticks than this cannot be told apart. */
const MOST_TICKS = 100;
const MOST_HOPS = 12;

export const START: Line = { from: 0, to: 10, parts: 1, at: 0, hops: [] };

/** The parts that still can be told apart on a stretch. */
export function partsFor(from: number, to: number): number[] {
  return PARTS.filter((parts) => parts * (to - from) <= Math.max(MOST_TICKS, to - from));
}

/** Another stretch: the point goes to its zero, or its left end. */
export function withRange(line: Line, from: number, to: number): Line {
  const parts = partsFor(from, to).includes(line.parts) ? line.parts : 1;
  return { from, to, parts, at: -Math.min(from, 0) * parts, hops: [] };
}

/** Other parts: the point stays on its whole number. */
export function withParts(line: Line, parts: number): Line {
  return { ...line, parts, at: Math.floor(line.at / line.parts) * parts, hops: [] };
}

/** The point put on a tick, with no hop. */
export function put(line: Line, tick: number): Line {
  const at = Math.max(0, Math.min(ticks(line), tick));
  return at === line.at ? line : { ...line, at, hops: [] };
}

/** A hop by so many ticks; none over the end of the line. */
export function hop(line: Line, by: number): Line {
  const to = line.at + by;
  if (to < 0 || to > ticks(line)) return line;
  const hops = [...line.hops, { from: line.at, to }].slice(-MOST_HOPS);
  return { ...line, at: to, hops };
}

/** Ticks after the first. */
export function ticks(line: Line): number {
  return (line.to - line.from) * line.parts;
}

/** The value of a tick. */
export function at(line: Line, tick: number): Rational {
  return tickAt(drawn(line), tick);
}

/** The length of a hop over so many ticks. */
export function size(line: Line, by: number): Rational {
  return tickAt({ ...drawn(line), from: { top: 0, bottom: 1 } }, by);
}

/** As the pictures of number lines take it. */
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
