import {
  OutOfRangeError,
  SECONDS_PER_MINUTE,
  band,
  exactly,
  inRange,
  type Band,
} from '../../units/index.ts';
import { JOULES_KWH, LATENT_HEAT_JKG, USUAL_ROOM_C } from '../common/constants.ts';
import { boilingTemp } from '../water/boiling-temp.ts';
import { water } from '../water/water.ts';
import { integrate, LARGEST_VESSEL_L, waterMassKg } from './heat-needed.ts';
import { PLATE_HIGH, PLATE_LOW } from './plate.ts';

export type Boil = {
  readonly volumeL: number;
  readonly ratedW: number;
  readonly ratedV: number;
  readonly supplyV: number;
  readonly startC: number;
  readonly altitudeM: number;
  /** Kettle body as water, L. */
  readonly bodyWaterL: number;
  /** Heat lost through body and lid for each kelvin above the room, W/K. */
  readonly lossWK: number;
  /** Share of the power that reaches water and body: 1 for an immersed element, the hob's for a stove kettle. */
  readonly efficiency?: number | Band;
  readonly roomC?: number;
};

type Checked = Omit<Boil, 'efficiency'> & { readonly efficiency: Band; readonly roomC: number };

export type BoilResult = {
  /** From switching on to boiling; the band is the tolerance of the plate and of the efficiency. */
  readonly timeS: Band;
  /** Energy drawn, whether electricity or gas. */
  readonly energyKWh: number;
  /** Steam once it boils. */
  readonly steamGMin: number;
  readonly boilingC: number;
};

function checked(of: Boil): Checked {
  const boilingC = boilingTemp({ altitudeM: of.altitudeM }).tempC;
  inRange('volumeL', of.volumeL, 0.05, LARGEST_VESSEL_L);
  inRange('ratedW', of.ratedW, 100, 40_000);
  inRange('ratedV', of.ratedV, 90, 440);
  inRange('supplyV', of.supplyV, 90, 440);
  inRange('startC', of.startC, 0, boilingC);
  inRange('bodyWaterL', of.bodyWaterL, 0, LARGEST_VESSEL_L);
  inRange('lossWK', of.lossWK, 0, 50);
  const share = of.efficiency ?? 1;
  const efficiency = typeof share === 'number' ? exactly(share) : share;
  inRange('efficiency', efficiency.low, 0.05, 1);
  inRange('efficiency', efficiency.high, 0.05, 1);
  const roomC = inRange('roomC', of.roomC ?? USUAL_ROOM_C, -10, 50);
  return { ...of, efficiency, roomC };
}

/** Seconds to boiling with this much heat reaching the water; Infinity when losses win. */
function secondsAt(of: Checked, heatW: number, boilingC: number): number {
  if (heatW <= of.lossWK * (boilingC - of.roomC)) return Number.POSITIVE_INFINITY;
  const massKg = waterMassKg(of.volumeL, of.startC, of.bodyWaterL);
  const secondsPerKelvin = (tempC: number) =>
    (massKg * water({ tempC }).heatCapacityJKgK) / (heatW - of.lossWK * (tempC - of.roomC));
  return integrate(secondsPerKelvin, of.startC, boilingC);
}

/**
 * Time and energy from switching on to boiling. An element is a resistance:
 * its power goes with the square of the voltage.
 * @throws OutOfRangeError also when the losses at the boil exceed the heat
 * Source: energy balance, cp of IAPWS SR6-08(2011); plate tolerance IEC 60335-1.
 */
export function boilTime(boil: Boil): BoilResult {
  const of = checked(boil);
  const boilingC = boilingTemp({ altitudeM: of.altitudeM }).tempC;
  const drawnW = of.ratedW * (of.supplyV / of.ratedV) ** 2;
  const { efficiency } = of;
  const slowest = secondsAt(of, drawnW * efficiency.low * PLATE_LOW, boilingC);
  if (!Number.isFinite(slowest)) {
    const leastW = (of.lossWK * (boilingC - of.roomC)) / (PLATE_LOW * efficiency.low);
    throw new OutOfRangeError(
      'ratedW',
      of.ratedW,
      `such that more than ${leastW.toFixed(0)} W is drawn`,
      'It would never boil with this loss: use a stronger heater or a lid.',
    );
  }
  const timeS = secondsAt(of, drawnW * efficiency.typical, boilingC);
  const quickest = secondsAt(of, drawnW * efficiency.high * PLATE_HIGH, boilingC);
  return {
    timeS: band(quickest, timeS, slowest),
    energyKWh: (drawnW * timeS) / JOULES_KWH,
    steamGMin: ((drawnW * efficiency.typical) / LATENT_HEAT_JKG) * 1000 * SECONDS_PER_MINUTE,
    boilingC,
  };
}
