// Runs in the page: checks whether everything can be read, tapped and reached. One function,
// because its source is sent into the page.

export interface Asked {
  /** The least side of a target in px; with `spaced`, free room around a smaller one counts. */
  target: number;
  spaced: boolean;
  /** Least size of text in px. */
  size: number;
  /** Least contrast of text, of large text, and of frames and marks (WCAG 2.2). */
  text: number;
  large: number;
  mark: number;
}

interface Measured {
  /** How many elements were checked. */
  looked: number;
  found: string[];
}

export interface Measures {
  /** The test id of an element, or the name of a cell or a line. */
  hookOf: (element: Element | null) => string;
  ratio: (one: number[], other: number[]) => number;
  painted: (element: Element, colour: string) => [number[], number[]];
  targets: (asked: Asked) => Measured;
  contrast: (asked: Asked) => Measured;
  smallText: (least: number) => string[];
  reflow: () => string[];
  spacing: (on: boolean) => void;
}

declare global {
  interface Window {
    measure: Measures;
  }
}

export function installMeasures(): void {
  const WORKED =
    'a[href], button, input, select, textarea, summary, [role=button], [role=radio], [role=slider], ' +
    '[role=checkbox], [role=switch], [role=tab], [role=link], [tabindex]:not([tabindex="-1"])';

  /** The open dialog, or else the page. */
  const front = () => [...document.querySelectorAll('dialog[open]')].at(-1) ?? document.body;

  function seen(element: Element): boolean {
    if (!element.checkVisibility({ visibilityProperty: true, opacityProperty: true })) return false;
    if (element.closest('.unseen')) return false;
    const { width, height } = element.getBoundingClientRect();
    return width > 0 && height > 0;
  }

  /** All elements that can be tapped or reached by keys. */
  function worked(): HTMLElement[] {
    return [...front().querySelectorAll<HTMLElement>(WORKED)].filter(
      (e) => seen(e) && !e.closest('[inert]'),
    );
  }

  /** All visible texts with their elements. */
  function texts(): { node: Text; parent: Element }[] {
    const found = [];
    const walker = document.createTreeWalker(front(), NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const node = walker.currentNode as Text;
      const parent = node.parentElement;
      if (node.data.trim() && parent && seen(parent) && !parent.closest('script, style, select')) {
        found.push({ node, parent });
      }
    }
    return found;
  }

  // --- painted colours
  const canvas = new OffscreenCanvas(1, 1).getContext('2d', { willReadFrequently: true });
  const known = new Map<string, [number, number, number, number]>();
  /** A computed colour as red, green, blue from 0 to 255 and opacity from 0 to 1. */
  function colour(words: string): [number, number, number, number] {
    let found = known.get(words);
    if (!found) {
      if (!canvas) throw new Error('no canvas');
      canvas.clearRect(0, 0, 1, 1);
      canvas.fillStyle = words;
      canvas.fillRect(0, 0, 1, 1);
      const [r = 0, g = 0, b = 0, a = 0] = canvas.getImageData(0, 0, 1, 1).data;
      found = [r, g, b, a / 255];
      known.set(words, found);
    }
    return found;
  }

  const mix = (under: number[], over: number[], part: number) =>
    under.map((value, at) => value + ((over[at] ?? 0) - value) * part);
  const cover = (under: number[], words: string) => {
    const [r, g, b, a] = colour(words);
    return mix(under, [r, g, b], a);
  };

  function luminance(rgb: number[]): number {
    const [r = 0, g = 0, b = 0] = rgb.map((value) => {
      const part = value / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  }

  /** The contrast ratio of WCAG 2.2, from 1 to 21. */
  function ratio(one: number[], other: number[]): number {
    const [a, b] = [luminance(one), luminance(other)];
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** The ground inside an element; what is painted there shows as `share` of it plus `rest`. */
  interface Ground {
    inside: number[];
    share: number;
    rest: number[];
  }
  const grounds = new Map<Element, Ground>();
  function groundOf(element: Element): Ground {
    let found = grounds.get(element);
    if (found) return found;
    const style = getComputedStyle(element);
    const parent = element.parentElement;
    // A dialog is drawn above everything else.
    const around =
      parent && !element.matches('dialog[open]')
        ? groundOf(parent)
        : {
            inside: cover(
              [255, 255, 255],
              getComputedStyle(document.documentElement).backgroundColor,
            ),
            share: 1,
            rest: [0, 0, 0],
          };
    const opacity = Number(style.opacity);
    found = {
      inside: cover(around.inside, style.backgroundColor),
      share: around.share * opacity,
      rest: around.rest.map(
        (value, at) => value + around.share * (1 - opacity) * (around.inside[at] ?? 0),
      ),
    };
    grounds.set(element, found);
    return found;
  }

  /** The background painted behind an element, and a colour on it, with all opacities. */
  function painted(element: Element, words: string): [number[], number[]] {
    const { inside, share, rest } = groundOf(element);
    const shown = (paint: number[]) => paint.map((value, at) => share * value + (rest[at] ?? 0));
    return [shown(inside), shown(cover(inside, words))];
  }

  /** Text by which an element can be found. */
  function named(element: Element): string {
    const id = element.closest<HTMLElement>('[data-testid]')?.dataset.testid;
    const words = element.textContent || (element.getAttribute('aria-label') ?? '');
    return `${element.tagName.toLowerCase()}${id ? ` in ${id}` : ''} "${words.trim().slice(0, 40)}"`;
  }

  function hookOf(element: Element | null): string {
    if (!(element instanceof HTMLElement || element instanceof SVGElement)) return '';
    const { testid, cell, line } = element.dataset;
    if (testid !== undefined) return testid;
    if (cell !== undefined) return `cell-${cell}`;
    return line === undefined ? '' : `line-${line}`;
  }

  /**
   * Targets that are too small for a finger (WCAG 2.2, 2.5.8). Exempt: links in a sentence,
   * and cells of a chart, which need 24 px.
   */
  function targets({ target, spaced }: Asked): Measured {
    /** The label of a checkbox is part of its target. */
    function room(element: HTMLElement): DOMRect {
      const box = element.getBoundingClientRect();
      const label =
        element instanceof HTMLInputElement && ['checkbox', 'radio'].includes(element.type)
          ? element.labels?.[0]
          : undefined;
      if (!label) return box;
      const around = label.getBoundingClientRect();
      return around.width * around.height > box.width * box.height ? around : box;
    }
    const inSentence = (element: Element) =>
      getComputedStyle(element).display === 'inline' &&
      [...(element.parentElement?.childNodes ?? [])].some(
        (n) => n instanceof Text && n.data.trim() !== '',
      );
    /** A box that takes the focus only to scroll is not a target. */
    const scrolls = (element: HTMLElement) =>
      element.tabIndex === 0 &&
      !element.matches('a, button, input, select, textarea, summary, [role]');

    const all = worked()
      .filter((e) => !scrolls(e) && !e.matches('[role=region], [role=group]'))
      .map((element) => ({ element, box: room(element) }));
    const small = (box: DOMRect, side: number) => box.width < side - 0.5 || box.height < side - 0.5;

    /** Whether a circle of 24 px around its centre meets no other target or such circle. */
    const hasRoom = (element: Element, box: DOMRect) => {
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
    };
    const found = all
      .filter(({ element, box }) => {
        const least = element.closest('[data-small-targets]') ? 24 : target;
        return small(box, least) && !inSentence(element) && !(spaced && hasRoom(element, box));
      })
      .map(
        ({ element, box }) =>
          `target of ${Math.round(box.width)}×${Math.round(box.height)} px: ${named(element)}`,
      );
    return { looked: all.length, found };
  }

  /** Text that is too small, except in mathematics and figures. */
  function smallText(least: number): string[] {
    return texts()
      .filter(({ parent }) => !parent.closest('svg, math'))
      .map(({ parent }) => ({ parent, size: parseFloat(getComputedStyle(parent).fontSize) }))
      .filter(({ size }) => size < least - 0.1)
      .map(({ parent, size }) => `text of ${size} px: ${named(parent)}`);
  }

  /**
   * The contrast of text, and of the frames and marks of controls. Exempt: disabled
   * elements, and labels in figures.
   */
  function contrast({ text, large, mark }: Asked): Measured {
    const off = (element: Element) => element.closest(':disabled, [aria-disabled=true]') !== null;
    const found = new Set<string>();
    let looked = 0;
    // The theme may be another one.
    grounds.clear();

    function judge(element: Element, words: string, least: number, what: string): void {
      looked += 1;
      const [ground, upon] = painted(element, words);
      const got = ratio(ground, upon);
      if (got < least - 0.005) {
        const rgb = [upon, ground].map((one) => one.map(Math.round).join(',')).join(' on ');
        found.add(`${what} ${got.toFixed(2)} (${rgb}): ${named(element)}`);
      }
    }
    function leastFor(element: Element): number {
      const { fontSize, fontWeight } = getComputedStyle(element);
      const [size, weight] = [parseFloat(fontSize), Number(fontWeight)];
      return size >= 24 || (size >= 18.66 && weight >= 700) ? large : text;
    }
    function marked(shape: Element, element: Element): number {
      const { fill, stroke } = getComputedStyle(shape);
      const paints = [fill, stroke].filter((words) => words !== 'none' && !words.startsWith('url'));
      return Math.max(0, ...paints.map((words) => ratio(...painted(element, words))));
    }

    for (const { parent } of texts()) {
      if (!off(parent) && !parent.closest('svg'))
        judge(parent, getComputedStyle(parent).color, leastFor(parent), 'text');
    }
    for (const element of worked().filter((one) => !off(one))) {
      const style = getComputedStyle(element);
      const typed = 'input:not([type=checkbox], [type=radio], [type=range]), textarea';
      const field = element.matches(typed);
      if (field || element.matches('select')) {
        judge(element, style.color, leastFor(element), 'typed text');
        if ('placeholder' in element && element.placeholder)
          judge(element, getComputedStyle(element, '::placeholder').color, text, 'placeholder');
      }
      // A field needs a visible side; a button with words needs no frame.
      const sides = ['top', 'right', 'left', 'bottom'].filter(
        (side) =>
          parseFloat(style.getPropertyValue(`border-${side}-width`)) > 0 &&
          style.getPropertyValue(`border-${side}-style`) !== 'none' &&
          colour(style.getPropertyValue(`border-${side}-color`))[3] > 0.05,
      );
      if (field && sides.length === 0) found.add(`no frame: ${named(element)}`);
      if (sides.length > (field ? 0 : 3) && element.parentElement && !element.closest('svg')) {
        looked += 1;
        const side = style.getPropertyValue(`border-${sides.at(-1) ?? ''}-color`);
        const [around, frame] = painted(element.parentElement, side);
        const [inside] = painted(element, 'transparent');
        const best = Math.max(ratio(around, frame), ratio(inside, frame), ratio(around, inside));
        if (best < mark - 0.005) found.add(`frame ${best.toFixed(2)}: ${named(element)}`);
      }
      for (const svg of element.querySelectorAll('svg')) {
        const marks = [...svg.querySelectorAll('path, ellipse, circle, rect, line')].map((shape) =>
          marked(shape, element),
        );
        // Of an avatar one part must be visible, of other signs all.
        const judged = svg.matches('[data-avatar]') ? [Math.max(...marks)] : marks;
        looked += judged.length;
        for (const best of judged.filter((one) => one > 0 && one < mark - 0.005))
          found.add(`mark ${best.toFixed(2)}: ${named(element)}`);
      }
    }
    return { looked, found: [...found] };
  }

  /** What is cut off, reaches beyond the window, or overlaps other text. */
  function reflow(): string[] {
    const found: string[] = [];
    const { scrollWidth, clientWidth } = document.documentElement;
    const cuts = (element: Element) => {
      const { overflowX, overflowY } = getComputedStyle(element);
      return [overflowX, overflowY];
    };
    /** Tables, sums and figures may scroll within themselves (WCAG 2.2, 1.4.10). */
    const scrolledWithin = (element: Element) => {
      let free = false;
      for (let e: Element | null = element; e && e !== document.body; e = e.parentElement) {
        const { position, overflowX } = getComputedStyle(e);
        // Only a positioned ancestor contains an absolutely positioned element.
        if (position !== 'static') free = false;
        if (['auto', 'scroll'].includes(overflowX) && !free) return true;
        if (position === 'absolute') free = true;
      }
      return false;
    };
    const fixed = (element: Element) => {
      for (let e: Element | null = element; e; e = e.parentElement) {
        if (['fixed', 'sticky'].includes(getComputedStyle(e).position)) return e;
      }
      return null;
    };

    if (scrollWidth > clientWidth) {
      // Hidden text that is only read out can widen the page too.
      const wide = [...document.body.querySelectorAll('*')]
        .filter((e) => e.getBoundingClientRect().right > clientWidth + 1 && !scrolledWithin(e))
        .filter((e, _, all) => !all.some((other) => other !== e && e.contains(other)));
      found.push(
        `the page is ${scrollWidth - clientWidth} px too wide: ${wide.slice(0, 2).map(named).join(', ')}`,
      );
    }

    type Edges = [left: number, right: number, top: number, bottom: number];
    const holders = new Map<Element, Edges>();
    /** The part of the window in which an element is visible, inside what scrolls or clips it. */
    const seenWithin = (element: Element | null): Edges => {
      if (!element || element === document.documentElement) return [-1e6, 1e6, -1e6, 1e6];
      let edges = holders.get(element);
      if (!edges) {
        edges = seenWithin(element.parentElement);
        if (element !== document.body && cuts(element).some((way) => way !== 'visible')) {
          const { left, right, top, bottom } = element.getBoundingClientRect();
          const [l, r, t, b] = edges;
          edges = [Math.max(l, left), Math.min(r, right), Math.max(t, top), Math.min(b, bottom)];
        }
        holders.set(element, edges);
      }
      return edges;
    };

    // Inside paint containment, nothing widens the page.
    const parts = 'button, input, select, textarea, svg, math, img, table';
    for (const part of front().querySelectorAll(parts)) {
      const around = part.parentElement;
      if (!seen(part) || around?.closest('svg, math') || scrolledWithin(part)) continue;
      const { right, width } = part.getBoundingClientRect();
      if (width > 1 && right > innerWidth + 1 && seenWithin(around)[1] > innerWidth + 1)
        found.push(`beyond the edge: ${named(part)}`);
    }

    for (const element of front().querySelectorAll('*')) {
      if (!seen(element) || element.closest('svg, math')) continue;
      const [x, y] = cuts(element).map((way) => ['hidden', 'clip'].includes(way));
      if ((!x && !y) || !element.textContent.trim() || element.matches('progress')) continue;
      const cutX = x && element.scrollWidth > element.clientWidth + 1;
      const cutY = y && element.scrollHeight > element.clientHeight + 1;
      if (cutX || cutY) found.push(`cut off: ${named(element)}`);
    }

    const boxes = [];
    const range = document.createRange();
    for (const { node, parent } of texts()) {
      if (parent.closest('svg, math')) continue;
      range.selectNodeContents(node);
      const over = fixed(parent);
      const within = scrolledWithin(parent);
      for (const box of range.getClientRects()) {
        if (box.width < 1) continue;
        if (box.right > innerWidth + 1 && !within) found.push(`beyond the edge: ${named(parent)}`);
        // Uses the middle of the line: ascenders of close lines may touch.
        const [left, right, high, low] = seenWithin(parent);
        const one = {
          left: Math.max(left, box.left),
          right: Math.min(right, box.right),
          top: Math.max(high, box.top + box.height * 0.25),
          bottom: Math.min(low, box.bottom - box.height * 0.25),
        };
        if (one.left < one.right && one.top < one.bottom)
          boxes.push({ ...one, node, parent, over });
      }
    }
    boxes.sort((a, b) => a.top - b.top);
    for (const [at, one] of boxes.entries()) {
      for (const other of boxes.slice(at + 1)) {
        if (other.top >= one.bottom) break;
        if (other.node === one.node || other.over !== one.over) continue;
        const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
        const high = Math.min(one.bottom, other.bottom) - other.top;
        if (wide > 2 && high > 2)
          found.push(`"${one.node.data.trim().slice(0, 30)}" on ${named(other.parent)}`);
      }
    }
    return [...new Set(found)];
  }

  const sheet = new CSSStyleSheet();
  sheet.replaceSync(
    ':not(math, math *, svg, svg *) { line-height: 1.5 !important; letter-spacing: 0.12em !important; ' +
      'word-spacing: 0.16em !important } p { margin-bottom: 2em !important }',
  );
  /** Sets the spacing of WCAG 2.2, 1.4.12, except in mathematics. */
  function spacing(on: boolean): void {
    const others = document.adoptedStyleSheets.filter((one) => one !== sheet);
    document.adoptedStyleSheets = on ? [...others, sheet] : others;
  }

  const paintedNow: Measures['painted'] = (element, words) => {
    grounds.clear();
    return painted(element, words);
  };
  window.measure = {
    hookOf,
    ratio,
    painted: paintedNow,
    targets,
    contrast,
    smallText,
    reflow,
    spacing,
  };
}
