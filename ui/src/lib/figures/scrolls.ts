/**
 * A box that can be scrolled sideways by keys when what is in it is too wide, as long
 * mathematics in large text on a narrow screen; else it is passed over.
 */
export function scrolls(box: HTMLElement): { destroy: () => void } {
  const look = () => {
    if (box.scrollWidth > box.clientWidth) box.tabIndex = 0;
    else box.removeAttribute('tabindex');
  };
  const observer = new ResizeObserver(look);
  for (const one of [box, ...box.children]) observer.observe(one);
  return { destroy: () => observer.disconnect() };
}
