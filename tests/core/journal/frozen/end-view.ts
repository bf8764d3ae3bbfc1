import { view, type RunState } from '../../../../src/core/run/index.ts';

/** A time nobody can bound is no number in JSON. */
const bounded = (s: number): number | 'unbounded' => (Number.isFinite(s) ? s : 'unbounded');

/**
 * Names that a version had for what is called otherwise now. To version 1 a
 * fixture was done when its steps were over, also those that were stopped or
 * left out: a fault that later versions mend.
 */
const NAMES: Readonly<Record<1 | 2, Readonly<Record<string, string>>>> = {
  1: { unproved: 'doubtful', 'left-out': 'done', 'not-purged': 'done' },
  2: {},
};

/** How a run stands at its last fact, as a screen would see it: without sentences, and by names that are kept. */
export function endView(state: RunState, version: 1 | 2 = 2): unknown {
  const seen = view(state, state.clock.lastAt);
  return {
    status: seen.status,
    closedAs: seen.closedAs ?? null,
    facts: state.seq,
    done: `${seen.doneSteps} of ${seen.allSteps}`,
    steps: Object.fromEntries(
      seen.steps.map(({ step, status, outcome, attempt, stage, canConfirm }) => [
        step.id,
        { status, outcome: outcome ?? null, attempt, stage, canConfirm },
      ]),
    ),
    timers: Object.fromEntries(
      seen.timers.map(
        ({ id, step, purpose, status, lengthS, atLeastS, atMostS, alerting, cause }) => [
          id,
          {
            step,
            purpose,
            status: NAMES[version][status] ?? status,
            lengthS,
            atLeastS: bounded(atLeastS),
            atMostS: bounded(atMostS),
            alerting,
            cause,
          },
        ],
      ),
    ),
    fixtures: Object.fromEntries(
      seen.fixtures.map(({ id, phase }) => [id, NAMES[version][phase] ?? phase]),
    ),
    faults: seen.faults.map(({ kind, step, cleared }) => ({ kind, step: step ?? null, cleared })),
    review: seen.review.map(({ step, gapS }) => ({ step, gapS: bounded(gapS) })),
    askClock: seen.askClock,
    gates: Object.fromEntries(
      Object.values(state.gates).map(({ gate, scopeKey, value, overriddenBy }) => [
        `${gate} ${scopeKey}`,
        overriddenBy === '' ? value : `${value}, overridden`,
      ]),
    ),
    hot: seen.hot.map(({ step, hazard, confirmed }) => ({ step, hazard, confirmed })),
    wakeInS: seen.wakeInS,
    resumeBlocked: seen.resumeBlockedBy.length > 0,
    storageDown: seen.storageDown,
    startS: state.plan.timetable.startS,
  };
}
