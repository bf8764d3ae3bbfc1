import type { Message } from '../../messages/index.ts';
import {
  runsThroughRestDays,
  type Plan,
  type RestDay,
  type Stage,
  type Step,
} from '../../plan/index.ts';
import { ASK_CLOCK_S } from '../model/constants.ts';
import { dependentsOf, needsMakeSafe } from '../model/plan-index.ts';
import { nextRestDay, restDayAt, rightWallMs } from './rest-days.ts';
import type { RunState, StepState } from '../model/state.ts';
import { apartS } from '../model/elapsed-interval.ts';
import { safeLeftS } from '../timers/timer.ts';
import type { Readings } from '../model/types.ts';

/**
 * Work that should end this little after a rest day begins is still let in, s.
 * A choice about clocks: a plan counts in typical durations, and the rate error
 * allowed to a device clock lets a 24-hour rest be proved up to 9 s late.
 */
const REACH_SLACK_S = 60;

const MS = 1000;

/**
 * Why work may not go on now: it is a rest day (I-19), it would reach into
 * one; or it is past the hour of leaven, or a purge would end after it (I-21).
 */
export type WorkObstacle = {
  readonly why: 'inside' | 'reaches';
  readonly what: 'rest-day' | 'deadline';
  readonly name: Message;
};

/**
 * Moments it may be now. A clock in doubt may be right as it shows, or it was
 * set and time went on as it was seen; no work begins that either forbids.
 */
function momentsMs(state: RunState, now: Readings): readonly number[] {
  const shownMs = rightWallMs(state, now);
  const { anchor, claimS, doubt } = state.clock;
  const sinceS = anchor.session === now.session ? apartS(anchor, now) : 0;
  const apart = (doubt ? claimS : 0) + sinceS;
  return doubt || Math.abs(apart) > ASK_CLOCK_S ? [shownMs, shownMs - apart * MS] : [shownMs];
}

/** Longest wait of a stage, s: what holds it, or what it is reckoned to take. */
function waitS({ timers }: Stage): number {
  return timers
    .filter(({ role }) => role === 'hold' || role === 'estimate')
    .reduce((longest, { lengthS }) => Math.max(longest, lengthS), 0);
}

/** Typical time from the beginning of a stage until the work can be left, s. */
function reachS(plan: Plan, step: Step, stage: number): number {
  const left = step.stages.slice(stage).map(waitS);
  const waitsS = left.reduce((sum, one) => sum + one, 0);
  const share = left.length / Math.max(1, step.stages.length);
  const own = stage > 0 && waitsS > 0 ? waitsS : step.durationS.typical * share;
  return own + atOnceS(plan, step);
}

/** What must follow at once (boiled water is poured), s. */
function atOnceS(plan: Plan, step: Step): number {
  const atOnce = dependentsOf(plan, step.id)
    .filter((one) => one.needs.some((need) => need.step === step.id && need.withinS !== undefined))
    .map((one) => one.durationS.typical);
  return Math.max(0, ...atOnce);
}

/**
 * The one guard of every way into work: what keeps a step from being at stage
 * `stage` from now on for `forS`, by the days the household keeps.
 */
function obstacleFor(
  state: RunState,
  step: Step,
  forS: number,
  now: Readings,
): WorkObstacle | null {
  const { plan } = state;
  if (plan.days === undefined) return null;
  for (const wallMs of momentsMs(state, now)) {
    const inside = restDayAt(plan, wallMs);
    if (inside) return { why: 'inside', what: 'rest-day', name: inside.name };
    const next = nextRestDay(plan, wallMs);
    if (next && !runsThroughRestDays(step) && reaches(next, wallMs, forS))
      return { why: 'reaches', what: 'rest-day', name: next.name };
    const { deadline } = plan.days;
    if (!deadline || step.phase !== 'purge') continue;
    const { name, atWallMs } = deadline;
    if (wallMs >= atWallMs) return { why: 'inside', what: 'deadline', name };
    if (reaches({ fromWallMs: atWallMs }, wallMs, forS))
      return { why: 'reaches', what: 'deadline', name };
  }
  return null;
}

function reaches({ fromWallMs }: Pick<RestDay, 'fromWallMs'>, wallMs: number, s: number): boolean {
  return s > (fromWallMs - wallMs) / MS + REACH_SLACK_S;
}

/** Why a step may not begin now; what starts by itself may be a measure of what goes on anyway. */
export function startObstacle(
  state: RunState,
  step: Step,
  now: Readings,
  by: 'person' | 'chain',
): WorkObstacle | null {
  const measures = by === 'chain' && (step.kind === 'rest' || step.kind === 'cool');
  if (measures && step.attention === 'none') return null;
  return obstacleFor(state, step, reachS(state.plan, step, 0), now);
}

/** Only heat off, the kettle down or cold water is left from this stage on: that is always let. */
function onlyEnds(step: Step, hot: number, from: number): boolean {
  return needsMakeSafe(step, hot) && step.stages.slice(from).every((stage) => waitS(stage) === 0);
}

/** Why a step in progress may not enter its next stage (or, restarted, an earlier one). */
export function stageObstacle(
  state: RunState,
  step: Step,
  { stage: current }: StepState,
  stage: number,
  now: Readings,
): WorkObstacle | null {
  if (stage >= step.stages.length || runsThroughRestDays(step)) return null;
  if (stage > current && onlyEnds(step, current, stage)) return null;
  return obstacleFor(state, step, reachS(state.plan, step, stage), now);
}

/** Why the run may not go on: some work in progress would lie in a rest day. */
export function goOnObstacle(state: RunState, now: Readings): WorkObstacle | null {
  for (const step of state.plan.steps) {
    const one = state.steps[step.id];
    const stage = one && step.stages[one.stage];
    if (one?.status !== 'active' || !stage || runsThroughRestDays(step)) continue;
    if (onlyEnds(step, one.stage, one.stage)) continue;
    const waits = Object.values(state.timers).filter(
      (timer) =>
        timer.mode === 'running' &&
        timer.step === step.id &&
        timer.stage === stage.id &&
        (timer.spec.role === 'hold' || timer.spec.role === 'estimate'),
    );
    const leftS = waits.reduce((longest, timer) => Math.max(longest, safeLeftS(timer, now)), 0);
    const doneS = waits.length > 0 ? waitS(stage) - leftS : 0;
    const obstacle = obstacleFor(
      state,
      step,
      reachS(state.plan, step, one.stage) - Math.max(0, doneS),
      now,
    );
    if (obstacle) return obstacle;
  }
  return null;
}
