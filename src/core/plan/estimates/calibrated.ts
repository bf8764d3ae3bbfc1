import { burnersOf, type Kitchen } from '../../kitchen/index.ts';
import { ORDINARY_HAND, PRIORS } from '../../physics/index.ts';
import { mapBand, type Band } from '../../units/index.ts';
import type { Calibration, CalibrationFactor } from '../model/index.ts';
import type { BurnerEstimate } from './burners.ts';
import type { OvenEstimate } from './ovens.ts';
import type { PourEstimate } from './pour-need.ts';
import type { BoilEstimate } from './vessels.ts';

// What runs taught, laid over what is estimated. It tells when to look and how
// long work takes; nothing that guards a person or the purge is ever eased by it.

type Ends = readonly [least: number, most: number];

/**
 * Within these a factor is used; outside it is taken as the nearest end. The
 * ends of boil and pour are what hardware can be (PRIORS). Common practice, no
 * published source, for the others: a burner is never expected later than its
 * own limit asks, a cool-down is never shortened, and a kettle is never trusted
 * to reach further than estimated.
 */
const ENDS = {
  boil: [PRIORS.boilTimeFactor.min, PRIORS.boilTimeFactor.max],
  glow: [PRIORS.glowTimeFactor.min, 2],
  heatUp: [PRIORS.glowTimeFactor.min, 3],
  cool: [1, 3],
  flowLMin: [PRIORS.pourFlowLMin.min, PRIORS.pourFlowLMin.max],
  reach: [PRIORS.pourAreaFactor.min, 1],
} as const satisfies Readonly<Record<keyof Calibration, Ends>>;

/** A band that covers nearly all of what may come, in standard deviations to each side. */
const SIGMAS = 2;
/** The widest spread that a factor may claim and still be used for a band. */
const MOST_SPREAD = 0.5;

function within(
  factor: CalibrationFactor | undefined,
  [least, most]: Ends,
): CalibrationFactor | undefined {
  if (!factor || !(factor.mean > 0) || !Number.isFinite(factor.mean) || !(factor.n >= 1))
    return undefined;
  return {
    mean: Math.min(most, Math.max(least, factor.mean)),
    spread: Math.min(MOST_SPREAD, Math.max(0, factor.spread || 0)),
    n: factor.n,
  };
}

function byId(
  factors: Readonly<Record<string, CalibrationFactor>> | undefined,
  ids: ReadonlySet<string>,
  ends: Ends,
): Readonly<Record<string, CalibrationFactor>> | undefined {
  const kept = Object.entries(factors ?? {}).flatMap(([id, factor]) => {
    const used = ids.has(id) ? within(factor, ends) : undefined;
    return used ? [[id, used] as const] : [];
  });
  return kept.length > 0 ? Object.fromEntries(kept) : undefined;
}

/**
 * What of the factors this kitchen can use: of hardware that is there, and
 * within what hardware can be. Using it twice changes nothing more.
 */
export function usableCalibration(
  kitchen: Kitchen,
  given: Calibration | undefined,
): Calibration | undefined {
  if (!given) return undefined;
  const lit = new Set(burnersOf(kitchen).map(({ id }) => id));
  const ovens = new Set(kitchen.fixtures.flatMap(({ kind, id }) => (kind === 'oven' ? [id] : [])));
  const boil = byId(given.boil, new Set(kitchen.vessels.map(({ id }) => id)), ENDS.boil);
  const glow = byId(given.glow, lit, ENDS.glow);
  const heatUp = byId(given.heatUp, ovens, ENDS.heatUp);
  const cool = byId(given.cool, new Set([...lit, ...ovens]), ENDS.cool);
  const flowLMin = within(given.flowLMin, ENDS.flowLMin);
  const reach = within(given.reach, ENDS.reach);
  const used: Calibration = {
    ...(boil && { boil }),
    ...(glow && { glow }),
    ...(heatUp && { heatUp }),
    ...(cool && { cool }),
    ...(flowLMin && { flowLMin }),
    ...(reach && { reach }),
  };
  return Object.keys(used).length > 0 ? used : undefined;
}

/** Seconds as they were measured, with the spread of the reports. */
function measured(estimatedS: number, { mean, spread }: CalibrationFactor): Band {
  const typical = estimatedS * mean;
  return {
    low: typical * Math.exp(-SIGMAS * spread),
    typical,
    high: typical * Math.exp(SIGMAS * spread),
  };
}

/** How long the boiled water may wait is not taught: that is a limit. */
export function calibratedBoil(
  boil: BoilEstimate,
  factor: CalibrationFactor | undefined,
): BoilEstimate {
  return factor ? { ...boil, timeS: measured(boil.timeS.typical, factor) } : boil;
}

/** Its glow when it is expected; its limit stays by the model, and its cool-down is only lengthened. */
export function calibratedBurner(
  burner: BurnerEstimate,
  glow: CalibrationFactor | undefined,
  cool: CalibrationFactor | undefined,
): BurnerEstimate {
  return {
    ...burner,
    ...(glow && { glowS: measured(burner.glowS.typical, glow) }),
    coolS: burner.coolS * (cool?.mean ?? 1),
  };
}

/** Heat-up of the highest setting as it was measured; hold by custom, cool-down only lengthened. */
export function calibratedOven<Estimate extends OvenEstimate>(
  oven: Estimate,
  heatUp: CalibrationFactor | undefined,
  cool: CalibrationFactor | undefined,
): Estimate {
  return {
    ...oven,
    ...(heatUp && { heatS: measured(oven.heatS.typical, heatUp) }),
    coolS: mapBand(oven.coolS, (s) => s * (cool?.mean ?? 1)),
  };
}

/**
 * A shorter reach takes more water and more kettles, never fewer than estimated;
 * the stream sets how long a kettle lasts, not how thin it is spread.
 */
export function calibratedPour(
  need: PourEstimate,
  filledL: number,
  given: Calibration | undefined,
): PourEstimate {
  const reach = given?.reach?.mean ?? 1;
  const flow = given?.flowLMin ? given.flowLMin.mean / ORDINARY_HAND.flowLMin.typical : 1;
  if (reach === 1 && flow === 1) return need;
  const litres = mapBand(need.litres, (l) => l / reach);
  const { level, upright, edge, fitting } = need.litresOf;
  return {
    ...need,
    litres,
    kettles: reach === 1 ? need.kettles : mapBand(litres, (l) => Math.ceil(l / filledL - NEARLY)),
    pourS: mapBand(need.pourS, (s) => s / reach / flow),
    handSpeedMS: need.handSpeedMS * reach * flow,
    litresOf: {
      level: level / reach,
      upright: upright / reach,
      edge: edge / reach,
      fitting: fitting / reach,
    },
  };
}

/** Rounding that is not worth another kettle. */
const NEARLY = 1e-9;
