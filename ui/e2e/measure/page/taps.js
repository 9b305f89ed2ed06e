// Runs in the page. How long a tap takes until it is answered, that is until what it
// changes is drawn: from the time the browser took the touch in (the stamp of its
// click) to the end of the first frame in which the change is there. Some taps are
// answered at once and then bring something from the program, which is timed as well.
// Beside it, Event Timing's own figure, which goes on to the presentation and comes in
// steps of 8 ms.
window.taps = (() => {
  const found = [];
  const presented = new Map();
  let asked = null;

  addEventListener(
    'click',
    (event) => {
      if (!asked) return;
      const { kind, holds, brings } = asked;
      asked = null;
      const began = event.timeStamp;
      const one = { kind, began };
      const frame = () =>
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          const brought = brings?.() ?? false;
          const there = brought || holds();
          // Comes once the frame's layout and drawing are done.
          port1.onmessage = () => {
            const ms = performance.now() - began;
            if (there) one.ms ??= ms;
            if (brought) one.broughtMs = ms;
            if (there && (brought || !brings)) found.push(one);
            else frame();
          };
          port2.postMessage(null);
        });
      frame();
    },
    true,
  );
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      if (entry.name === 'click') presented.set(Math.round(entry.startTime), entry.duration);
    }
  }).observe({ type: 'event', durationThreshold: 16 });

  const at = (hook) => document.querySelector(`[data-testid="${hook}"]`);
  /** What a tap changes, by its kind; told before the tap. */
  const CHANGES = {
    stone: (hook) => () => at(hook)?.ariaChecked === 'true',
    outcome: (hook) => () => at(hook)?.ariaPressed === 'true',
    choice: (hook) => () => at(hook)?.ariaChecked === 'true' || at(hook)?.ariaPressed === 'true',
    key: () => {
      const typed = () =>
        [...document.querySelectorAll('[data-testid^="answer-field-"]')]
          .map((one) => one.value)
          .join('|');
      const before = typed();
      return () => typed() !== before;
    },
    bare: (hook) => {
      const before = at(hook).ariaPressed;
      return () => at(hook).ariaPressed !== before;
    },
    sure: (hook) => () => at(hook)?.ariaChecked === 'true',
    check: (hook) => () => at(hook)?.ariaBusy === 'true',
  };
  /** What comes from the program after it. */
  const BRINGS = {
    sure: () => at('answer-submit') !== null,
    check: () => at('practice-feedback') !== null,
  };

  return {
    found,
    /** Takes the time of the next tap. */
    next(kind, hook) {
      asked = { kind, holds: CHANGES[kind](hook), brings: BRINGS[kind] };
      const box = at(hook).getBoundingClientRect();
      return { x: box.left + box.width / 2, y: box.top + box.height / 2 };
    },
    all: () =>
      found.map((one) => ({ ...one, presented: presented.get(Math.round(one.began)) ?? 16 })),
  };
})();
