import type { Block, ItemView } from '../../src/lib/backend/contract';

/** An exercise with its hints, steps and answer. */
export interface Shown extends ItemView {
  hints: Block[][];
  steps: Block[][];
}
