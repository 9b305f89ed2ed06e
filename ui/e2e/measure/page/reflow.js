// Runs in the page. Whether anything is cut off, stands out of the window, or lies
// upon other text, at the size the window has now.
window.measure.reflow = () => {
  const { front, seen, texts, named } = window.measure;
  const found = [];
  const { scrollWidth, clientWidth } = document.documentElement;

  const ways = (element) => {
    const { overflowX, overflowY } = getComputedStyle(element);
    return [overflowX, overflowY];
  };
  /** Tables, sums and figures may scroll within themselves (WCAG 2.2, 1.4.10). */
  const scrolledWithin = (element) => {
    let free = false;
    for (let e = element; e && e !== document.body; e = e.parentElement) {
      const { position } = getComputedStyle(e);
      // Something placed freely is held by what is placed itself.
      if (position !== 'static') free = false;
      if (['auto', 'scroll'].includes(ways(e)[0]) && !free) return true;
      if (position === 'absolute') free = true;
    }
    return false;
  };
  const fixed = (element) => {
    for (let e = element; e; e = e.parentElement) {
      if (['fixed', 'sticky'].includes(getComputedStyle(e).position)) return e;
    }
    return null;
  };

  if (scrollWidth > clientWidth) {
    // What is only read out can widen the page as well.
    const wide = [...document.body.querySelectorAll('*')]
      .filter((e) => e.getBoundingClientRect().right > clientWidth + 1 && !scrolledWithin(e))
      .filter((e, _, all) => !all.some((other) => other !== e && e.contains(other)));
    found.push(
      `the page is ${scrollWidth - clientWidth} px too wide: ${wide.slice(0, 2).map(named).join(', ')}`,
    );
  }

  const holders = new Map();
  /** The part of the window in which something is seen, by what scrolls or cuts around it. */
  const seenWithin = (element) => {
    if (!element || element === document.documentElement) return [-1e6, 1e6, -1e6, 1e6];
    let found = holders.get(element);
    if (!found) {
      found = seenWithin(element.parentElement);
      if (element !== document.body && ways(element).some((way) => way !== 'visible')) {
        const { left, right, top, bottom } = element.getBoundingClientRect();
        found = [
          Math.max(found[0], left),
          Math.min(found[1], right),
          Math.max(found[2], top),
          Math.min(found[3], bottom),
        ];
      }
      holders.set(element, found);
    }
    return found;
  };

  // Where drawing is contained, what stands out widens no page.
  for (const part of front().querySelectorAll('button, input, select, textarea, svg, math, img')) {
    if (!seen(part) || part.parentElement.closest('svg, math') || scrolledWithin(part)) continue;
    const { right, width } = part.getBoundingClientRect();
    if (width > 1 && right > innerWidth + 1 && seenWithin(part.parentElement)[1] > innerWidth + 1)
      found.push(`beyond the edge: ${named(part)}`);
  }

  for (const element of front().querySelectorAll('*')) {
    if (!seen(element) || element.closest('svg, math')) continue;
    const [x, y] = ways(element);
    if (!['hidden', 'clip'].includes(x) && !['hidden', 'clip'].includes(y)) continue;
    if (!element.textContent.trim() || element.matches('progress')) continue;
    const cutX = ['hidden', 'clip'].includes(x) && element.scrollWidth > element.clientWidth + 1;
    const cutY = ['hidden', 'clip'].includes(y) && element.scrollHeight > element.clientHeight + 1;
    if (cutX || cutY) found.push(`cut off: ${named(element)}`);
  }

  const boxes = [];
  const range = document.createRange();
  for (const node of texts()) {
    const parent = node.parentElement;
    if (parent.closest('svg, math')) continue;
    range.selectNodeContents(node);
    const over = fixed(parent);
    const within = scrolledWithin(parent);
    for (const box of range.getClientRects()) {
      if (box.width < 1) continue;
      if (box.right > innerWidth + 1 && !within) found.push(`beyond the edge: ${named(parent)}`);
      // The middle of the line: ascenders of close lines may meet, letters may not.
      const [left, right, high, low] = seenWithin(parent);
      const one = {
        left: Math.max(left, box.left),
        right: Math.min(right, box.right),
        top: Math.max(high, box.top + box.height * 0.25),
        bottom: Math.min(low, box.bottom - box.height * 0.25),
      };
      if (one.left < one.right && one.top < one.bottom) boxes.push({ ...one, node, parent, over });
    }
  }
  boxes.sort((a, b) => a.top - b.top);
  for (const [at, one] of boxes.entries()) {
    for (let next = at + 1; next < boxes.length && boxes[next].top < one.bottom; next += 1) {
      const other = boxes[next];
      if (other.node === one.node || other.over !== one.over) continue;
      const [wide, high] = [
        Math.min(one.right, other.right) - Math.max(one.left, other.left),
        Math.min(one.bottom, other.bottom) - other.top,
      ];
      if (wide > 2 && high > 2) {
        found.push(`"${one.node.data.trim().slice(0, 30)}" upon ${named(other.parent)}`);
      }
    }
  }
  return [...new Set(found)];
};

/** The spacing a reader may ask for (WCAG 2.2, 1.4.12); mathematics keeps its own. */
window.measure.spacing = (on) => {
  const sheet = (window.measure.sheet ??= new CSSStyleSheet());
  sheet.replaceSync(
    ':not(math, math *, svg, svg *) { line-height: 1.5 !important; letter-spacing: 0.12em !important; ' +
      'word-spacing: 0.16em !important } p { margin-bottom: 2em !important }',
  );
  const others = document.adoptedStyleSheets.filter((one) => one !== sheet);
  document.adoptedStyleSheets = on ? [...others, sheet] : others;
};
