// Runs in the page: times a tap from the browser's time stamp of the click to the end of the
// first frame that shows the change. Also times what the program answers afterwards.
export type Kind = 'stone' | 'outcome' | 'choice' | 'key' | 'bare' | 'sure' | 'check';

interface Tap {
  kind: Kind;
  ms: number;
  broughtMs?: number;
}

declare global {
  interface Window {
    taps: {
      found: Tap[];
      /** Times the next tap on an element. Returns the place to tap. */
      next: (kind: Kind, hook: string) => { x: number; y: number };
    };
  }
}

export function installTaps(): void {
  const found: Tap[] = [];
  let asked: { kind: Kind; holds: () => boolean; brings: (() => boolean) | undefined } | null =
    null;

  addEventListener(
    'click',
    (event) => {
      if (!asked) return;
      const { kind, holds, brings } = asked;
      asked = null;
      const began = event.timeStamp;
      let first: number | undefined;
      const frame = () =>
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          const brought = brings?.() ?? false;
          const there = brought || holds();
          // Runs after layout and drawing of the frame.
          port1.onmessage = () => {
            const ms = performance.now() - began;
            if (there) first ??= ms;
            if (first === undefined || (brings && !brought)) frame();
            else found.push({ kind, ms: first, ...(brought ? { broughtMs: ms } : {}) });
          };
          port2.postMessage(null);
        });
      frame();
    },
    true,
  );

  const at = (hook: string) => document.querySelector<HTMLElement>(`[data-testid="${hook}"]`);
  const checked = (hook: string) => () => at(hook)?.ariaChecked === 'true';
  const pressed = (hook: string) => () => at(hook)?.ariaPressed === 'true';
  const CHANGES: Record<Kind, (hook: string) => () => boolean> = {
    stone: checked,
    sure: checked,
    outcome: pressed,
    choice: (hook) => () => checked(hook)() || pressed(hook)(),
    check: (hook) => () => at(hook)?.ariaBusy === 'true',
    key: () => {
      const typed = () =>
        [...document.querySelectorAll<HTMLInputElement>('[data-testid^="answer-field-"]')]
          .map((one) => one.value)
          .join('|');
      const before = typed();
      return () => typed() !== before;
    },
    bare: (hook) => {
      const before = at(hook)?.ariaPressed;
      return () => at(hook)?.ariaPressed !== before;
    },
  };
  /** What the program answers afterwards. */
  const BRINGS: Partial<Record<Kind, () => boolean>> = {
    sure: () => at('answer-submit') !== null,
    check: () => at('practice-feedback') !== null,
  };

  window.taps = {
    found,
    next(kind, hook) {
      asked = { kind, holds: CHANGES[kind](hook), brings: BRINGS[kind] };
      const box = at(hook)?.getBoundingClientRect() ?? new DOMRect();
      return { x: box.left + box.width / 2, y: box.top + box.height / 2 };
    },
  };
}
