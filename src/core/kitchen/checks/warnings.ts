import { problemAt, type KitchenWarning } from '../model/problem.ts';
import { answersToLookAt, ownCustomRests } from './own-custom.ts';
import type { Circuit, Kitchen, Vessel } from '../model/kitchen.ts';

/** Rated and mains voltage may differ by this share (IEC 60038 allows ±10 %) before we ask. */
const VOLTAGE_SLACK = 0.15;

/** Current of one electric vessel on a circuit: a resistance draws V/R, so W·V/V₀². */
function currentA(vessel: Vessel, circuit: Circuit): number {
  return (vessel.ratedW * circuit.voltsV) / vessel.ratedV ** 2;
}

function amperes(value: number): string {
  return `${value.toFixed(1)} A`;
}

/** A kettle too strong for its circuit trips it alone; several at once trip it together. */
function* loads(kitchen: Kitchen): Generator<KitchenWarning> {
  for (const [c, circuit] of kitchen.circuits.entries()) {
    let togetherA = 0;
    let tripsAlone = false;
    let count = 0;
    for (const [i, vessel] of kitchen.vessels.entries()) {
      if (vessel.circuit !== circuit.id) continue;
      const drawA = currentA(vessel, circuit);
      togetherA += drawA * vessel.count;
      count += vessel.count;
      if (drawA > circuit.ratingA) {
        tripsAlone = true;
        const found = `"${vessel.name}", which draws ${amperes(drawA)}`;
        const advice = 'It would trip the breaker: use another circuit or a weaker one.';
        yield problemAt(`vessels[${i}].circuit`, found, `at most ${circuit.ratingA} A`, advice);
      }
    }
    if (count > 1 && !tripsAlone && togetherA > circuit.ratingA) {
      const found = `${count} on "${circuit.name}", ${amperes(togetherA)} together`;
      const advice = 'They cannot boil at the same time there; the plan takes turns.';
      yield problemAt(`circuits[${c}]`, found, `at most ${circuit.ratingA} A at once`, advice);
    }
  }
}

function* voltages(kitchen: Kitchen): Generator<KitchenWarning> {
  for (const [i, vessel] of kitchen.vessels.entries()) {
    const circuit = kitchen.circuits.find(({ id }) => id === vessel.circuit);
    if (!circuit) continue;
    const off = Math.abs(vessel.ratedV - circuit.voltsV) / circuit.voltsV;
    if (off > VOLTAGE_SLACK) {
      const found = `${vessel.ratedV} V on a circuit of ${circuit.voltsV} V`;
      const allowed = `about ${circuit.voltsV} V`;
      yield problemAt(`vessels[${i}].ratedV`, found, allowed, 'Read the plate under it again.');
    }
  }
}

function* leftOpen(kitchen: Kitchen): Generator<KitchenWarning> {
  if (kitchen.fixtures.length === 0) {
    const advice = 'Describe what is in the kitchen; until then there is nothing to plan.';
    yield problemAt('fixtures', 'none', 'at least one fixture to plan', advice);
  }
  if (kitchen.vessels.length === 0) {
    const advice = 'Describe what boils the water, or nothing can be poured.';
    yield problemAt('vessels', 'none', 'at least one kettle, urn or pot', advice);
  }
  for (const [i, vessel] of kitchen.vessels.entries()) {
    const electric = vessel.kind === 'electric-kettle' || vessel.kind === 'urn';
    if (electric && vessel.circuit === undefined) {
      const advice = 'Say which circuit it is plugged into, or its load is not watched.';
      yield problemAt(`vessels[${i}].circuit`, 'nothing', 'the id of a circuit', advice);
    }
  }
  const { kind, flowLS } = kitchen.room.hood;
  if (kind === 'vented' && flowLS === 0) {
    const advice = 'Read the flow in the manual; until then it counts as no hood.';
    yield problemAt('room.hood.flowLS', '0', 'the flow of a vented hood in L/s', advice);
  }
  if (kind === 'none' && flowLS > 0) {
    const advice = 'Say "vented" or "recirculating", or take the flow out.';
    yield problemAt(
      'room.hood.kind',
      `"none" with a flow of ${flowLS} L/s`,
      'a kind of hood',
      advice,
    );
  }
}

function* cycles(kitchen: Kitchen): Generator<KitchenWarning> {
  for (const [i, fixture] of kitchen.fixtures.entries()) {
    if (fixture.kind === 'oven' && fixture.cleaning === 'none' && fixture.cycleMin !== undefined) {
      const found = `${fixture.cycleMin} for an oven that does not clean itself`;
      const advice = 'Take it out, or say "pyrolytic" if the oven has such a cycle.';
      yield problemAt(`fixtures[${i}].cycleMin`, found, 'no cycle', advice);
    }
  }
}

/** What a household should look at although the file can be used. */
export function warningsFor(kitchen: Kitchen): readonly KitchenWarning[] {
  return [
    ...loads(kitchen),
    ...voltages(kitchen),
    ...leftOpen(kitchen),
    ...cycles(kitchen),
    ...ownCustomRests(kitchen),
    ...answersToLookAt(kitchen),
  ];
}
