import { createSignal, onCleanup, onMount } from 'solid-js';

/** Width of a printed page less its margins, CSS px. */
const PRINT_PX = 690;

/** Width of an element as it is laid out, px; of the page while it is printed. */
export function createWidth(): readonly [width: () => number, ref: (element: HTMLElement) => void] {
  const [width, setWidth] = createSignal(0);
  const [printing, setPrinting] = createSignal(false);
  const media = matchMedia('print');
  const onPrint = () => setPrinting(media.matches);
  media.addEventListener('change', onPrint);
  onCleanup(() => media.removeEventListener('change', onPrint));
  const ref = (element: HTMLElement) => {
    const watch = new ResizeObserver(() => {
      if (!media.matches) setWidth(element.clientWidth);
    });
    onMount(() => {
      setWidth(element.clientWidth);
      watch.observe(element);
    });
    onCleanup(() => watch.disconnect());
  };
  return [() => (printing() ? PRINT_PX : width()), ref];
}
