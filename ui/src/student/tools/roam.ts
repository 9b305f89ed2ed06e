/** Where an arrow key leads in a field of `rows` by `columns` counted row by row, if anywhere. */
export function roam(key: string, at: number, rows: number, columns: number): number | null {
  const [row, column] = [Math.floor(at / columns), at % columns];
  switch (key) {
    case 'ArrowRight':
      return column + 1 < columns ? at + 1 : null;
    case 'ArrowLeft':
      return column > 0 ? at - 1 : null;
    case 'ArrowDown':
      return row + 1 < rows ? at + columns : null;
    case 'ArrowUp':
      return row > 0 ? at - columns : null;
    case 'Home':
      return row * columns;
    case 'End':
      return row * columns + columns - 1;
    default:
      return null;
  }
}
