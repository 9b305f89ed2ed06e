/**
 * Opens a dialog over the whole window. The page goes full screen, because a dialog cannot; if that
 * is refused, the dialog fills the window. Returns what ends the full screen.
 */
export function fillWindow(dialog: HTMLDialogElement | undefined): () => void {
  dialog?.showModal();
  if (document.fullscreenEnabled) {
    void document.documentElement.requestFullscreen().catch(() => undefined);
  }
  return () => {
    if (document.fullscreenElement) void document.exitFullscreen().catch(() => undefined);
  };
}

/** The least scale at which the last row can read. */
const LEAST_SCALE = 0.6;

/** Makes parts of a wall smaller until all of them fit. */
export function fitWall(wall: HTMLElement, parts: Iterable<HTMLElement>): void {
  for (let scale = 1; scale >= LEAST_SCALE; scale -= 0.04) {
    for (const part of parts) part.style.setProperty('zoom', String(scale));
    if (wall.scrollHeight <= wall.clientHeight) return;
  }
}
