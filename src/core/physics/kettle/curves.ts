import { USUAL_ROOM_C } from '../common/constants.ts';
import type { CurvePoint } from '../common/curve.ts';
import { boilTime, type Boil } from './boil-time.ts';
import { kettleCooling, type Cooling } from './kettle-cooling.ts';

/** Points of a drawn curve. */
const POINTS = 60;

/**
 * Water temperature from switching on to boiling, for a picture.
 * @throws OutOfRangeError as boilTime
 */
export function boilCurve(boil: Boil): readonly CurvePoint[] {
  const { timeS, boilingC } = boilTime(boil);
  const share = boil.efficiency ?? 1;
  const efficiency = typeof share === 'number' ? share : share.typical;
  const heatW = boil.ratedW * (boil.supplyV / boil.ratedV) ** 2 * efficiency;
  const roomC = boil.roomC ?? USUAL_ROOM_C;
  // With a steady loss the rise is an exponential towards where loss and heat balance.
  const ceilingC = boil.lossWK === 0 ? Number.POSITIVE_INFINITY : roomC + heatW / boil.lossWK;
  const at = (share: number) => {
    if (!Number.isFinite(ceilingC)) return boil.startC + (boilingC - boil.startC) * share;
    const ratio = (ceilingC - boilingC) / (ceilingC - boil.startC);
    return ceilingC - (ceilingC - boil.startC) * ratio ** share;
  };
  return Array.from({ length: POINTS + 1 }, (_, i) => ({
    timeS: (timeS.typical * i) / POINTS,
    tempC: at(i / POINTS),
  }));
}

/**
 * Water temperature after switching off, down to `dropK` below boiling, for a picture.
 * @throws OutOfRangeError as kettleCooling
 */
export function kettleCoolingCurve(of: Cooling): readonly CurvePoint[] {
  const { boilingC } = kettleCooling(of);
  return Array.from({ length: POINTS + 1 }, (_, i) => {
    const dropK = (of.dropK * i) / POINTS;
    const timeS = i === 0 ? 0 : kettleCooling({ ...of, dropK: Math.max(dropK, 0.1) }).timeS;
    return { timeS, tempC: boilingC - dropK };
  });
}
