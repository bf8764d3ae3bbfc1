import type { Kitchen } from '../model/kitchen.ts';

/** Is there a window that opens, by what was told? */
export function windowTold({ room: { window } }: Kitchen): boolean {
  return window !== undefined && window.areaM2 > 0 && window.heightM > 0;
}

/** Is there a hood that blows outside, by what was told? */
export function hoodTold({ room: { hood } }: Kitchen): boolean {
  return hood.kind === 'vented';
}

/**
 * Did the household say that air has no way out: no window that opens, and no
 * hood to the outside? What is not told is not "none".
 */
export function toldAirless({ room: { hood, window } }: Kitchen): boolean {
  const noHood = hood.kind === 'none' || hood.kind === 'recirculating';
  return noHood && window !== undefined && !(window.areaM2 > 0 && window.heightM > 0);
}
