// Works the screens by Tab, Shift+Tab, arrows, Enter, Space, Escape and typing alone.
// At each stop the focus must be seen: a ring of 2 px at least, 3 to 1 against what is
// around it, and not hidden under something else. After each act it must not be lost.

/** What holds the focus now, and what is wrong with how it is shown. */
function focusNow() {
  const { hookOf, painted, ratio } = window.measure;
  const at = document.activeElement;
  const hook = hookOf(at);
  const name = `${at?.tagName.toLowerCase()} ${hook} "${(at?.textContent ?? '').trim().slice(0, 30)}"`;
  if (!at || at === document.body) return { hook: '', wrong: 'the focus is lost' };
  const style = getComputedStyle(at);
  if (style.outlineStyle === 'none' || parseFloat(style.outlineWidth) < 2)
    return { hook, wrong: `no ring: ${name}` };
  const outside = parseFloat(style.outlineOffset) >= 0 && at.parentElement ? at.parentElement : at;
  const got = ratio(...painted(outside, style.outlineColor));
  if (got < 3) return { hook, wrong: `ring of ${got.toFixed(2)}: ${name}` };
  const box = at.getBoundingClientRect();
  const points = [0.1, 0.5, 0.9].flatMap((x) =>
    [0.1, 0.5, 0.9].map((y) => [box.left + box.width * x, box.top + box.height * y]),
  );
  const shown = points.some(([x, y]) => {
    const top = document.elementFromPoint(x, y);
    return top !== null && (at.contains(top) || top.contains(at));
  });
  return { hook, wrong: shown ? '' : `hidden: ${name}` };
}

export function byKeys(page, check, name) {
  const seen = new Set();
  let stops = 0;

  async function look(after) {
    const { hook, wrong } = await page.evaluate(focusNow);
    stops += 1;
    if (wrong && !seen.has(`${after} ${wrong}`)) {
      seen.add(`${after} ${wrong}`);
      check.that(`${name}: ${after}`, false, wrong);
    }
    return hook;
  }
  const key = (one) => page.keyboard.press(one);

  /** Goes on by Tab (or back) until a hook that begins so. */
  async function to(start, { back = false, most = 160 } = {}) {
    for (let n = 0; n < most; n += 1) {
      const now = await page.evaluate(() => window.measure.hookOf(document.activeElement));
      if (n > 0 && now.startsWith(start)) return;
      await key(back ? 'Shift+Tab' : 'Tab');
      // From the last stop Tab leads out of the page and in again.
      const out = await page.evaluate(() => document.activeElement === document.body);
      if (!out && (await look(`on the way to ${start}`)).startsWith(start)) return;
    }
    throw new Error(`${name}: no way to ${start} by Tab`);
  }
  /** Presses a key there; what `then` waits for must come, and the focus must be kept. */
  async function act(start, then, { by = 'Enter', back = false } = {}) {
    await to(start, { back });
    await key(by);
    await done(start, then);
  }
  async function done(what, then) {
    if (typeof then === 'string') await page.getByTestId(then).first().waitFor();
    else await then?.();
    await page.evaluate(
      () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 60))),
    );
    await look(`after ${what}`);
  }
  /** A dialog is left by Escape, and gives the focus back. */
  async function leave() {
    await key('Escape');
    await page.waitForFunction(() => !document.querySelector('dialog[open]'));
    await done('Escape', undefined);
  }
  return {
    act,
    done,
    key,
    leave,
    look,
    stops: () => stops,
    to,
    type: (words) => page.keyboard.type(words),
  };
}
