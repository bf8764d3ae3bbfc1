import { createSignal } from 'solid-js';

/** What is shown in the picture besides the kitchen: one at a time, so that nothing lies over another. */
type Layer = 'lengths' | 'names' | 'walls';

export function createShown() {
  const [layer, setLayer] = createSignal<Layer>();
  return {
    is: (one: Layer) => layer() === one,
    any: () => layer() !== undefined,
    toggle: (one: Layer) => setLayer(layer() === one ? undefined : one),
  };
}
export type Shown = ReturnType<typeof createShown>;
