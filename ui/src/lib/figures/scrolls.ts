/**
 * Lets keys scroll a box sideways while its content is too wide, such as long mathematics
 * in large text. Otherwise Tab skips the box.
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
