import { message } from '../../messages/index.ts';
import { foundValue, problemAt, type KitchenWarning } from '../model/problem.ts';
import { shortLoadShare } from '../model/country.ts';
import { isElectric } from '../queries/vessels.ts';
import { answersToLookAt, ownCustomRests } from './own-custom.ts';
import { utensilsToLookAt } from './utensils.ts';
import { lastHotsHaveTheirZone } from './told.ts';
import type { Circuit, Kitchen, Vessel } from '../model/kitchen.ts';

/** Rated and mains voltage may differ by this share (IEC 60038 allows ±10 %) before we ask. */
const VOLTAGE_SLACK = 0.15;

/** Current of one electric vessel on a circuit: a resistance draws V/R, so W·V/V₀². */
function currentA(vessel: Vessel, circuit: Circuit): number {
  return (vessel.ratedW * circuit.voltsV) / vessel.ratedV ** 2;
}

/** A kettle too strong for its circuit trips it alone; several at once trip it together. */
function* loads(kitchen: Kitchen): Generator<KitchenWarning> {
  const share = shortLoadShare(kitchen.country);
  for (const [c, circuit] of kitchen.circuits.entries()) {
    let togetherA = 0;
    let tripsAlone = false;
    let count = 0;
    for (const [i, vessel] of kitchen.vessels.entries()) {
      if (vessel.circuit !== circuit.id) continue;
      const drawA = currentA(vessel, circuit);
      togetherA += drawA * vessel.count;
      count += vessel.count;
      if (drawA > circuit.ratingA * share) {
        tripsAlone = true;
        yield problemAt(
          `vessels[${i}].circuit`,
          message('problems.load.one.found', { vessel: vessel.name, drawA }),
          message('problems.load.one.allowed', { ratingA: circuit.ratingA }),
          message('problems.load.one.advice'),
        );
      }
    }
    if (count > 1 && !tripsAlone && togetherA > circuit.ratingA) {
      yield problemAt(
        `circuits[${c}]`,
        message('problems.load.several.found', { count, circuit: circuit.name, togetherA }),
        message('problems.load.several.allowed', { ratingA: circuit.ratingA }),
        message('problems.load.several.advice'),
      );
    }
  }
}

function* voltages(kitchen: Kitchen): Generator<KitchenWarning> {
  for (const [i, vessel] of kitchen.vessels.entries()) {
    const circuit = kitchen.circuits.find(({ id }) => id === vessel.circuit);
    if (!circuit) continue;
    const off = Math.abs(vessel.ratedV - circuit.voltsV) / circuit.voltsV;
    if (off > VOLTAGE_SLACK) {
      const { ratedV } = vessel;
      const { voltsV } = circuit;
      yield problemAt(
        `vessels[${i}].ratedV`,
        message('problems.voltage.found', { ratedV, voltsV }),
        message('problems.voltage.allowed', { voltsV }),
        message('problems.voltage.advice'),
      );
    }
  }
}

function* leftOpen(kitchen: Kitchen): Generator<KitchenWarning> {
  if (kitchen.fixtures.length === 0) {
    const allowed = message('problems.no-fixtures.allowed');
    const advice = message('problems.no-fixtures.advice');
    yield problemAt('fixtures', message('problems.found.none'), allowed, advice);
  }
  if (kitchen.vessels.length === 0) {
    const allowed = message('problems.no-vessels.allowed');
    const advice = message('problems.no-vessels.advice');
    yield problemAt('vessels', message('problems.found.none'), allowed, advice);
  }
  for (const [i, vessel] of kitchen.vessels.entries()) {
    if (isElectric(vessel) && vessel.circuit === undefined) {
      const found = message('problems.unplugged.found');
      const allowed = message('problems.unplugged.allowed');
      const advice = message('problems.unplugged.advice');
      yield problemAt(`vessels[${i}].circuit`, found, allowed, advice);
    }
  }
  const { kind, flowLS } = kitchen.room.hood;
  if (kind === 'vented' && flowLS === 0) {
    const allowed = message('problems.hood-flow.allowed');
    const advice = message('problems.hood-flow.advice');
    yield problemAt('room.hood.flowLS', foundValue(flowLS), allowed, advice);
  }
  if (kind === 'none' && flowLS > 0) {
    yield problemAt(
      'room.hood.kind',
      message('problems.hood-kind.found', { flowLS }),
      message('problems.hood-kind.allowed'),
      message('problems.hood-kind.advice'),
    );
  }
}

/** Least room that heat and air are reckoned for, m³. */
const LEAST_ROOM_M3 = 3;

function* rooms({ room }: Kitchen): Generator<KitchenWarning> {
  const volumeM3 = room.floorAreaM2 * room.heightM;
  if (volumeM3 < LEAST_ROOM_M3)
    yield problemAt(
      'room.floorAreaM2',
      message('problems.room-small.found', { volumeM3 }),
      message('problems.room-small.allowed', { leastM3: LEAST_ROOM_M3 }),
      message('problems.room-small.advice'),
    );
}

function* cycles(kitchen: Kitchen): Generator<KitchenWarning> {
  for (const [i, fixture] of kitchen.fixtures.entries()) {
    if (fixture.kind === 'oven' && fixture.cleaning === 'none' && fixture.cycleMin !== undefined) {
      const found = message('problems.cycle.found', { cycleMin: fixture.cycleMin });
      const allowed = message('problems.cycle.allowed');
      yield problemAt(`fixtures[${i}].cycleMin`, found, allowed, message('problems.cycle.advice'));
    }
  }
}

/** What a household should look at although the file can be used. */
export function warningsFor(kitchen: Kitchen): readonly KitchenWarning[] {
  return [
    ...loads(kitchen),
    ...voltages(kitchen),
    ...leftOpen(kitchen),
    ...rooms(kitchen),
    ...cycles(kitchen),
    ...lastHotsHaveTheirZone(kitchen),
    ...utensilsToLookAt(kitchen),
    ...ownCustomRests(kitchen),
    ...answersToLookAt(kitchen),
  ];
}
