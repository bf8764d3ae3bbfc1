import {
  partsOf,
  type Fixture,
  type Kitchen,
  type MethodId,
  type PartId,
} from '../../kitchen/index.ts';
import { message } from '../../messages/index.ts';
import type { ChosenPart, ChosenQuestion, PartRow } from '../model/types.ts';
import { citation, sourceState } from '../table/sources.ts';
import { PART_ROWS } from '../table/tables.ts';
import { endsCovered, saidBy } from './said.ts';

function holds<T>(list: readonly T[] | undefined, value: T | undefined): boolean {
  return list === undefined || (value !== undefined && list.includes(value));
}

/** @throws RangeError when the table has no row for a part */
function rowOf(fixture: Fixture, part: PartId, { household }: Kitchen): PartRow {
  const row = PART_ROWS.find(
    (one) =>
      one.parts.includes(part) &&
      holds(one.customs, household.custom) &&
      holds(one.purposes, household.purpose) &&
      holds(one.surfaces, fixture.kind === 'cooktop' ? fixture.surface : undefined) &&
      holds(one.cleaning, fixture.kind === 'oven' ? fixture.cleaning : undefined) &&
      (one.racksStayInCycle === undefined ||
        (fixture.kind === 'oven' && fixture.racksStayInCycle === one.racksStayInCycle)),
  );
  if (!row) throw new RangeError(`part is "${part}"; allowed: one with a row in parts. Add it.`);
  return row;
}

/** Ways in which a fixture's own purge reaches its parts. */
const REACHES: Readonly<Partial<Record<Fixture['kind'], readonly MethodId[]>>> = {
  cooktop: ['glow', 'light-heat'],
  oven: ['self-clean', 'light-heat'],
  sink: ['pour'],
};

/** Is it done in the step of its fixture? A burner heats whatever grate stands over it. */
function isWithin({ kind }: Fixture, own: MethodId, method: MethodId): boolean {
  const reaches = REACHES[kind] ?? [];
  if (!reaches.includes(method)) return false;
  return kind === 'cooktop' ? reaches.includes(own) : own === method;
}

/** A part that its fixture's purge would have reached, in a fixture that is not so purged. */
function notReached(own: MethodId): MethodId {
  return own === 'clean' || endsCovered(own) ? 'clean' : 'not-purged';
}

/** What is done about the parts of a fixture that gets this method, and what is asked about them. */
function choosePart(
  fixture: Fixture,
  part: PartId,
  own: MethodId,
  kitchen: Kitchen,
): { readonly chosen: ChosenPart; readonly question?: ChosenQuestion } {
  const row = rowOf(fixture, part, kitchen);
  const said = kitchen.household.overrides.findLast(
    (one) => one.fixture === fixture.id && one.part === part,
  );
  const wanted = said?.method ?? row.method;
  const within = isWithin(fixture, own, wanted);
  const method = said || within || !row.within ? wanted : notReached(own);
  const asked = said || method !== wanted ? undefined : row.question;
  const question = asked && {
    id: `ask-${fixture.id}-${part}`,
    fixture: fixture.id,
    part,
    ...asked,
  };
  const minutes = said?.minutes ?? (method === row.method ? row.minutes : undefined);
  return {
    chosen: {
      part,
      method,
      within,
      ...(minutes !== undefined && { minutes }),
      reason: method === wanted ? row.reason : message('custom.part.not-reached.reason'),
      source: said ? saidBy(said) : citation(row.source, row.alsoSources),
      sourceState: said ? 'said' : sourceState(row.source),
      ...(said && { overriddenBy: saidBy(said) }),
      ...(question && { question: question.id }),
    },
    ...(question && { question }),
  };
}

/** The same for every part that a fixture has. */
export function chooseParts(fixture: Fixture, own: MethodId, kitchen: Kitchen) {
  return partsOf(fixture).map((part) => choosePart(fixture, part, own, kitchen));
}
