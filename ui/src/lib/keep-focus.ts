/**
 * Keeps the focus. When the focused element is removed, hidden or disabled, the focus goes
 * to the nearest heading, or else button. It never goes to a field, which would open the
 * keyboard of a tablet.
 */
const HEADING = 'h1, h2, h3';
const STOP = 'button:not(:disabled), a[href], summary, select:not(:disabled)';

/** The element that had the focus last, and its ancestors, innermost first. */
let last: Element | null = null;
let around: Element[] = [];
/** Whether the last input was a key, so that the focus must be visible. */
let keys = false;

function remember(event: FocusEvent): void {
  if (!(event.target instanceof Element)) return;
  last = event.target;
  around = [];
  for (let e = last.parentElement; e; e = e.parentElement) around.push(e);
}

const seen = (element: Element) =>
  element.isConnected && element.getClientRects().length > 0 && !element.closest('.unseen');

/** Whether the focus was lost because its element disappeared. */
function lost(): boolean {
  if (!last || document.activeElement !== document.body) return false;
  return !seen(last) || last.matches(':disabled');
}

function restore(): void {
  if (!lost()) return;
  // An open dialog takes all keys.
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

/** Starts to watch. A screen that loads gets the focus once its heading is there. */
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
