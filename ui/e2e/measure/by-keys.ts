// Uses the screens by keys alone. At each stop the focus must be visible: a ring of at least
// 2 px with a contrast of 3 to 1, not hidden by anything. No act may lose the focus.
import { expect, type Locator, type Page } from '@playwright/test';
import { finders, leaveDialog } from '../finders';
import { measurable } from './look';

/** What has the focus, and what is wrong with how it is shown. */
function focusNow(): { hook: string; out: boolean; wrong: string } {
  const { hookOf, painted, ratio } = window.measure;
  const at = document.activeElement;
  if (!at || at === document.body) return { hook: '', out: true, wrong: 'the focus is lost' };
  const hook = hookOf(at);
  const name = `${at.tagName.toLowerCase()} ${hook} "${at.textContent.trim().slice(0, 30)}"`;
  const told = (wrong: string) => ({ hook, out: false, wrong: wrong && `${wrong}: ${name}` });
  const style = getComputedStyle(at);
  if (style.outlineStyle === 'none' || parseFloat(style.outlineWidth) < 2) return told('no ring');
  const around = parseFloat(style.outlineOffset) >= 0 && at.parentElement ? at.parentElement : at;
  const got = ratio(...painted(around, style.outlineColor));
  if (got < 3) return told(`ring of ${got.toFixed(2)}`);
  const box = at.getBoundingClientRect();
  const parts = [0.1, 0.5, 0.9];
  const shown = parts.some((x) =>
    parts.some((y) => {
      const top = document.elementFromPoint(box.left + box.width * x, box.top + box.height * y);
      return top !== null && (at.contains(top) || top.contains(at));
    }),
  );
  return told(shown ? '' : 'hidden');
}

/** What an act must show: an element, or its test id. */
type Brings = string | Locator | undefined;

export interface ByKeys {
  /** Presses Tab, or Shift+Tab, until a test id starts so. */
  to: (start: string, way?: { back?: boolean }) => Promise<void>;
  /** Goes there and presses a key. The expected element must come, and the focus must be kept. */
  act: (start: string, brings?: Brings, how?: { by?: string; back?: boolean }) => Promise<void>;
  key: (name: string) => Promise<void>;
  type: (words: string) => Promise<void>;
  done: (what: string, brings?: Brings) => Promise<void>;
  /** Leaves a dialog by Escape, which gives the focus back. */
  leave: () => Promise<void>;
}

const MOST_STOPS = 160;

export function byKeys(page: Page): ByKeys {
  const { hook } = finders(page);
  const told = new Set<string>();
  const key = (name: string) => page.keyboard.press(name);

  async function to(start: string, { back = false } = {}): Promise<void> {
    await measurable(page);
    for (let n = 0; n < MOST_STOPS; n += 1) {
      await key(back ? 'Shift+Tab' : 'Tab');
      const now = await page.evaluate(focusNow);
      // After the last stop, Tab leaves the page and comes in again.
      if (now.out) continue;
      if (now.wrong && !told.has(now.wrong)) {
        told.add(now.wrong);
        expect.soft(now.wrong, `on the way to ${start}`).toBe('');
      }
      if (now.hook.startsWith(start)) return;
    }
    throw new Error(`no way to ${start} by Tab`);
  }
  async function done(what: string, brings?: Brings): Promise<void> {
    const brought = typeof brings === 'string' ? hook(brings) : brings;
    if (brought) await expect(brought.first()).toBeVisible();
    await measurable(page);
    await expect
      .poll(async () => (await page.evaluate(focusNow)).wrong, `the focus after ${what}`)
      .toBe('');
  }
  return {
    to,
    done,
    key,
    async act(start, brings, { by = 'Enter', back = false } = {}) {
      await to(start, { back });
      await key(by);
      await done(start, brings);
    },
    type: (words) => page.keyboard.type(words),
    async leave() {
      await leaveDialog(page);
      await done('Escape');
    },
  };
}
