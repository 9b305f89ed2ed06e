/** The longest wait for a frame: a hidden page draws none. */
const NO_FRAME_MS = 60;

/**
 * Resolves once the last change is drawn. A call after a tap waits for it, so that the tap
 * shows first. It takes a frame at most, and no time when the page is hidden.
 */
export function drawn(): Promise<void> {
  return new Promise((resolve) => {
    const done = () => {
      clearTimeout(without);
      document.removeEventListener('visibilitychange', done);
      resolve();
    };
    const without = setTimeout(done, NO_FRAME_MS);
    document.addEventListener('visibilitychange', done);
    // A task runs after this frame is drawn.
    requestAnimationFrame(() => setTimeout(done));
  });
}
