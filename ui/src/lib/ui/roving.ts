/** Where a key takes the choice in a row of `count`, or nothing for other keys. */
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
