/** How long is waited for a frame that may not come. */
const NO_FRAME_MS = 60;

/**
 * Comes once what was just changed is drawn. What a tap sets going waits for it, so that
 * the tap is answered first; it is a frame at most. When the page goes out of sight,
 * nothing is waited for.
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
    // Its turn comes behind the drawing of this frame.
    requestAnimationFrame(() => setTimeout(done));
  });
}
