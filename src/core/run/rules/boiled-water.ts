import type { Need, Step } from '../../plan/index.ts';
import { stepOf } from '../model/plan-index.ts';
import type { RunState, Timer } from '../model/state.ts';
import { isDue } from '../timers/timer.ts';
import type { Readings } from '../model/types.ts';

/** Does boiling water still leave the vessel in this stage or a later one? */
export function poursFrom(step: Step, stage: number): boolean {
  return step.stages.slice(stage).some(({ hazards }) => hazards.includes('boiling-water'));
}

/** Stopwatches of boiled water: from the boil to the last drop (I-23). */
function carries(state: RunState): readonly Timer[] {
  return Object.values(state.timers).filter(
    (timer) => timer.mode === 'running' && timer.stage === '',
  );
}

/**
 * Boiled water in a vessel, for a step that has not begun yet: nobody else may have the vessel. Once
 * it has stood too long it is of no use, and the vessel is free: two kettles that were boiled
 * ahead of their turn would else keep each other from the pours that come first, for ever.
 */
export type HeldVessel = {
  readonly boil: Step;
  readonly serves: Step;
  /** What both the boil and the step it serves demand, hands aside: the vessel itself. */
  readonly demands: Readonly<Record<string, number>>;
};

export function heldVessels(state: RunState): readonly HeldVessel[] {
  return carries(state)
    .filter((timer) => !timer.announced && state.steps[timer.step]?.status === 'waiting')
    .map((timer) => {
      const boil = stepOf(state.plan, timer.spec.id);
      const serves = stepOf(state.plan, timer.step);
      const shared = Object.entries(boil.demands)
        .filter(([id]) => id !== 'hands' && (serves.demands[id] ?? 0) > 0)
        .map(([id, wanted]) => [id, Math.min(wanted, serves.demands[id] ?? 0)] as const);
      return { boil, serves, demands: Object.fromEntries(shared) };
    });
}

/** The need of a step that is pouring now and whose water was boiled too long ago, if it is so. */
export function staleNeed(state: RunState, step: Step, now: Readings): Need | null {
  const one = state.steps[step.id];
  if (one?.status !== 'active' || !poursFrom(step, one.stage)) return null;
  const stale = carries(state).find(
    (timer) => timer.step === step.id && (timer.announced || isDue(timer, now)),
  );
  return step.needs.find((need) => need.step === stale?.spec.id) ?? null;
}
