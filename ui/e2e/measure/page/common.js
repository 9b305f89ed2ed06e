// Runs in the page. What can be seen and worked, and colours as they are painted.
window.measure = (() => {
  const WORKED =
    'a[href], button, input, select, textarea, summary, [role=button], [role=radio], [role=slider], ' +
    '[role=checkbox], [role=switch], [role=tab], [role=link], [tabindex]:not([tabindex="-1"])';

  /** The dialog in front, else the whole page. */
  const front = () => [...document.querySelectorAll('dialog[open]')].at(-1) ?? document.body;

  function seen(element) {
    if (!element.checkVisibility({ visibilityProperty: true, opacityProperty: true })) return false;
    if (element.closest('.unseen')) return false;
    const { width, height } = element.getBoundingClientRect();
    return width > 0 && height > 0;
  }

  /** What a person can tap or reach by keys now. */
  function worked() {
    return [...front().querySelectorAll(WORKED)].filter((e) => seen(e) && !e.closest('[inert]'));
  }

  /** Text nodes with signs to read. */
  function texts() {
    const found = [];
    const walker = document.createTreeWalker(front(), NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const { currentNode: node } = walker;
      const parent = node.parentElement;
      if (node.data.trim() && seen(parent) && !parent.closest('script, style, select')) {
        found.push(node);
      }
    }
    return found;
  }

  const canvas = new OffscreenCanvas(1, 1).getContext('2d', { willReadFrequently: true });
  const known = new Map();
  /** A computed colour as red, green, blue from 0 to 255 and opacity from 0 to 1. */
  function colour(words) {
    let found = known.get(words);
    if (!found) {
      canvas.clearRect(0, 0, 1, 1);
      canvas.fillStyle = words;
      canvas.fillRect(0, 0, 1, 1);
      const [r, g, b, a] = canvas.getImageData(0, 0, 1, 1).data;
      found = [r, g, b, a / 255];
      known.set(words, found);
    }
    return found;
  }

  const mix = (under, over, part) => under.map((value, at) => value + (over[at] - value) * part);
  const cover = (under, words) => {
    const [r, g, b, a] = colour(words);
    return mix(under, [r, g, b], a);
  };

  function luminance(rgb) {
    const [r, g, b] = rgb.map((value) => {
      const part = value / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  }

  /** The ratio of WCAG 2.2, from 1 to 21. */
  function ratio(one, other) {
    const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
    return (light + 0.05) / (dark + 0.05);
  }

  /** What is painted at an element: its ground, and a colour upon it, with every veil above. */
  function painted(element, words) {
    const chain = [];
    for (let e = element; e; e = e.parentElement) {
      chain.unshift(e);
      // A dialog stands before all else.
      if (e.matches('dialog[open]')) break;
    }
    const paint = (at, behind) => {
      const style = getComputedStyle(chain[at]);
      let ground = cover(behind, style.backgroundColor);
      let upon = ground;
      if (at === chain.length - 1) upon = cover(ground, words);
      else [ground, upon] = paint(at + 1, ground);
      const veil = Number(style.opacity);
      return veil < 1 ? [mix(behind, ground, veil), mix(behind, upon, veil)] : [ground, upon];
    };
    return paint(
      0,
      cover([255, 255, 255], getComputedStyle(document.documentElement).backgroundColor),
    );
  }

  /** Text in which something can be found again. */
  function named(element) {
    const id = element.closest('[data-testid]')?.dataset.testid;
    return `${element.tagName.toLowerCase()}${id ? ` in ${id}` : ''} "${(element.textContent || element.getAttribute('aria-label') || '').trim().slice(0, 40)}"`;
  }

  /** The hook of an element; a cell of the paper chart and a line of the board have their own. */
  function hookOf(element) {
    const { testid, cell, line } = element?.dataset ?? {};
    if (testid !== undefined) return testid;
    if (cell !== undefined) return `cell-${cell}`;
    return line === undefined ? '' : `line-${line}`;
  }

  return { hookOf, front, seen, worked, texts, colour, ratio, painted, named };
})();
