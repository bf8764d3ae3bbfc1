import {
  burnersOf,
  countryOf,
  kettlePlateV,
  isGas,
  type Burner,
  type Kitchen,
  type Vessel,
} from '../../kitchen/index.ts';
import { asWritten, message, type Message } from '../../messages/index.ts';
import { boilTime, hobEfficiency, kettleBody, kettleCooling } from '../../physics/index.ts';
import { OutOfRangeError, type Band } from '../../units/index.ts';

/** One vessel that is carried and poured: of two alike, each has its own. */
export type Kettle = {
  /** Id of its resource in the plan. */
  readonly id: string;
  readonly name: Message;
  readonly vessel: Vessel;
  /** The burner it stands on, for one without an element of its own. */
  readonly burner?: Burner;
  /** Not in the kitchen file: to be bought. */
  readonly toBuy: boolean;
  /** It was purged by an earlier run and is not in doubt. */
  readonly purged?: boolean;
};

export type BoilEstimate = {
  readonly timeS: Band;
  readonly energyKWh: number;
  readonly fuel: 'electric' | 'gas';
  /** Longest from boiling to pouring, s: until it has lost 5 K. */
  readonly waitS: number;
};

/** Boiled water that has lost this much is boiled again, K: common practice, no published source. */
const DROP_K = 5;
/** Usual room, °C: common practice, no published source. */
export const ROOM_C = 20;
/** An ordinary kettle, L: common practice, no published source. */
const ORDINARY_L = 1.7;
/** Largest vessel that one person carries full of boiling water, L: common practice, no published source. */
const CARRIED_L = 3;

function bought(kitchen: Kitchen): Kettle {
  const ratedW = countryOf(kitchen.country)?.kettleW ?? 0;
  const circuit = kitchen.circuits.toSorted((a, b) => b.ratingA - a.ratingA)[0];
  const voltsV = circuit?.voltsV ?? kitchen.supplyV;
  const vessel: Vessel = {
    id: 'new-kettle',
    name: '',
    kind: 'electric-kettle',
    body: 'steel',
    maxFillL: ORDINARY_L,
    ratedW,
    ratedV: kettlePlateV(kitchen.country, kitchen.supplyV),
    ...(circuit && voltsV === kitchen.supplyV && { circuit: circuit.id }),
    count: 1,
  };
  return { id: vessel.id, name: message('steps.vessel.new'), vessel, toBuy: true };
}

function unitsOf(vessel: Vessel, burners: readonly Burner[]): readonly Kettle[] {
  const burner = burners.find(({ id }) => id === vessel.burner);
  return Array.from({ length: vessel.count }, (_, at) => ({
    id: vessel.count === 1 ? vessel.id : `${vessel.id}-${at + 1}`,
    name:
      vessel.count === 1
        ? asWritten(vessel.name)
        : message('steps.vessel.unit', { name: vessel.name, number: at + 1 }),
    vessel,
    ...(burner && { burner }),
    toBuy: false,
  }));
}

/** Has it the power to boil its filling at all? A kettle for another voltage may not. */
function canBoil(kitchen: Kitchen, kettle: Kettle): boolean {
  try {
    estimateBoil(kitchen, kettle, fillL([kettle]));
    return true;
  } catch (refusal) {
    if (refusal instanceof OutOfRangeError) return false;
    throw refusal;
  }
}

/**
 * The vessels that pour: kettles that can be carried and have a heater. Water
 * ladled from an urn or a pot is in a second vessel, so those do not pour.
 * Without a kettle, one to buy.
 */
export function pouringKettles(kitchen: Kitchen): readonly Kettle[] {
  const burners = burnersOf(kitchen);
  const usable = kitchen.vessels.filter(
    (vessel) =>
      (vessel.kind === 'electric-kettle' && vessel.ratedW > 0) ||
      (vessel.kind === 'stove-kettle' && burners.some(({ id }) => id === vessel.burner)),
  );
  const units = usable
    .flatMap((vessel) => unitsOf(vessel, burners))
    .filter((kettle) => canBoil(kitchen, kettle));
  if (units.length === 0) return [bought(kitchen)];
  // A much smaller one beside a larger would set the size of every pour.
  const largestL = Math.max(...units.map(({ vessel }) => vessel.maxFillL));
  return units.filter(({ vessel }) => vessel.maxFillL >= largestL / 2);
}

/** How much each kettle is filled: the least of the marks, so that any of them pours any stretch, L. */
export function fillL(kettles: readonly Kettle[]): number {
  return Math.min(CARRIED_L, ...kettles.map(({ vessel }) => vessel.maxFillL));
}

/** Vessels of the kitchen that are not poured from. */
export function standingVessels(kitchen: Kitchen): readonly Vessel[] {
  const poured = new Set(pouringKettles(kitchen).map(({ vessel }) => vessel.id));
  return kitchen.vessels.filter(({ id }) => !poured.has(id));
}

/**
 * Time, energy and waiting time of one filling. The band is the rating plate's
 * tolerance, with the hob's spread for a kettle on the stove.
 */
export function estimateBoil(kitchen: Kitchen, kettle: Kettle, volumeL: number): BoilEstimate {
  const { vessel, burner } = kettle;
  const body = kettleBody(vessel.body);
  const boil = {
    volumeL,
    ratedW: burner ? burner.ratedW : vessel.ratedW,
    ratedV: vessel.ratedV,
    supplyV: burner ? vessel.ratedV : kitchen.supplyV,
    startC: kitchen.tapColdC,
    altitudeM: kitchen.altitudeM,
    bodyWaterL: body.bodyWaterL,
    lossWK: body.lossWK.typical,
  };
  const share = burner && hobEfficiency(burner.type);
  const usual = boilTime(share ? { ...boil, efficiency: share.typical } : boil);
  const cooling = kettleCooling({
    volumeL,
    lossWK: body.lossWK.high,
    evaporationW: body.evaporationW.high,
    bodyWaterL: body.bodyWaterL,
    roomC: ROOM_C,
    dropK: DROP_K,
    altitudeM: kitchen.altitudeM,
  });
  return {
    timeS: share
      ? {
          low: boilTime({ ...boil, efficiency: share.high }).timeS.low,
          typical: usual.timeS.typical,
          high: boilTime({ ...boil, efficiency: share.low }).timeS.high,
        }
      : usual.timeS,
    energyKWh: usual.energyKWh,
    fuel: burner && isGas(burner.type) ? 'gas' : 'electric',
    // The losses are guesses until measured once: the high ends.
    waitS: cooling.timeS,
  };
}
