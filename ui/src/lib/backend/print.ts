/** Opens the system's print dialog. */
export function printPage(): void {
  window.print();
}
