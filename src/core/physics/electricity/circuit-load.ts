import { inRange } from '../../units/index.ts';

/** A continuous load, three hours or more, may take at most this share of the circuit. NEC 210.20(A). */
const CONTINUOUS_SHARE = 0.8;

/**
 * What several loads together draw from one circuit, and whether it bears them.
 * A self-clean cycle runs for hours: set `continuous` for it.
 * @param supplyV 90 to 440 V
 * @param ratingA 1 to 125 A
 * @param bearsShare of the rating that fuse or breaker bears for a short load, 1 to 1.6; default 1
 * @param loadsW each 0 to 40 000 W, at this voltage
 * @throws OutOfRangeError
 * Source: I = P/U for heating loads; 80 % rule NEC 210.20(A).
 */
export function circuitLoad(of: {
  readonly supplyV: number;
  readonly ratingA: number;
  readonly loadsW: readonly number[];
  readonly continuous?: boolean;
  readonly bearsShare?: number;
}): { readonly loadA: number; readonly spareA: number; readonly allowed: boolean } {
  const supplyV = inRange('supplyV', of.supplyV, 90, 440);
  const ratingA = inRange('ratingA', of.ratingA, 1, 125);
  const totalW = of.loadsW.reduce((sum, watts) => sum + inRange('loadsW', watts, 0, 40_000), 0);
  const bearsShare = inRange('bearsShare', of.bearsShare ?? 1, 1, 1.6);
  const usableA = ratingA * (of.continuous ? CONTINUOUS_SHARE : bearsShare);
  const loadA = totalW / supplyV;
  return { loadA, spareA: usableA - loadA, allowed: loadA <= usableA };
}
