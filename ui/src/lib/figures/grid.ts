import type { GridFrame } from '../backend/contract';
import { scale, ticks } from './geometry';

const MOST = 340;
const LEFT = 52;
const TOP = 22;

/** Maps coordinates of a grid to pixels. */
export interface Grid {
  x: (v: number) => number;
  y: (v: number) => number;
  xs: number[];
  ys: number[];
  width: number;
  height: number;
  left: number;
  right: number;
  top: number;
  foot: number;
}

export function grid(frame: GridFrame): Grid {
  const across = (frame.x_to - frame.x_from) / frame.x_step;
  const up = (frame.y_to - frame.y_from) / frame.y_step;
  const unit = MOST / Math.max(across, up);
  const right = LEFT + across * unit;
  const foot = TOP + up * unit;
  return {
    x: scale(frame.x_from, frame.x_to, LEFT, right),
    y: scale(frame.y_from, frame.y_to, foot, TOP),
    xs: ticks(frame.x_from, frame.x_to, frame.x_step),
    ys: ticks(frame.y_from, frame.y_to, frame.y_step),
    width: right + 40,
    height: foot + (frame.x_title ? 70 : 44),
    left: LEFT,
    right,
    top: TOP,
    foot,
  };
}
