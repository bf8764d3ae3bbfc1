import { burnersOf, type Kitchen } from '../../kitchen/index.ts';
import type { Band } from '../../units/index.ts';
import { kettlePours } from './pouring.ts';
import {
  fillL,
  isPoured,
  pouringKettles,
  pourPlaceOf,
  estimatePour,
  estimateRoom,
} from '../estimates/index.ts';

/** Boiling water for one fixture; kettles as they would be planned. */
type PourNeed = {
  readonly litres: Band;
  readonly kettles: Band;
  readonly pourS: Band;
  /** What each kettle is filled with. */
  readonly filledL: number;
};

/**
 * What pouring one fixture takes with this kitchen's kettles; none for a
 * fixture that is not poured (only counters, sinks and tables are).
 * @throws OutOfRangeError when a model refuses a number of the kitchen
 */
export function pourNeedOf(kitchen: Kitchen, fixtureId: string): PourNeed | undefined {
  const fixture = kitchen.fixtures.find(({ id }) => id === fixtureId);
  if (!fixture || !isPoured(fixture)) return undefined;
  const filledL = fillL(pouringKettles(kitchen));
  const { litres, kettles, pourS, ...rest } = estimatePour(fixture, filledL, pourPlaceOf(kitchen));
  const { pours } = kettlePours(kitchen, fixture, { litres, kettles, pourS, ...rest }, filledL);
  return { litres, kettles: aroundPlanned(kettles, pours.length), pourS, filledL };
}

/** The estimate's spread about the kettles that are planned. */
export function aroundPlanned(kettles: Band, planned: number): Band {
  return {
    low: Math.min(kettles.low, planned),
    typical: planned,
    high: Math.max(kettles.high, planned),
  };
}

type RoomNeed = {
  readonly peakC: Band;
  readonly curve: readonly {
    readonly timeS: number;
    readonly airC: number;
    readonly humidityPct: number;
    readonly heatIndexC: number;
  }[];
  readonly burnerW: number;
};

/**
 * Air of the kitchen while the strongest of its burners, as many as asked for,
 * are lit that long; none for a kitchen without burners.
 * @throws OutOfRangeError
 */
export function roomNeedOf(
  kitchen: Kitchen,
  burners: number,
  minutes: number,
): RoomNeed | undefined {
  const powers = burnersOf(kitchen)
    .map(({ ratedW }) => ratedW)
    .toSorted((a, b) => b - a)
    .slice(0, burners);
  if (powers.length === 0) return undefined;
  const burnerW = powers.reduce((sum, power) => sum + power, 0) / powers.length;
  const { peakC, curve } = estimateRoom(kitchen, burnerW, powers.length, minutes);
  return { peakC, curve, burnerW };
}
