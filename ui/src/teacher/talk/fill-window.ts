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
