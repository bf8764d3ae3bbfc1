import { customRowIds, methodsForFixture, methodsForRow } from '../queries/custom-rows.ts';
import { didYouMean } from '../codec/nearest.ts';
import { problemAt, type KitchenProblem, type KitchenWarning } from '../model/problem.ts';
import type { Kitchen, MethodId } from '../model/kitchen.ts';

function listed(words: readonly string[]): string {
  return words.map((word) => `"${word}"`).join(', ');
}

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
      const allowed = `a row of the ${own.basedOn} custom: ${listed(known)}`;
      const advice = didYouMean(row, known, 'Use one of these rows.');
      yield problemAt(`${path}.row`, JSON.stringify(row), allowed, advice);
    } else if (earlier !== undefined) {
      const found = `"${row}" a second time (the first is changedRows[${earlier}])`;
      yield problemAt(`${path}.row`, found, 'each row once', 'Keep the later change only.');
    } else if (!possible.includes(method)) {
      const advice = didYouMean(method, possible, 'Use one of these methods for this row.');
      yield problemAt(`${path}.method`, JSON.stringify(method), listed(possible), advice);
    } else if (coverless(method, cover)) {
      const advice = 'Take "cover" out, or choose another method.';
      yield problemAt(`${path}.cover`, 'false', `true beside the method "${method}"`, advice);
    }
    changed.set(row, earlier ?? i);
  }
}

/** A custom of one's own that rests while the household follows another. */
export function* ownCustomRests({ household }: Kitchen): Generator<KitchenWarning> {
  const own = household.ownCustom;
  if (!own || own.basedOn === household.custom) return;
  const found = `"${own.name}", copied from ${own.basedOn}, while the household follows ${household.custom}`;
  const advice = `It is kept and not used; follow ${own.basedOn} again to use it.`;
  yield problemAt('household.ownCustom.basedOn', found, `"${household.custom}"`, advice);
}

/** An answer that nobody would expect for its fixture: it is followed, and to be looked at. */
export function* answersToLookAt(kitchen: Kitchen): Generator<KitchenWarning> {
  for (const [i, { fixture: id, method }] of kitchen.household.overrides.entries()) {
    const fixture = kitchen.fixtures.find((one) => one.id === id);
    if (!fixture) continue;
    const usual = methodsForFixture(fixture);
    if (usual.includes(method)) continue;
    const path = `household.overrides[${i}].method`;
    const advice = 'Ask again whether this was meant; the plan follows it as far as it can.';
    yield problemAt(path, `"${method}" for "${fixture.name}"`, listed(usual), advice);
  }
}
