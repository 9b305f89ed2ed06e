// Runs before the page and in the oldest engines, so it keeps to the syntax of ECMAScript 5.
// Where the engine lacks what the page needs, it shows the words of index.html and takes away
// the place that the page would fill; else it takes away the words.
(function () {
  function supports(property, value) {
    return Boolean(window.CSS && window.CSS.supports && window.CSS.supports(property, value));
  }
  var complete =
    // Chromium 110, which also brings what came before it.
    typeof Array.prototype.toSorted === 'function' &&
    typeof window.structuredClone === 'function' &&
    // Fractions: without it, a half reads "12".
    typeof window.MathMLElement === 'function' &&
    supports('color', 'color-mix(in srgb, red 50%, blue)') &&
    supports('height', '1dvh') &&
    supports('container-type', 'inline-size');
  var notice = document.getElementById('too-old');
  var unused = complete ? notice : document.getElementById('app');
  unused.parentNode.removeChild(unused);
  if (complete) return;
  var engine = /(Chrome|Version|Firefox)\/[0-9.]+/.exec(window.navigator.userAgent);
  document.getElementById('engine').textContent = engine ? engine[0] : '';
  notice.removeAttribute('hidden');
})();
