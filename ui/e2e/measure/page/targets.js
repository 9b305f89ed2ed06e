// Runs in the page. Targets that are too small for a finger (WCAG 2.2, 2.5.8).
// Exempt: what stands within a sentence; cells marked as of a chart, which need 24 px;
// with `spaced`, what has room around it instead. Told: each exemption that was used.
window.measure.targets = (least, spaced) => {
  const { worked, named } = window.measure;

  /** A tick box is worked by its label as well. */
  function room(element) {
    const box = element.getBoundingClientRect();
    const label = element.matches('input[type=checkbox], input[type=radio]') && element.labels?.[0];
    if (!label) return box;
    const around = label.getBoundingClientRect();
    return around.width * around.height > box.width * box.height ? around : box;
  }

  const inSentence = (element) =>
    getComputedStyle(element).display === 'inline' &&
    [...element.parentElement.childNodes].some((n) => n.nodeType === 3 && n.data.trim());
  /** Scrolling by keys needs a stop, which is no target. */
  const scrolls = (element) =>
    element.tabIndex === 0 &&
    !element.matches('a, button, input, select, textarea, summary, [role]');

  const all = worked()
    .filter((e) => !scrolls(e) && !e.matches('[role=region], [role=group]'))
    .map((element) => ({ element, box: room(element) }));
  const small = (box, side) => box.width < side - 0.5 || box.height < side - 0.5;

  /** A circle of 24 px on its middle meets no other target and no other such circle. */
  function hasRoom({ element, box }) {
    const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
    return all.every(({ element: other, box: its }) => {
      if (other === element || other.contains(element) || element.contains(other)) return true;
      const dx = Math.max(its.left - x, 0, x - its.right);
      const dy = Math.max(its.top - y, 0, y - its.bottom);
      if (Math.hypot(dx, dy) < 12) return false;
      if (!small(its, 24)) return true;
      const apart = Math.hypot(its.left + its.width / 2 - x, its.top + its.height / 2 - y);
      return apart >= 24;
    });
  }

  const found = [];
  const spared = { sentence: 0, spacing: 0, chart: 0 };
  for (const one of all) {
    const { element, box } = one;
    const chart = element.closest('[data-small-targets]') !== null;
    const side = chart ? 24 : least;
    if (!small(box, side)) {
      if (chart && small(box, least)) spared.chart += 1;
      continue;
    }
    if (inSentence(element)) spared.sentence += 1;
    else if (spaced && hasRoom(one)) spared.spacing += 1;
    else found.push(`${Math.round(box.width)}×${Math.round(box.height)} px: ${named(element)}`);
  }
  return { looked: all.length, found, spared };
};
