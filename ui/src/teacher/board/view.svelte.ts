import { COLUMNS, WHOLE_BOARD, type BoardView, type Column, type SortKey } from './board';

/** The chosen filters and order. They are kept while other screens are shown. */
class ChosenView {
  now = $state.raw<BoardView>(WHOLE_BOARD);

  change(change: Partial<BoardView>): void {
    this.now = { ...this.now, ...change };
  }

  /** Orders by a column. The same column again reverses the order. */
  sortBy(sort: SortKey): void {
    this.change({ sort, reversed: this.now.sort === sort && !this.now.reversed });
  }

  show(column: Column, on: boolean): void {
    const { columns } = this.now;
    this.change({
      columns: COLUMNS.filter((one) => (one === column ? on : columns.includes(one))),
    });
  }

  /** Shows every concept again; the columns stay. */
  reset(): void {
    this.now = { ...WHOLE_BOARD, columns: this.now.columns };
  }
}

export const boardView = new ChosenView();
