import type { Burner, BurnerType, Cooktop, Kitchen } from '../model/kitchen.ts';

/** Whether a burner has a flame. */
export function isGas(type: BurnerType): boolean {
  return type.startsWith('gas') || type === 'commercial-open';
}

/** Every burner with its cooktop and its path in the file, in the order of the file. */
export function burnerPlaces(
  kitchen: Kitchen,
): readonly { readonly burner: Burner; readonly cooktop: Cooktop; readonly path: string }[] {
  return kitchen.fixtures.flatMap((cooktop, i) =>
    cooktop.kind === 'cooktop'
      ? cooktop.burners.map((burner, j) => ({
          burner,
          cooktop,
          path: `fixtures[${i}].burners[${j}]`,
        }))
      : [],
  );
}

/** All burners of a kitchen, in the order of the file. */
export function burnersOf(kitchen: Kitchen): readonly Burner[] {
  return burnerPlaces(kitchen).map(({ burner }) => burner);
}

/** Mains below this between line and neutral, V: there a range hangs between two lines. */
const LOW_MAINS_V = 150;
/** Where mains are about 120 V, ranges are made for two lines in opposite phase, V. */
const SPLIT_PHASE_MAINS_V = { least: 110, most: 125 };
const SPLIT_PHASE_V = 240;
/** A circuit told by the volts between lines of three phases has this many times those of one, and slack. */
const BETWEEN_LINES = 1.5;

/** What ranges on a circuit are made for, where no plate tells, V. */
function usualVolts(mainsV: number, circuitV: number): number {
  const { least, most } = SPLIT_PHASE_MAINS_V;
  return mainsV >= least && mainsV <= most && circuitV > LOW_MAINS_V ? SPLIT_PHASE_V : circuitV;
}

/**
 * What an electric burner is made for, and what it gets, V; undefined for gas
 * and where nothing tells. A range made for 240 V gets 208 V in some houses:
 * three quarters of its power.
 */
export function burnerVolts(
  { circuits, supplyV: mainsV }: Pick<Kitchen, 'circuits' | 'supplyV'>,
  { type, ratedV, circuit }: Burner,
): { readonly ratedV: number; readonly supplyV: number } | undefined {
  const circuitV = circuits.find(({ id }) => id === circuit)?.voltsV;
  const toldV = circuitV ?? ratedV;
  if (isGas(type) || toldV === undefined) return undefined;
  const made = ratedV ?? usualVolts(mainsV, toldV);
  if (circuitV !== undefined) {
    // Between three lines of 400 V each element still hangs between one and neutral.
    const overThree = mainsV >= LOW_MAINS_V && circuitV > BETWEEN_LINES * mainsV;
    return overThree && ratedV === undefined
      ? { ratedV: mainsV, supplyV: mainsV }
      : { ratedV: made, supplyV: overThree && made < circuitV ? mainsV : circuitV };
  }
  const supplyV = mainsV < LOW_MAINS_V && made > LOW_MAINS_V ? usualVolts(mainsV, made) : mainsV;
  return { ratedV: made, supplyV };
}

/** Does the hob itself show that it is still hot? Hob glass must have a lamp (IEC 60335-2-6, from memory). */
export function hasHeatLamp({ residualHeatLamp, surface }: Cooktop): boolean {
  return residualHeatLamp ?? surface === 'glass-ceramic';
}
