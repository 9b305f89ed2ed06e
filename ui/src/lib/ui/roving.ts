/** The place after a key in a row of `count`, or null for other keys. */
export function placeAfter(key: string, at: number, count: number): number | null {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowDown':
      return (at + 1) % count;
    case 'ArrowLeft':
    case 'ArrowUp':
      return (at + count - 1) % count;
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default: {
      const digit = /^[0-9]$/.test(key) ? Number(key) : -1;
      return digit >= 0 && digit < count ? digit : null;
    }
  }
}

/** The cell that a key leads to in a field counted row by row, or null. */
export function cellAfter(key: string, at: number, rows: number, columns: number): number | null {
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
