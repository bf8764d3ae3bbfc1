import type { Step } from '../../plan/index.ts';
import type { RunState, StepState } from '../model/state.ts';
import type { FixturePhase } from '../model/types.ts';
import { isUndone } from '../rules/undone.ts';

type Pair = { readonly step: Step; readonly one: StepState };

/** Where every fixture of the kitchen stands, in one word each. */
export function fixturePhases(
  state: RunState,
): readonly { readonly id: string; readonly phase: FixturePhase }[] {
  const byFixture = new Map<string, Pair[]>();
  for (const step of state.plan.steps) {
    const one = state.steps[step.id];
    if (step.fixture === undefined || !one) continue;
    const pairs = byFixture.get(step.fixture) ?? [];
    pairs.push({ step, one });
    byFixture.set(step.fixture, pairs);
  }
  return state.plan.kitchen.fixtures.map(({ id }) => ({
    id,
    phase: phaseOf(state, byFixture.get(id)),
  }));
}

function phaseOf(state: RunState, pairs: readonly Pair[] | undefined): FixturePhase {
  if (!pairs || pairs.length === 0) return 'untouched';
  const begun = (pair: Pair): boolean =>
    pair.one.status === 'active' || pair.one.status === 'unwinding';
  const of = (...phases: Step['phase'][]): Pair[] =>
    pairs.filter(({ step }) => phases.includes(step.phase));
  const settled = (some: readonly Pair[]): boolean =>
    some.every(({ one }) => one.status === 'settled');

  const purge = of('purge');
  if (
    pairs.some(
      ({ step, one }) =>
        one.status === 'unwinding' || (step.kind === 'cool' && begun({ step, one })),
    )
  )
    return 'hot';
  if (purge.some(begun)) return 'purging';
  const before = of('prepare', 'clean');
  if (!settled(before)) return 'to-clean';
  const rest = of('rest');
  if (!settled(rest)) return rest.some(begun) ? 'resting' : 'to-clean';
  if (purge.some(({ step, one }) => one.status === 'settled' && isUndone(state, step)))
    return 'not-purged';
  if (!settled(purge))
    return purge.some(({ one }) => one.status === 'settled') ? 'purging' : 'ready';
  const cover = of('cover');
  const covered = cover.length > 0 && cover.every(({ one }) => one.outcome === 'done');
  if (covered) return 'covered';
  if (purge.some(({ one }) => one.outcome === 'skipped')) return 'left-out';
  return settled(cover) ? 'done' : 'ready';
}
