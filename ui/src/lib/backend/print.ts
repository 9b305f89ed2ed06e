/** Opens the system's print dialog on what the screen's print rules leave. */
export function printPage(): void {
  window.print();
}
