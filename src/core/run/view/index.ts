import { isSaid } from '../model/reason.ts';
import { message, type Message } from '../../messages/index.ts';
import type { Step } from '../../plan/index.ts';
import { failedAlarms } from '../rules/alarms.ts';
import { resumeObstacles } from '../decide/control.ts';
import { ALLOWED } from '../decide/refusal.ts';
import { needsPassed } from '../decide/review.ts';
import { policyOf } from '../rules/faults.ts';
import { indexOf, needsMakeSafe, owesCold, stageOf, coldStage } from '../model/plan-index.ts';
import { nextRestDay, restDayAt, rightWallMs } from '../rules/rest-days.ts';
import type { RunState } from '../model/state.ts';
import { clockQuestion } from '../timers/unproved-time.ts';
import { coolingViews } from '../timers/cooling.ts';
import { missingS } from '../timers/clock-word.ts';
import type { FaultView, HotView, Readings, RunView, StepView } from '../model/types.ts';
import { standingGaps } from '../rules/undone.ts';
import { timerViews, wakeInS } from './timers.ts';
import { fixturePhases } from './fixtures.ts';
import { stepView } from './steps.ts';

/**
 * Everything a screen needs at this moment, derived from the state and the
 * readings; nothing is stored, and nothing in it can change the state.
 */
export function view(state: RunState, readings: Readings): RunView {
  const steps = state.plan.steps.map((step) => stepView(state, step, readings));
  const settled = steps.filter((step) => step.status === 'settled').length;
  return {
    status: state.status,
    ...(!isSaid(state.reason) ? {} : { reason: state.reason }),
    ...(state.closedAs === null ? {} : { closedAs: state.closedAs }),
    plan: state.plan,
    steps,
    currentSteps: forStage(state, steps),
    timers: timerViews(state, readings),
    hot: hotViews(state),
    faults: state.faults.map((fault) => faultView(state, fault)),
    coolings: coolingViews(state, readings),
    review: state.questions.map(({ id, step, ask, gapS }) => ({ id, step, ask, gapS })),
    reviewAnswers: ALLOWED['withdraw-review-answer'].includes(state.status)
      ? standingGaps(state).map(({ id, step, ask }) => ({ id, step, ask }))
      : [],
    askClock: clockQuestion(state),
    ...clockAsked(state, readings),
    canWithdrawClock:
      state.clock.answers.length > 0 && ALLOWED['withdraw-clock-answer'].includes(state.status),
    ...(state.doubt && { usedToTakeBack: state.doubt.fixture }),
    fixtures: fixturePhases(state),
    wakeInS: wakeInS(state, readings),
    doneSteps: settled,
    allSteps: steps.length,
    resumeBlockedBy:
      state.status === 'held' || state.status === 'suspended' || state.status === 'reviewing'
        ? resumeObstacles(state, readings).map((one) => one.message)
        : [],
    storageDown: state.storageDown,
    ...restDays(state, readings),
    alarmsFailed: failedAlarms(state),
  };
}

/** What is to be asked about the wall clock. */
function clockAsked(state: RunState, now: Readings): Pick<RunView, 'clockQuestion'> {
  if (!clockQuestion(state)) return {};
  return {
    clockQuestion: {
      shownWallMs: now.wallMs,
      missingS: Math.max(0, missingS(state.clock, 0)),
      needsPassed: needsPassed(state, 0),
    },
  };
}

/** The rest day that is now, and the next one. */
function restDays(
  state: RunState,
  now: Readings,
): Pick<RunView, 'restDay' | 'nextRestDay' | 'deadline'> {
  const wallMs = rightWallMs(state, now);
  const day = restDayAt(state.plan, wallMs);
  const next = nextRestDay(state.plan, wallMs);
  const inS = (ms: number): number => (ms - wallMs) / 1000;
  const deadline = state.plan.days?.deadline;
  return {
    ...(deadline && {
      deadline: {
        ...deadline,
        leftS: Math.max(0, inS(deadline.atWallMs)),
        hardLeftS: Math.max(0, inS((deadline.hard ?? deadline).atWallMs)),
      },
    }),
    ...(day && {
      restDay: { name: day.name, toWallMs: day.toWallMs, leftS: inS(day.toWallMs) },
    }),
    ...(next && {
      nextRestDay: { ...next, inS: inS(next.fromWallMs), overInS: inS(next.toWallMs) },
    }),
  };
}

/**
 * Nothing but a person's press holds up work that goes on by itself: an oven to
 * be started or opened. It is one touch, and goes before what hands are full of.
 */
function pressIsDue({ step, stage, timers, canConfirm }: StepView): boolean {
  if (!canConfirm || step.attention === 'hands') return false;
  const waits = timers.filter(
    (timer) => timer.stage !== '' && (timer.role === 'hold' || timer.role === 'estimate'),
  );
  const over = waits.every(({ status }) => status === 'due' || status === 'late');
  return over && step.stages[stage]?.say !== undefined;
}

/** How loudly a step asks for a person: lower is sooner; null: it does not. */
function urgency(step: StepView): number | null {
  if (step.timers.some((clock) => clock.alerting)) return 0;
  switch (step.status) {
    case 'unwinding':
      return 1;
    case 'checking':
    case 'stalled':
      return 2;
    case 'active':
      if (pressIsDue(step)) return 2;
      if (step.step.attention === 'hands') return 3;
      return step.step.attention === 'watch' || step.canConfirm ? 4 : null;
    case 'ready':
      return 5;
    case 'settled':
      return step.again ? 5 : null;
    case 'waiting':
      return null;
  }
}

function forStage(state: RunState, steps: readonly StepView[]): readonly StepView[] {
  if (state.status === 'closed') return [];
  const { order } = indexOf(state.plan);
  return steps
    .map((step) => ({ step, rank: urgency(step) }))
    .filter((one): one is { step: StepView; rank: number } => one.rank !== null)
    .toSorted(
      (a, b) =>
        a.rank - b.rank || (order.get(a.step.step.id) ?? 0) - (order.get(b.step.step.id) ?? 0),
    )
    .map(({ step }) => step);
}

/** How a step in progress is made safe; boiling water poured gets its cold water first (I-18). */
function makeSafeMessage(step: Step, stage: number): Message {
  const makeSafe = step.makeSafe ?? message('engine.step.make-safe', { step: step.title });
  const cold = owesCold(step, stage) ? step.stages[coldStage(step)]?.title : undefined;
  return cold ? message('engine.step.make-safe-cold', { makeSafe, cold }) : makeSafe;
}

/** What is hot now and how it is made safe; while stopping, also what has been made safe. */
function hotViews(state: RunState): readonly HotView[] {
  const hot: HotView[] = [];
  const stopping = state.status === 'closing' || state.status === 'closed';
  for (const step of state.plan.steps) {
    const one = state.steps[step.id];
    const begun = one?.status === 'active' || one?.status === 'unwinding';
    const madeSafe = stopping && one?.status === 'settled' && one.safe;
    if (!one || !(madeSafe || (begun && needsMakeSafe(step, one.stage)))) continue;
    hot.push({
      step: step.id,
      hazard: stageOf(step, one.stage)?.hazards[0] ?? 'boiling-water',
      makeSafe: makeSafeMessage(step, one.stage),
      confirmed: one.safe,
    });
  }
  return hot;
}

function faultView(state: RunState, fault: RunState['faults'][number]): FaultView {
  const { name, doThis } = policyOf(state.plan, fault.kind);
  return {
    id: fault.id,
    kind: fault.kind,
    name,
    ...(fault.step === null ? {} : { step: fault.step }),
    doThis,
    cleared: fault.cleared,
  };
}
