import { message } from '../../messages/index.ts';
import { customRowIds, methodsForFixture, methodsForRow } from '../queries/custom-rows.ts';
import { didYouMean } from '../codec/nearest.ts';
import {
  foundValue,
  problemAt,
  quoted,
  quotedList,
  type KitchenProblem,
  type KitchenWarning,
} from '../model/problem.ts';
import type { Kitchen, MethodId } from '../model/kitchen.ts';
import { fixtureOf } from '../queries/fixtures.ts';

/** A way that ends under a cover cannot end without one. */
function coverless(method: MethodId, cover: boolean | undefined): boolean {
  return cover === false && (method === 'cover' || method === 'line');
}

/** A custom of one's own changes rows that exist, each once, to methods that they can have. */
export function* ownCustomHolds(kitchen: Kitchen): Generator<KitchenProblem> {
  const own = kitchen.household.ownCustom;
  if (!own) return;
  const known = customRowIds(own.basedOn);
  const changed = new Map<string, number>();
  for (const [i, { row, method, cover }] of own.changedRows.entries()) {
    const path = `household.ownCustom.changedRows[${i}]`;
    const earlier = changed.get(row);
    const possible = methodsForRow(own.basedOn, row);
    if (!known.includes(row)) {
      const allowed = message(`problems.own-row.${own.basedOn}`, { rows: quotedList(known) });
      const advice = didYouMean(row, known, message('problems.own-row.use-one'));
      yield problemAt(`${path}.row`, quoted(row), allowed, advice);
    } else if (earlier !== undefined) {
      const found = message('problems.own-row-twice.found', { row, earlier });
      const allowed = message('problems.own-row-twice.allowed');
      yield problemAt(`${path}.row`, found, allowed, message('problems.own-row-twice.advice'));
    } else if (!possible.includes(method)) {
      const advice = didYouMean(method, possible, message('problems.own-row.use-method'));
      yield problemAt(`${path}.method`, quoted(method), quotedList(possible), advice);
    } else if (coverless(method, cover)) {
      const allowed = message('problems.own-cover.allowed', { method });
      const advice = message('problems.own-cover.advice');
      yield problemAt(`${path}.cover`, foundValue(cover), allowed, advice);
    }
    changed.set(row, earlier ?? i);
  }
}

/** A custom of one's own that rests while the household follows another. */
export function* ownCustomRests({ household }: Kitchen): Generator<KitchenWarning> {
  const own = household.ownCustom;
  if (!own || own.basedOn === household.custom) return;
  const { name, basedOn } = own;
  yield problemAt(
    'household.ownCustom.basedOn',
    message('problems.own-rests.found', { name, basedOn, followed: household.custom }),
    quoted(household.custom),
    message('problems.own-rests.advice', { basedOn }),
  );
}

/** An answer that nobody would expect for its fixture: it is followed, and to be looked at. */
export function* answersToLookAt(kitchen: Kitchen): Generator<KitchenWarning> {
  for (const [i, { fixture: id, method }] of kitchen.household.overrides.entries()) {
    const fixture = fixtureOf(kitchen, id);
    if (!fixture) continue;
    const usual = methodsForFixture(fixture);
    if (usual.includes(method)) continue;
    const path = `household.overrides[${i}].method`;
    const found = message('problems.unusual-answer.found', { method, fixture: fixture.name });
    const advice = message('problems.unusual-answer.advice');
    yield problemAt(path, found, quotedList(usual), advice);
  }
}
