// Runs in the page. How long a tap takes until what it changes is drawn: from the
// time the browser took the touch in (the stamp of its click) to the end of the first
// frame in which the change is there. Beside it, Event Timing's own figure, which goes
// on to the presentation and comes in steps of 8 ms.
window.taps = (() => {
  const found = [];
  const presented = new Map();
  let asked = null;

  addEventListener(
    'click',
    (event) => {
      if (!asked) return;
      const { kind, holds } = asked;
      asked = null;
      const began = event.timeStamp;
      const frame = () =>
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          const there = holds();
          // Comes once the frame's layout and drawing are done.
          port1.onmessage = () => {
            if (there) found.push({ kind, began, ms: performance.now() - began });
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
    sure: () => () => at('answer-submit') !== null,
    check: () => () => at('practice-feedback') !== null,
  };

  return {
    found,
    /** Takes the time of the next tap. */
    next(kind, hook) {
      asked = { kind, holds: CHANGES[kind](hook) };
      const box = at(hook).getBoundingClientRect();
      return { x: box.left + box.width / 2, y: box.top + box.height / 2 };
    },
    all: () =>
      found.map((one) => ({ ...one, presented: presented.get(Math.round(one.began)) ?? 16 })),
  };
})();
