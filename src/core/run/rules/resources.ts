import { asWritten } from '../../messages/index.ts';
import type { Plan, Resource, Step } from '../../plan/index.ts';
import { heldVessels } from './boiled-water.ts';
import type { RunState } from '../model/state.ts';
import type { Readings } from '../model/types.ts';
import { isHold, safeLeftS } from '../timers/timer.ts';

/** A resource that a step cannot have now, and who has it. */
export type Shortage = {
  readonly resource: Resource;
  readonly usedBy: readonly Step[];
  readonly used: number;
  readonly wanted: number;
};

/** Sums of decimal amperes carry rounding; a thousandth is no shortage. */
const ROUNDING = 1e-6;

/** One look at all steps serves every question about the same state. */
const begunIn = new WeakMap<RunState['steps'], readonly Step[]>();

/** Steps begun and not settled: they hold what they demand. */
export function begunSteps(state: RunState): readonly Step[] {
  const known = begunIn.get(state.steps);
  if (known) return known;
  const begun = state.plan.steps.filter((step) => {
    const status = state.steps[step.id]?.status;
    return status === 'active' || status === 'unwinding';
  });
  begunIn.set(state.steps, begun);
  return begun;
}

/** What a pour takes that a boil does not: the place that is poured, and the eyes. */
const OF_A_POUR: ReadonlySet<Resource['kind']> = new Set(['place', 'watch']);

/**
 * Water is not boiled for a pour that something hot beside it, or a burner that
 * only this person can watch, would keep waiting: it would be boiled in vain.
 * Other pours end within minutes and are waited for.
 */
export function shortagesOfPour(state: RunState, step: Step, now: Readings): readonly Shortage[] {
  const pour = pourOf(state.plan, step);
  if (!pour) return [];
  return state.plan.resources.flatMap((resource): Shortage[] => {
    const wanted = pour.demands[resource.id] ?? 0;
    if (!OF_A_POUR.has(resource.kind) || wanted <= 0) return [];
    const usedBy = begunSteps(state).filter(
      (other) =>
        other.kind !== 'pour' &&
        (other.demands[resource.id] ?? 0) > 0 &&
        !coolsBy(state, other, step.durationS.low, now),
    );
    const used = usedBy.reduce((sum, { demands }) => sum + (demands[resource.id] ?? 0), 0);
    return used + wanted > resource.capacity + ROUNDING ? [{ resource, usedBy, used, wanted }] : [];
  });
}

/** A cool-down that is over before the water boils does not keep it waiting. */
function coolsBy(state: RunState, { id, kind }: Step, withinS: number, now: Readings): boolean {
  if (kind !== 'cool') return false;
  const holds = Object.values(state.timers).filter((timer) => timer.step === id && isHold(timer));
  return holds.every((timer) => safeLeftS(timer, now) <= withinS);
}

/** The pour that a boil is for. */
function pourOf({ steps }: Plan, { id, kind }: Step): Step | undefined {
  if (kind !== 'boil') return undefined;
  return steps.find(
    (one) =>
      one.kind === 'pour' &&
      one.needs.some((need) => need.step === id && need.withinS !== undefined),
  );
}

/** What is missing for a step to start beside what has begun (I-11); a vessel full of boiled water is in use (I-23). */
export function shortages(
  state: RunState,
  step: Step,
  begun: readonly Step[] = begunSteps(state),
): readonly Shortage[] {
  const found: Shortage[] = [];
  const held = heldVessels(state).filter(
    ({ boil, serves }) => boil.id !== step.id && serves.id !== step.id,
  );
  for (const [id, wanted] of Object.entries(step.demands)) {
    if (wanted <= 0) continue;
    const resource = state.plan.resources.find((one) => one.id === id) ?? {
      id,
      kind: 'vessel' as const,
      name: asWritten(id),
      capacity: 0,
      unit: asWritten(''),
    };
    const busy = begun.filter((other) => other.id !== step.id && (other.demands[id] ?? 0) > 0);
    const full = held.filter(({ demands }) => (demands[id] ?? 0) > 0);
    const usedBy = [...busy, ...full.map(({ boil }) => boil)];
    const used =
      busy.reduce((sum, other) => sum + (other.demands[id] ?? 0), 0) +
      full.reduce((sum, { demands }) => sum + (demands[id] ?? 0), 0);
    if (used + wanted > resource.capacity + ROUNDING)
      found.push({ resource, usedBy, used, wanted });
  }
  return found;
}
