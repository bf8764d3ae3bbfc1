import { type Accessor, createSignal, onCleanup } from 'solid-js';

/** Does the person want nothing to move? Follows the device's setting. */
export function prefersStill(): Accessor<boolean> {
  const asked = window.matchMedia('(prefers-reduced-motion: reduce)');
  const [still, setStill] = createSignal(asked.matches);
  const changed = (): void => void setStill(asked.matches);
  asked.addEventListener('change', changed);
  onCleanup(() => asked.removeEventListener('change', changed));
  return still;
}
