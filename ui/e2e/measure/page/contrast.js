// Runs in the page. Text against its painted ground, and the frames and marks of
// controls. Exempt: what is switched off, and the labels within drawn figures.
window.measure.contrast = (textLeast, largeLeast, markLeast) => {
  const { texts, worked, painted, ratio, colour, named } = window.measure;
  const off = (element) => element.closest(':disabled, [aria-disabled=true]') !== null;
  const found = new Map();
  let looked = 0;
  const spared = { off: 0, figure: 0 };
  let lowest = Infinity;

  function judge(element, words, least, what) {
    looked += 1;
    const [ground, upon] = painted(element, words);
    const got = ratio(ground, upon);
    if (least === textLeast) lowest = Math.min(lowest, got);
    if (got < least - 0.005) {
      const hex = [upon, ground].map((rgb) => rgb.map(Math.round).join(',')).join(' on ');
      found.set(`${what} ${got.toFixed(2)} (${hex}): ${named(element)}`, true);
    }
  }
  function leastFor(element) {
    const { fontSize, fontWeight } = getComputedStyle(element);
    const [size, weight] = [parseFloat(fontSize), Number(fontWeight)];
    return size >= 24 || (size >= 18.66 && weight >= 700) ? largeLeast : textLeast;
  }

  for (const node of texts()) {
    const parent = node.parentElement;
    if (off(parent)) spared.off += 1;
    else if (parent.closest('svg')) spared.figure += 1;
    else judge(parent, getComputedStyle(parent).color, leastFor(parent), 'text');
  }

  for (const element of worked()) {
    if (off(element)) {
      spared.off += 1;
      continue;
    }
    const style = getComputedStyle(element);
    if (
      element.matches('input:not([type=checkbox], [type=radio], [type=range]), select, textarea')
    ) {
      judge(element, style.color, leastFor(element), 'typed text');
      if (element.placeholder) {
        judge(element, getComputedStyle(element, '::placeholder').color, textLeast, 'placeholder');
      }
    }
    // A frame or a fill must show where there is one; a word alone needs neither.
    const sides = ['Top', 'Right', 'Left', 'Bottom'].filter(
      (side) =>
        parseFloat(style[`border${side}Width`]) > 0 &&
        style[`border${side}Style`] !== 'none' &&
        colour(style[`border${side}Color`])[3] > 0.05,
    );
    // A field that is typed in needs a side that shows, a button with words does not.
    const field = element.matches(
      'input:not([type=checkbox], [type=radio], [type=range]), textarea',
    );
    if (field && sides.length === 0) found.set(`no frame: ${named(element)}`, true);
    if (sides.length > (field ? 0 : 3) && element.parentElement && !element.matches('svg *, svg')) {
      looked += 1;
      const [around, frame] = painted(element.parentElement, style[`border${sides.at(-1)}Color`]);
      const [inside] = painted(element, 'transparent');
      const best = Math.max(ratio(around, frame), ratio(inside, frame), ratio(around, inside));
      if (best < markLeast - 0.005) found.set(`frame ${best.toFixed(2)}: ${named(element)}`, true);
    }
    for (const svg of element.querySelectorAll('svg')) {
      const marks = [...svg.querySelectorAll('path, ellipse, circle, rect, line')].map(marked);
      // Of a picture one part must stand out, of other signs each.
      const judged = svg.matches('[data-picture]') ? [Math.max(...marks)] : marks;
      looked += judged.length;
      for (const best of judged.filter((one) => one > 0 && one < markLeast - 0.005)) {
        found.set(`mark ${best.toFixed(2)}: ${named(element)}`, true);
      }
    }

    function marked(shape) {
      const { fill, stroke } = getComputedStyle(shape);
      const paints = [fill, stroke].filter((words) => words !== 'none' && !words.startsWith('url'));
      return Math.max(0, ...paints.map((words) => ratio(...painted(element, words))));
    }
  }
  return { looked, found: [...found.keys()], spared, lowest };
};
