import type { Rounding } from '../model/message.ts';

/** Sums of binary fractions end a hair beside the whole number they mean. */
const HAIR = 1e-6;

/** To a whole number. */
export const ROUND: Readonly<Record<Rounding, (value: number) => number>> = {
  nearest: Math.round,
  down: (value) => Math.floor(value + HAIR),
  up: (value) => Math.ceil(value - HAIR),
};

/** To so many decimals; to the nearest is left to whoever writes it. */
export function roundedTo(decimals: number, value: number, toward: Rounding = 'nearest'): number {
  const tens = 10 ** decimals;
  // No minus before a nought.
  return toward === 'nearest' ? value : ROUND[toward](value * tens) / tens + 0;
}
