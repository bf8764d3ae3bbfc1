import { inRange, OutOfRangeError, type Band } from '../quantity/index.ts';
import { boilingTemp } from './boiling.ts';
import { water } from './water.ts';

/** Slices of the integral of cp over the warm-up; more changes the time by less than 0.01 %. */
const SLICES = 40;
/** Efficiency of an electric kettle's element reaching the water, apart from body heat and losses. Common practice, no published source. */
const ELEMENT_EFFICIENCY: Band = { low: 0.93, typical: 0.97, high: 1 };
const ROOM_C = 20;

export type BoilInput = {
  readonly volumeL: number;
  readonly ratedW: number;
  readonly ratedV: number;
  readonly supplyV: number;
  readonly startC: number;
  readonly altitudeM: number;
  /** Heat capacity of the body as litres of water. */
  readonly bodyWaterL: number;
  /** Loss to the room, W per kelvin above it. */
  readonly lossWK: number;
  /** Share of the rated power that reaches kettle and water. */
  readonly efficiency?: Band;
};

/**
 * Time to a rolling boil: (water + body) × ∫cp dT against power less losses;
 * power goes with the square of the voltage. Energy balance, checked against
 * a measured-input worked example (1 L, 15 to 100 °C is 355 kJ).
 * @throws OutOfRangeError, also when the losses eat the power
 */
export function boilTime(input: BoilInput): { readonly timeS: Band; readonly energyKWh: number } {
  inRange('volumeL', input.volumeL, 0.1, 100);
  inRange('ratedW', input.ratedW, 100, 50_000);
  inRange('ratedV', input.ratedV, 50, 500);
  inRange('supplyV', input.supplyV, 50, 500);
  const boilingC = boilingTemp({ altitudeM: input.altitudeM }).tempC;
  inRange('startC', input.startC, 0, boilingC);
  const powerW = input.ratedW * (input.supplyV / input.ratedV) ** 2;
  const share = input.efficiency ?? ELEMENT_EFFICIENCY;
  const timeS: Band = {
    low: warmUpS(input, boilingC, powerW * share.high),
    typical: warmUpS(input, boilingC, powerW * share.typical),
    high: warmUpS(input, boilingC, powerW * share.low),
  };
  return { timeS, energyKWh: (powerW * timeS.typical) / 3.6e6 };
}

function warmUpS(input: BoilInput, boilingC: number, powerW: number): number {
  const massKg =
    (input.volumeL + input.bodyWaterL) * (water({ tempC: input.startC }).densityKgM3 / 1000);
  const stepK = (boilingC - input.startC) / SLICES;
  let timeS = 0;
  for (let slice = 0; slice < SLICES; slice += 1) {
    const tempC = input.startC + (slice + 0.5) * stepK;
    const netW = powerW - input.lossWK * (tempC - ROOM_C);
    if (netW <= 0)
      throw new OutOfRangeError(
        'ratedW',
        input.ratedW,
        'more than the losses',
        'It would never boil.',
      );
    timeS += (massKg * water({ tempC }).heatCapacityJKgK * stepK) / netW;
  }
  return timeS;
}

export type CoolingInput = {
  readonly volumeL: number;
  readonly lossWK: number;
  /** Heat carried off by steam through the spout near boiling, W. */
  readonly evaporationW: number;
  readonly roomC: number;
  /** How far below boiling is too cool, K. */
  readonly dropK: number;
  readonly altitudeM: number;
};

/**
 * Seconds until water that just boiled has lost `dropK`: lumped, exact for
 * constant losses. dT/dt = −(UA (T − Troom) + evaporation) / C.
 * @throws OutOfRangeError
 */
export function kettleCooling(input: CoolingInput): { readonly timeS: number } {
  inRange('volumeL', input.volumeL, 0.1, 100);
  inRange('lossWK', input.lossWK, 0.05, 50);
  const boilingC = boilingTemp({ altitudeM: input.altitudeM }).tempC;
  inRange('dropK', input.dropK, 0.1, boilingC - input.roomC - 1);
  const { densityKgM3, heatCapacityJKgK } = water({ tempC: boilingC });
  const heatJK = (input.volumeL / 1000) * densityKgM3 * heatCapacityJKgK;
  const restC = input.roomC - input.evaporationW / input.lossWK;
  const timeS =
    (heatJK / input.lossWK) * Math.log((boilingC - restC) / (boilingC - input.dropK - restC));
  return { timeS };
}
