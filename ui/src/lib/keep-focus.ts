/**
 * Keeps the keys on the screen. Where a step takes away, hides or switches off what had
 * the focus, it goes to the heading of what is shown now, or to its first button.
 * Never to a field, which would call up a keyboard on a tablet.
 */
const HEADING = 'h1, h2, h3';
const STOP = 'button:not(:disabled), a[href], summary, select:not(:disabled)';

/** The element that had the focus last, and its ancestors from the inside out. */
let last: Element | null = null;
let around: Element[] = [];
/** Whether keys are in use, which need to see where they are. */
let keys = false;

function remember(event: FocusEvent): void {
  if (!(event.target instanceof Element)) return;
  last = event.target;
  around = [];
  for (let e = last.parentElement; e; e = e.parentElement) around.push(e);
}

const seen = (element: Element) =>
  element.isConnected && element.getClientRects().length > 0 && !element.closest('.unseen');

/** Whether the focus is nowhere, though nobody took it away. */
function lost(): boolean {
  if (!last || document.activeElement !== document.body) return false;
  return !seen(last) || last.matches(':disabled');
}

function restore(): void {
  if (!lost()) return;
  // In front of a dialog nothing else can take the keys.
  const front = document.querySelector('dialog[open]');
  for (const place of front ? [front] : around) {
    if (!seen(place) || place === document.body) continue;
    const found =
      [...place.querySelectorAll<HTMLElement>(HEADING)].find(seen) ??
      [...place.querySelectorAll<HTMLElement>(STOP)].find(seen);
    if (!found) continue;
    if (found.matches(HEADING)) found.tabIndex = -1;
    found.focus({ preventScroll: !keys });
    return;
  }
}

/** Begins to watch. A screen that loads gets the focus once its heading is there. */
export function keepFocus(app: Element): void {
  document.addEventListener('focusin', remember);
  document.addEventListener('keydown', () => (keys = true), true);
  document.addEventListener('pointerdown', () => (keys = false), true);
  new MutationObserver(() => {
    if (lost()) requestAnimationFrame(restore);
  }).observe(app, {
    childList: true,
    subtree: true,
    attributes: true,
    attributeFilter: ['disabled', 'open', 'hidden'],
  });
}
