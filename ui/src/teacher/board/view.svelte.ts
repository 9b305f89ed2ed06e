import { WHOLE_BOARD, type BoardView, type SortKey } from './board';

/** The filters and the order chosen; they stay while the teacher goes to and fro. */
class ChosenView {
  now = $state.raw<BoardView>(WHOLE_BOARD);

  change(change: Partial<BoardView>): void {
    this.now = { ...this.now, ...change };
  }

  /** Orders by a column; the same column again turns the order round. */
  sortBy(sort: SortKey): void {
    this.change({ sort, reversed: this.now.sort === sort && !this.now.reversed });
  }

  reset(): void {
    this.now = WHOLE_BOARD;
  }
}

export const boardView = new ChosenView();
