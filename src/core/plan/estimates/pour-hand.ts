import type { PourUntil } from '../../kitchen/index.ts';
import {
  heatedSpeed,
  jetLoss,
  keepsUp,
  material,
  ORDINARY_HAND,
  reachedSpeed,
} from '../../physics/index.ts';
import { band, exactly, type Band } from '../../units/index.ts';
import { remembered } from './remembered.ts';

/**
 * Heat from which a hand recoils (yad soledet bo): the lowest of the opinions,
 * the common one and the highest, °C. From memory; the plan goes by the highest.
 */
export const HAND_RECOIL_C: Band = { low: 40, typical: 45, high: 71 };
/** Boiled water that has lost this much by its last drop is boiled again, K: common practice, no published source. */
export const DROP_K = 5;

/** What the hand's speed on one material goes by; what is not told is as usual. */
export type PourSetting = {
  readonly material: string;
  /** Boiling point of the place, °C. */
  readonly boilingC: number;
  readonly flowLMin?: number;
  readonly fallM?: number;
  /** Of what is usual for the material. */
  readonly thickness?: keyof Band;
  readonly overlapShare?: number;
  /** Water left standing, mm. */
  readonly standingMm?: number;
  /** What the water may have lost in the kettle, K. */
  readonly dropK?: number;
  /** What the first touch must reach, °C. */
  readonly touchC?: number;
};

/** Hand speeds on one material by both aims, m/s; a slow hand is `low`. */
export type PourHands = Readonly<Record<PourUntil, Band>> & {
  /** Water where the stream meets the surface, °C: the last drop that is still fresh, water just boiled, the hottest. */
  readonly impactC: Band;
};

function impactOf(of: PourSetting): Band {
  const { boilingC, dropK = DROP_K } = of;
  const fall = { ...of, flowLMin: of.flowLMin ?? ORDINARY_HAND.flowLMin.typical };
  const fresh = jetLoss({ ...fall, spoutC: boilingC }).lossK;
  const last = jetLoss({ ...fall, spoutC: boilingC - dropK }).lossK;
  return band(boilingC - dropK - last.high, boilingC - fresh.typical, boilingC - fresh.low);
}

/** What follows the water as a whole takes as much longer as it is thicker; a slab is never warmed to its back. */
function spread(speedMS: number, of: PourSetting, quickestMS: number): Band {
  const { kind, thicknessMm } = material(of.material);
  if (of.thickness !== undefined || (kind !== 'metal' && kind !== 'unknown'))
    return exactly(speedMS);
  const at = (mm: number) => Math.min(quickestMS, (speedMS * thicknessMm.typical) / mm);
  return band(at(thicknessMm.high), speedMS, Math.max(speedMS, at(thicknessMm.low)));
}

/**
 * How quick a hand may be. *reached*: even the coolest water that is still
 * fresh first touches the worst-placed spot above every opinion on the heat
 * from which a hand recoils; never slower than until it is *heated* through.
 * The band is the thickness of a sheet.
 * @throws OutOfRangeError
 */
function handsOn(of: PourSetting): PourHands {
  const impactC = impactOf(of);
  const hand = {
    ...of,
    flowLMin: of.flowLMin ?? ORDINARY_HAND.flowLMin.typical,
    impactC: impactC.typical,
    thicknessMm: material(of.material).thicknessMm[of.thickness ?? 'typical'],
  };
  const quickestMS = keepsUp(hand).speedMS;
  const heatedMS = Math.min(quickestMS, heatedSpeed(hand).speedMS);
  const reached = reachedSpeed({
    ...hand,
    impactC: impactC.low,
    touchC: of.touchC ?? HAND_RECOIL_C.high,
    slowestMS: heatedMS,
  });
  return {
    reached: spread(Math.min(quickestMS, reached.speedMS), of, quickestMS),
    heated: spread(heatedMS, of, quickestMS),
    impactC,
  };
}

export const usualHands = remembered(handsOn);
