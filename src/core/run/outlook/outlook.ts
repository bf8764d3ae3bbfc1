import { endOf, replanned, type Standing } from '../../plan/index.ts';
import type { Message } from '../../messages/index.ts';
import { MS_PER_SECOND } from '../../units/index.ts';
import type { RunView, StepView } from '../model/types.ts';
import { expectedTimes, heldS, isBegun } from '../view/expected-times.ts';

/** When a run is expected to end, by what really happened. It guards nothing: only the engine says what may begin. */
export type Outlook = {
  /** ms since 1970-01-01 UTC. */
  readonly endMs: number;
  /** Sooner than the plan by, s; below 0: later. */
  readonly aheadS: number;
  /** No order was found by which the plan could go on; one thing after the other it ends about then. */
  readonly about: boolean;
  /** What decides the end now, the longest first; none where it is only about then. */
  readonly decided: readonly Message[];
};

/** Done or left out for good; what was stopped or failed is still to be done. */
function isOver({ status, again }: StepView): boolean {
  return status === 'settled' && !again;
}

/** How long a begun step goes on, s: by its clocks, and by its usual length where hands or eyes are at it. */
function leftS(one: StepView, nowMs: number): number {
  const { step, status, begunWallMs = nowMs } = one;
  if (status === 'unwinding') return 0;
  const byClockS = heldS(one);
  if (step.attention === 'none' && byClockS !== undefined) return byClockS;
  const goneS = Math.max(0, nowMs - begunWallMs) / MS_PER_SECOND;
  return Math.max(byClockS ?? 0, step.durationS.typical - goneS, 0);
}

/** Where every step of a run stands. A boil whose water stood too long is to be done again. */
function standingOf({ steps }: RunView, nowMs: number): Standing {
  const stale = new Set(
    steps
      .filter(({ status, timers }) => status === 'stalled' && timers.length === 0)
      .flatMap(({ step }) => step.needs.filter(({ withinS }) => withinS !== undefined))
      .map(({ step }) => step),
  );
  return {
    nowMs,
    over: new Set(
      steps.filter((one) => isOver(one) && !stale.has(one.step.id)).map(({ step }) => step.id),
    ),
    runningS: new Map(
      steps.filter(isBegun).map((one) => [one.step.id, leftS(one, nowMs)] as const),
    ),
  };
}

/**
 * When all of a run is over and by how much that differs from its plan, as it was when the run
 * began or when it was changed last: the rest is planned again from what is done and what runs.
 * As long as a plan: not for every tick.
 * @param nowMs ms since 1970-01-01 UTC
 * @returns undefined where the plan knows no days: then there is no hour to hold it against
 */
export function outlookOf(view: RunView, nowMs: number): Outlook | undefined {
  const { plan } = view;
  if (!plan.days) return undefined;
  const plannedMs = plan.days.startWallMs + endOf(plan) * MS_PER_SECOND;
  const again = replanned(plan, standingOf(view, nowMs));
  const ends = [...expectedTimes(view, nowMs, { timetableMs: plan.days.startWallMs }).values()];
  const endMs = again
    ? plan.days.startWallMs + again.finishS * MS_PER_SECOND
    : Math.max(nowMs, ...ends.map((time) => time.endMs));
  return {
    endMs,
    aheadS: (plannedMs - endMs) / MS_PER_SECOND,
    about: !again,
    decided: again?.decided ?? [],
  };
}
