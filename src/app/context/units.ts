import { createEffect, createSignal, untrack } from 'solid-js';
import type { UnitSystem } from '../../core/units/index.ts';
import { tellIn } from './language.ts';

const [ofKitchen, setOfKitchen] = createSignal<() => UnitSystem | undefined>(() => undefined);

/** The units in which sizes are told now: those of the kitchen on the screen; metric where none is. */
export function unitsHere(): UnitSystem {
  return ofKitchen()() ?? 'metric';
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
