import type { Point, Rational } from '../backend/contract';

export function value(of: Rational): number {
  return of.top / of.bottom;
}

/** Maps a value of `from..to` to pixels. */
export function scale(from: number, to: number, low: number, high: number): (v: number) => number {
  const span = to - from || 1;
  return (v) => low + ((v - from) / span) * (high - low);
}

export function ticks(from: number, to: number, step: number): number[] {
  const count = Math.round((to - from) / step);
  return Array.from({ length: count + 1 }, (_, at) => from + at * step);
}

/** A place in pixels of the figure. */
export interface Place {
  x: number;
  y: number;
}

/** The mapping of points into a figure, and its size. */
export interface Plane {
  at: (point: Point) => Place;
  unit: number;
  width: number;
  height: number;
}

/** Fits points into a figure at most `most` pixels long, with a margin for labels. */
export function plane(points: Point[], most: number, margin: number): Plane {
  const xs = points.map((p) => value(p.x));
  const ys = points.map((p) => value(p.y));
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const unit = most / Math.max(right - left, high - low, 1e-9);
  return {
    at: (p) => ({
      x: margin + (value(p.x) - left) * unit,
      y: margin + (high - value(p.y)) * unit,
    }),
    unit,
    width: 2 * margin + (right - left) * unit,
    height: 2 * margin + (high - low) * unit,
  };
}

/** The `points` attribute of a polygon. */
export function outline(points: Place[]): string {
  return points.map(({ x, y }) => `${x.toFixed(2)},${y.toFixed(2)}`).join(' ');
}

/** A place around a centre; the angle is in degrees, anticlockwise from the right. */
export function around(
  cx: number,
  cy: number,
  r: number,
  degrees: number,
): { x: number; y: number } {
  const turn = (degrees * Math.PI) / 180;
  return { x: cx + r * Math.cos(turn), y: cy - r * Math.sin(turn) };
}

/** Limits an angle to what a protractor shows: 0 to 180 degrees. */
export function degreesWithin(degrees: number): number {
  return Math.max(0, Math.min(180, degrees));
}

/** The path of an arc, anticlockwise from one angle to another. */
export function arc(cx: number, cy: number, r: number, from: number, to: number): string {
  const a = around(cx, cy, r, from);
  const b = around(cx, cy, r, to);
  const large = to - from > 180 ? 1 : 0;
  return `M${a.x} ${a.y}A${r} ${r} 0 ${large} 0 ${b.x} ${b.y}`;
}

/** The path of a sector of a circle in `parts`, counted clockwise from the top. */
export function sector(cx: number, cy: number, r: number, at: number, parts: number): string {
  if (parts === 1)
    return `M${cx - r} ${cy}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
  const a = around(cx, cy, r, 90 - (at * 360) / parts);
  const b = around(cx, cy, r, 90 - ((at + 1) * 360) / parts);
  return `M${cx} ${cy}L${a.x} ${a.y}A${r} ${r} 0 0 1 ${b.x} ${b.y}z`;
}

/** The middle of two places, moved off their line, away from `from`. */
export function beside(a: Place, b: Place, away: Place, by: number): Place {
  const mid = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  let [nx, ny] = [-(b.y - a.y) / length, (b.x - a.x) / length];
  if (nx * (mid.x - away.x) + ny * (mid.y - away.y) < 0) [nx, ny] = [-nx, -ny];
  return { x: mid.x + nx * by, y: mid.y + ny * by };
}

export function centre(points: Place[]): Place {
  const n = points.length || 1;
  return {
    x: points.reduce((sum, p) => sum + p.x, 0) / n,
    y: points.reduce((sum, p) => sum + p.y, 0) / n,
  };
}

/** Circles as one path: many elements take long to draw. */
export function circles(middles: Place[], r: number): string {
  return middles
    .map((p) => `M${p.x - r} ${p.y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`)
    .join('');
}
