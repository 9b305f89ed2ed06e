/** How long is waited for a frame that may not come, since nobody looks at the page. */
const NO_FRAME_MS = 60;

/**
 * Comes once what was just changed is drawn. What a tap sets going waits for it, so that
 * the tap is answered first; it is a frame at most.
 */
export function drawn(): Promise<void> {
  return new Promise((resolve) => {
    const without = setTimeout(resolve, NO_FRAME_MS);
    requestAnimationFrame(() => {
      clearTimeout(without);
      // Its turn comes behind the drawing of this frame.
      setTimeout(resolve);
    });
  });
}
