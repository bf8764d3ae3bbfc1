import { createSignal, untrack } from 'solid-js';

const [ofKitchen, setOfKitchen] = createSignal<() => string | undefined>(() => undefined);

/** The time zone (IANA name) that the tablet is set to. */
export function tabletZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/**
 * The time zone of the clock on the kitchen's wall: that of the run on the
 * screen, else the tablet's. A tablet set to another zone would tell the
 * Sabbath hours off.
 */
export function wallZone(): string {
  return ofKitchen()() ?? tabletZone();
}

/** From now on times are told in this zone where it is known; gives what goes back to the zone before. */
export function followZone(of: () => string | undefined): () => void {
  const before = untrack(ofKitchen);
  setOfKitchen(() => of);
  return () => setOfKitchen(() => before);
}
