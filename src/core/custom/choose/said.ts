import { message, type Message } from '../../messages/index.ts';
import type { Fixture, Kitchen, MethodId, Override } from '../../kitchen/index.ts';

/** The row under which the rest before heat is asked about; in no table. */
export const REST_ROW = 'rest-before-fire';

/** What was said about a fixture as a whole, or about a row of it; not about a burner or a part. */
export function saidOf(fixture: Fixture, kitchen: Kitchen): readonly Override[] {
  return kitchen.household.overrides.filter(
    (one) => one.fixture === fixture.id && one.burner === undefined && one.part === undefined,
  );
}

/** By whose word, and when. */
export function saidBy(said: Pick<Override, 'saidBy' | 'saidOn'>): Message {
  return message('custom.said-by', { saidBy: said.saidBy, saidOn: said.saidOn });
}

/** Does this way end under a cover by itself? */
export function endsCovered(method: MethodId): boolean {
  return method === 'cover' || method === 'line';
}

/** An answer cannot make every fixture glow: an oven without a cycle that burns out does not. */
export function cannotGlow(fixture: Fixture, method: MethodId): boolean {
  return method === 'glow' && fixture.kind === 'oven' && fixture.cleaning !== 'pyrolytic';
}
