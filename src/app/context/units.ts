import { createEffect, createSignal, untrack } from 'solid-js';
import { usualUnits } from '../../core/kitchen/index.ts';
import type { UnitSystem } from '../../core/units/index.ts';
import { tellIn } from './language.ts';

const [ofKitchen, setOfKitchen] = createSignal<() => UnitSystem | undefined>(() => undefined);

/** Where no kitchen is open: the country that the tablet's own language is set to. */
function unitsOfTablet(): UnitSystem {
  return usualUnits(new Intl.Locale(navigator.language || 'en').region);
}

/** The units in which sizes are told now: those of the kitchen on the screen, else the tablet's. */
export function unitsHere(): UnitSystem {
  return ofKitchen()() ?? unitsOfTablet();
}

/** Every sentence follows the household's units, once they can be written. */
export function speakInUnits(onFailure: (error: unknown) => void): void {
  createEffect(() => void tellIn(unitsHere()).catch(onFailure));
}

/** From now on sizes are told in these units where they are known; gives what goes back to the units before. */
export function followUnits(of: () => UnitSystem | undefined): () => void {
  const before = untrack(ofKitchen);
  setOfKitchen(() => of);
  return () => setOfKitchen(() => before);
}
