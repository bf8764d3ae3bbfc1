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
import {
  boilTime,
  hobEfficiency,
  kettleBody,
  kettleCooling,
  ORDINARY_HAND,
  type Boil,
} from '../../physics/index.ts';
import { OutOfRangeError, SECONDS_PER_MINUTE, type Band } from '../../units/index.ts';
import { DROP_K } from './pour-hand.ts';

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
  /** Longest from boiling to the last drop on the surface, s: until that drop has lost 5 K. */
  readonly waitS: number;
  /** Seconds of heat that bring water which has lost as much back to the boil; none for a kettle on the stove, which is lifted off the boil. */
  readonly againS?: number;
};

/** Usual room, °C: common practice, no published source. */
const ROOM_C = 20;
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

/** A filling as it is boiled: what a hob's efficiency holds is not counted again. */
export function boilOf(kitchen: Kitchen, { vessel, burner }: Kettle, volumeL: number): Boil {
  const common = {
    volumeL,
    startC: kitchen.tapColdC,
    altitudeM: kitchen.altitudeM,
    ratedV: vessel.ratedV,
  };
  // Efficiencies of hobs are heat into the water over energy used: body and losses are in them.
  if (burner)
    return {
      ...common,
      ratedW: burner.ratedW,
      supplyV: vessel.ratedV,
      bodyWaterL: 0,
      lossWK: 0,
      efficiency: hobEfficiency(burner.type),
    };
  const body = kettleBody(vessel.body);
  return {
    ...common,
    ratedW: vessel.ratedW,
    supplyV: kitchen.supplyV,
    bodyWaterL: body.bodyWaterL,
    lossWK: body.lossWK.typical,
  };
}

/** A kettle that stands switched off, by the losses that cool it soonest or latest. */
export function coolingOf(kitchen: Kitchen, { vessel }: Kettle, volumeL: number, end: keyof Band) {
  const body = kettleBody(vessel.body);
  return {
    volumeL,
    lossWK: body.lossWK[end],
    evaporationW: body.evaporationW[end],
    bodyWaterL: body.bodyWaterL,
    roomC: ROOM_C,
    altitudeM: kitchen.altitudeM,
  };
}

/** Seconds from boiling to a last drop that is still fresh, at a slow pour; a kettle so small that its pour alone cools it more has just that long. */
function freshS(kitchen: Kitchen, kettle: Kettle, volumeL: number): number {
  const pourS = (SECONDS_PER_MINUTE * volumeL) / ORDINARY_HAND.flowLMin.low;
  // The losses are guesses until measured once: the high ends.
  const cooling = coolingOf(kitchen, kettle, volumeL, 'high');
  try {
    return kettleCooling({ ...cooling, dropK: DROP_K, pourS }).timeS;
  } catch (refusal) {
    if (refusal instanceof OutOfRangeError && refusal.input === 'dropK') return pourS;
    throw refusal;
  }
}

/**
 * Time, energy and waiting time of one filling. The band is the rating plate's
 * tolerance, with the hob's spread for a kettle on the stove.
 */
export function estimateBoil(kitchen: Kitchen, kettle: Kettle, volumeL: number): BoilEstimate {
  const boil = boilOf(kitchen, kettle, volumeL);
  const { timeS, energyKWh, boilingC } = boilTime(boil);
  const { burner } = kettle;
  const againS = burner
    ? undefined
    : boilTime({ ...boil, startC: boilingC - DROP_K }).timeS.typical;
  return {
    timeS,
    energyKWh,
    fuel: burner && isGas(burner.type) ? 'gas' : 'electric',
    waitS: freshS(kitchen, kettle, volumeL),
    ...(againS !== undefined && { againS }),
  };
}
