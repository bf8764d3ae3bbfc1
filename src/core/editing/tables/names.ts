import { burnersOf, LIMITS, type Fixture, type Kitchen } from '../../kitchen/index.ts';

const LONGEST_ID = LIMITS.idLetters.most;
const LONGEST_NAME = LIMITS.nameLetters.most;

/** Every id a kitchen uses: circuits, vessels, fixtures, burners. */
export function idsOf(kitchen: Kitchen): ReadonlySet<string> {
  return new Set([
    ...kitchen.circuits.map(({ id }) => id),
    ...kitchen.vessels.map(({ id }) => id),
    ...kitchen.fixtures.map(({ id }) => id),
    ...burnersOf(kitchen).map(({ id }) => id),
    ...(kitchen.room.openings ?? []).map(({ id }) => id),
  ]);
}

/** `base`, or `base-2`, `base-3` …: the first that is free, within the length an id may have. */
export function freeId(taken: ReadonlySet<string>, base: string): string {
  const stem = base.replace(/-\d+$/, '');
  if (!taken.has(base)) return base.slice(0, LONGEST_ID);
  for (let n = 2; ; n += 1) {
    const tail = `-${n}`;
    const id = stem.slice(0, LONGEST_ID - tail.length) + tail;
    if (!taken.has(id)) return id;
  }
}

/** "Sink", then "Sink 2": the first name nothing in the list has. */
export function freeName(taken: readonly string[], base: string): string {
  if (!taken.includes(base)) return base;
  const stem = base.replace(/ \d+$/, '');
  for (let n = 2; ; n += 1) {
    const tail = ` ${n}`;
    const name = [...stem].slice(0, LONGEST_NAME - tail.length).join('') + tail;
    if (!taken.includes(name)) return name;
  }
}

/** The kitchen with some fixtures put in the place of those with the same ids. */
export function withFixtures(kitchen: Kitchen, changed: readonly Fixture[]): Kitchen {
  if (changed.length === 0) return kitchen;
  const byId = new Map(changed.map((fixture) => [fixture.id, fixture]));
  return { ...kitchen, fixtures: kitchen.fixtures.map((old) => byId.get(old.id) ?? old) };
}
