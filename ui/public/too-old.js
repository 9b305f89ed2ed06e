// Runs before the page and in the oldest engines, so it keeps to the syntax of ECMAScript 5.
// Where the page needs what the engine lacks, it shows the words of index.html and takes away
// the place that the page would fill.
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
  if (complete) return;
  var app = document.getElementById('app');
  app.parentNode.removeChild(app);
  var engine = /(Chrome|Version|Firefox)\/[0-9.]+/.exec(window.navigator.userAgent);
  document.getElementById('engine').textContent = engine ? engine[0] : '';
  document.getElementById('too-old').removeAttribute('hidden');
})();
