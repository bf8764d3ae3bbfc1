import { onCleanup } from 'solid-js';

/**
 * Makes a region that has outgrown its frame reachable by keys: it takes the
 * focus, and the keys that move it, only as long as there is something to move.
 */
export function scrolls(element: HTMLElement): void {
  element.dataset['scrolls'] = '';
  const look = (): void => {
    if (element.scrollHeight > element.clientHeight + 1) element.tabIndex = 0;
    else element.removeAttribute('tabindex');
  };
  const sizes = new ResizeObserver(look);
  const watch = (): void => {
    sizes.disconnect();
    sizes.observe(element);
    for (const child of element.children) sizes.observe(child);
  };
  const children = new MutationObserver(watch);
  children.observe(element, { childList: true });
  watch();
  onCleanup(() => {
    sizes.disconnect();
    children.disconnect();
  });
}
