import {
  band,
  inRange,
  LITRES_PER_M3,
  mapBand,
  OutOfRangeError,
  type Band,
} from '../../units/index.ts';
import { integrate, LARGEST_VESSEL_L } from '../kettle/heat-needed.ts';
import { specificHeat } from '../tables/specific-heats.ts';
import { water, waterHeatCapacity } from '../water/water.ts';

/** Things dipped at once, by the heat they take for each kelvin. */
export type Dip = {
  /** Water in the pot at its temperature, L. */
  readonly waterL: number;
  readonly waterC: number;
  /** Heat capacity of all that is dipped, J/K. */
  readonly itemJK: Band;
  readonly itemC: number;
  /** The pot itself, as hot as its water, as the volume of water with its heat capacity, L. Absent: none. */
  readonly potWaterL?: number;
};

/** One thing, or several of one material. */
export type Immersion = Omit<Dip, 'itemJK'> & {
  readonly itemKg: number;
  /** Id of the table of specific heats. */
  readonly itemMaterial: string;
};

/** Steps that bring the mean heat capacity of the water to its end; it varies by 1 %. */
const STEPS = 4;
/** Above this water is not liquid at sea level, °C. */
const MOST_MIXED_C = 100;
const SAME_K = 1e-9;

/** Heat that water and pot together take between two temperatures for each kelvin, J/K. */
export function bathJK({ waterL, waterC, potWaterL = 0 }: Dip, fromC: number, toC: number): number {
  const kg = ((waterL + potWaterL) / LITRES_PER_M3) * water({ tempC: waterC }).densityKgM3;
  const span = toC - fromC;
  if (Math.abs(span) < SAME_K) return kg * waterHeatCapacity(fromC);
  return kg * (integrate(waterHeatCapacity, fromC, toC) / span);
}

function checked(of: Dip): void {
  inRange('waterL', of.waterL, 0.05, LARGEST_VESSEL_L);
  inRange('waterC', of.waterC, 0, 110);
  inRange('itemC', of.itemC, -30, 300);
  inRange('potWaterL', of.potWaterL ?? 0, 0, LARGEST_VESSEL_L);
}

/**
 * Where water and what is dipped end when it takes this much heat a kelvin, °C.
 * @throws OutOfRangeError when it is so hot that water boils
 */
export function mixedC(of: Dip, itemJK: number): number {
  let found = of.waterC;
  for (let step = 0; step < STEPS; step += 1) {
    const bath = bathJK(of, found, of.waterC);
    found = (bath * of.waterC + itemJK * of.itemC) / (bath + itemJK);
    if (found > MOST_MIXED_C && of.itemC > of.waterC) {
      throw new OutOfRangeError(
        'itemC',
        of.itemC,
        `such that the water stays below ${MOST_MIXED_C} °C`,
        'So hot a thing boils water away in bursts: let it cool first.',
      );
    }
  }
  return found;
}

/** Things by their heat capacity out of one by mass and material. */
export function dipOf({ itemKg, itemMaterial, ...bath }: Immersion): Dip {
  inRange('itemKg', itemKg, 0, 100);
  return { ...bath, itemJK: mapBand(specificHeat(itemMaterial), (c) => c * itemKg) };
}

/**
 * Temperature of water and things once they are one, nothing lost meanwhile.
 * @throws OutOfRangeError
 */
export function dipDrop(of: Dip): { readonly mixedC: Band } {
  checked(of);
  const ends = [mixedC(of, of.itemJK.low), mixedC(of, of.itemJK.high)];
  const typical = mixedC(of, of.itemJK.typical);
  // A colder thing pulls the more the more heat it takes, a hotter one lifts the more.
  return {
    mixedC: band(Math.min(typical, ...ends), typical, Math.max(typical, ...ends)),
  };
}

/**
 * Temperature of water and of what is dipped into it, once they are one and
 * nothing is lost meanwhile, °C. The band is that of the specific heat.
 * @param of waterL 0.05 to 200 L, waterC 0 to 110 °C, itemKg to 100 kg, itemC −30 to 300 °C
 * @throws OutOfRangeError
 * Source: heat balance of two bodies; water by IAPWS SR6-08(2011), specific
 * heats by the table.
 */
export function immersionDrop(of: Immersion): { readonly mixedC: Band } {
  return dipDrop(dipOf(of));
}
