import { problemAt, type KitchenProblem } from '../model/problem.ts';
import type { Burner, Cooktop, Fixture, Kitchen, Vessel } from '../model/kitchen.ts';
import { missingReference } from './finding.ts';

type Named = { readonly path: string; readonly id: string };

/** Every burner with its path in the file. */
export function burnersOf(
  kitchen: Kitchen,
): readonly { readonly burner: Burner; readonly cooktop: Cooktop; readonly path: string }[] {
  return kitchen.fixtures.flatMap((fixture, i) =>
    fixture.kind === 'cooktop'
      ? fixture.burners.map((burner, j) => ({
          burner,
          cooktop: fixture,
          path: `fixtures[${i}].burners[${j}]`,
        }))
      : [],
  );
}

function everyId(kitchen: Kitchen): readonly Named[] {
  const plain = (list: readonly { readonly id: string }[], name: string): readonly Named[] =>
    list.map(({ id }, i) => ({ id, path: `${name}[${i}].id` }));
  return [
    ...plain(kitchen.circuits, 'circuits'),
    ...plain(kitchen.vessels, 'vessels'),
    ...plain(kitchen.fixtures, 'fixtures'),
    ...burnersOf(kitchen).map(({ burner, path }) => ({ id: burner.id, path: `${path}.id` })),
  ];
}

/** One id names one thing: plan, run and record speak of things by their id alone. */
export function* idsAreUnique(kitchen: Kitchen): Generator<KitchenProblem> {
  const first = new Map<string, string>();
  for (const { id, path } of everyId(kitchen)) {
    const earlier = first.get(id);
    if (earlier === undefined) first.set(id, path);
    else {
      const found = `${JSON.stringify(id)}, which ${earlier} has already`;
      const advice = `Give it another id, such as "${id.slice(0, 37)}-2".`;
      yield problemAt(path, found, 'an id that nothing else in the file has', advice);
    }
  }
}

/** A circuit that is named must exist. */
export function* circuitsExist(kitchen: Kitchen): Generator<KitchenProblem> {
  const known = kitchen.circuits.map(({ id }) => id);
  const users = [
    ...kitchen.vessels.map(({ circuit }, i) => ({ circuit, path: `vessels[${i}].circuit` })),
    ...kitchen.fixtures.map((fixture, i) => ({
      circuit: 'circuit' in fixture ? fixture.circuit : undefined,
      path: `fixtures[${i}].circuit`,
    })),
    ...burnersOf(kitchen).map(({ burner, path }) => ({
      circuit: burner.circuit,
      path: `${path}.circuit`,
    })),
  ];
  for (const { circuit, path } of users) {
    if (circuit !== undefined && !known.includes(circuit)) {
      yield missingReference(path, circuit, 'circuit', known);
    }
  }
}

function standsOnStove(vessel: Vessel): boolean {
  return vessel.kind === 'stove-kettle' || vessel.kind === 'pot';
}

/** What stands on the stove names its burner; what has a plug names none. */
export function* vesselsHaveTheirHeat(kitchen: Kitchen): Generator<KitchenProblem> {
  const known = burnersOf(kitchen).map(({ burner }) => burner.id);
  for (const [i, vessel] of kitchen.vessels.entries()) {
    const path = `vessels[${i}].burner`;
    if (vessel.burner !== undefined && !known.includes(vessel.burner)) {
      yield missingReference(path, vessel.burner, 'burner', known);
    } else if (standsOnStove(vessel) && vessel.burner === undefined) {
      const allowed = `the id of the burner it stands on: ${known.map((id) => `"${id}"`).join(', ') || 'none is described'}`;
      yield problemAt(path, 'nothing (it is missing)', allowed, 'Name the burner it is heated on.');
    } else if (!standsOnStove(vessel) && vessel.burner !== undefined) {
      const found = `a burner for an electric one (${vessel.kind})`;
      const advice = 'Take the burner out, or make it a "stove-kettle" or a "pot".';
      yield problemAt(path, found, 'no burner', advice);
    }
    if (standsOnStove(vessel) && vessel.circuit !== undefined) {
      const found = `a circuit for one on the stove (${vessel.kind})`;
      const advice = 'Take the circuit out, or make it an "electric-kettle" or an "urn".';
      yield problemAt(`vessels[${i}].circuit`, found, 'no circuit', advice);
    }
  }
}

/** An oven in a range names the cooktop above it. */
export function* rangesExist(kitchen: Kitchen): Generator<KitchenProblem> {
  const known = kitchen.fixtures.filter(({ kind }) => kind === 'cooktop').map(({ id }) => id);
  for (const [i, fixture] of kitchen.fixtures.entries()) {
    if (fixture.kind !== 'oven' || fixture.sharesRangeWith === undefined) continue;
    if (!known.includes(fixture.sharesRangeWith)) {
      const path = `fixtures[${i}].sharesRangeWith`;
      yield missingReference(path, fixture.sharesRangeWith, 'cooktop', known);
    }
  }
}

/** A rabbi's answer is about a fixture of this kitchen, and one fixture has one answer. */
export function* overridesHaveFixtures(kitchen: Kitchen): Generator<KitchenProblem> {
  const known = kitchen.fixtures.map(({ id }: Fixture) => id);
  const answered = new Map<string, number>();
  for (const [i, { fixture }] of kitchen.household.overrides.entries()) {
    const path = `household.overrides[${i}].fixture`;
    const earlier = answered.get(fixture);
    if (!known.includes(fixture)) yield missingReference(path, fixture, 'fixture', known);
    else if (earlier !== undefined) {
      const found = `a second answer about "${fixture}" (the first is overrides[${earlier}])`;
      yield problemAt(path, found, 'one answer a fixture', 'Keep the later answer only.');
    }
    answered.set(fixture, earlier ?? i);
  }
}
