import { message } from '../../messages/index.ts';
import { LIMITS } from '../model/limits.ts';
import { foundValue, problemAt, quotedList, type KitchenProblem } from '../model/problem.ts';
import type { Kitchen, Override } from '../model/kitchen.ts';
import { burnerPlaces } from '../queries/burners.ts';
import { possibleParts } from '../queries/parts.ts';
import { standsOnStove } from '../queries/vessels.ts';
import { missingReference } from './finding.ts';

/** Letters of an id before "-2" is put behind it. */
const STEM_LETTERS = LIMITS.idLetters.most - 3;

type Named = { readonly path: string; readonly id: string };

function everyId(kitchen: Kitchen): readonly Named[] {
  const plain = (list: readonly { readonly id: string }[], name: string): readonly Named[] =>
    list.map(({ id }, i) => ({ id, path: `${name}[${i}].id` }));
  return [
    ...plain(kitchen.circuits, 'circuits'),
    ...plain(kitchen.vessels, 'vessels'),
    ...plain(kitchen.fixtures, 'fixtures'),
    ...plain(kitchen.utensils ?? [], 'utensils'),
    ...plain(kitchen.room.openings ?? [], 'room.openings'),
    ...burnerPlaces(kitchen).map(({ burner, path }) => ({ id: burner.id, path: `${path}.id` })),
  ];
}

/** One id names one thing: plan, run and record speak of things by their id alone. */
export function* idsAreUnique(kitchen: Kitchen): Generator<KitchenProblem> {
  const first = new Map<string, string>();
  for (const { id, path } of everyId(kitchen)) {
    const earlier = first.get(id);
    if (earlier === undefined) first.set(id, path);
    else {
      yield problemAt(
        path,
        message('problems.id-twice.found', { id, earlier }),
        message('problems.id-twice.allowed'),
        message('problems.id-twice.advice', { example: `${id.slice(0, STEM_LETTERS)}-2` }),
      );
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
    ...burnerPlaces(kitchen).map(({ burner, path }) => ({
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

/** What stands on the stove names its burner; what has a plug names none. */
export function* vesselsHaveTheirHeat(kitchen: Kitchen): Generator<KitchenProblem> {
  const known = burnerPlaces(kitchen).map(({ burner }) => burner.id);
  for (const [i, vessel] of kitchen.vessels.entries()) {
    const path = `vessels[${i}].burner`;
    if (vessel.burner !== undefined && !known.includes(vessel.burner)) {
      yield missingReference(path, vessel.burner, 'burner', known);
    } else if (standsOnStove(vessel) && vessel.burner === undefined) {
      const allowed =
        known.length === 0
          ? message('problems.stove.no-burners')
          : message('problems.stove.burners', { ids: quotedList(known) });
      yield problemAt(path, foundValue(undefined), allowed, message('problems.stove.name'));
    } else if (!standsOnStove(vessel) && vessel.burner !== undefined) {
      const found = message('problems.electric.burner', { kind: vessel.kind });
      const allowed = message('problems.electric.no-burner');
      yield problemAt(path, found, allowed, message('problems.electric.advice'));
    }
    if (standsOnStove(vessel) && vessel.circuit !== undefined) {
      const found = message('problems.stove.circuit', { kind: vessel.kind });
      const allowed = message('problems.stove.no-circuit');
      const advice = message('problems.stove.advice');
      yield problemAt(`vessels[${i}].circuit`, found, allowed, advice);
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

/** What an answer speaks of: a whole fixture, or a row, burner or part of it. */
function aboutWhat({ fixture, row, burner, part }: Override): string {
  return [fixture, row ?? '', burner ?? '', part ?? ''].join('/');
}

/** A burner or a part that an answer names is one of its fixture. */
function* overrideIsOf(kitchen: Kitchen, { fixture: id, burner, part }: Override, at: string) {
  const fixture = kitchen.fixtures.find((one) => one.id === id);
  if (!fixture) return;
  const burners = fixture.kind === 'cooktop' ? fixture.burners.map((one) => one.id) : [];
  if (burner !== undefined && !burners.includes(burner))
    yield missingReference(`${at}.burner`, burner, 'burner', burners);
  const parts = possibleParts(fixture);
  if (part !== undefined && !parts.includes(part))
    yield missingReference(`${at}.part`, part, 'part', parts);
}

/** A rabbi's answer is about a fixture of this kitchen, and one thing has one answer. */
export function* overridesHaveFixtures(kitchen: Kitchen): Generator<KitchenProblem> {
  const known = kitchen.fixtures.map(({ id }) => id);
  const answered = new Map<string, number>();
  for (const [i, override] of kitchen.household.overrides.entries()) {
    const { fixture } = override;
    const path = `household.overrides[${i}].fixture`;
    const about = aboutWhat(override);
    const earlier = answered.get(about);
    if (!known.includes(fixture)) yield missingReference(path, fixture, 'fixture', known);
    else if (earlier !== undefined) {
      const found = message('problems.answers.found', { fixture, earlier });
      const allowed = message('problems.answers.allowed');
      yield problemAt(path, found, allowed, message('problems.answers.advice'));
    }
    answered.set(about, earlier ?? i);
    yield* overrideIsOf(kitchen, override, `household.overrides[${i}]`);
  }
}
