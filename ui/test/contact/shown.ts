import type { Block, ItemView } from '../../src/lib/backend/contract';

/** An exercise with what is shown later. */
export interface Shown extends ItemView {
  hints: Block[][];
  steps: Block[][];
}
