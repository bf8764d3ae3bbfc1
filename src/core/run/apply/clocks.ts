import { message } from '../../messages/index.ts';
import type { Stage } from '../../plan/index.ts';
import type { FactBody } from '../model/facts.ts';
import { lapseGates } from '../rules/gates.ts';
import { stageNumber, stepOf } from '../model/plan-index.ts';
import type { OpenQuestion, RunState, StepState, Timer } from '../model/state.ts';
import {
  clockQuestion,
  closeGap,
  doubtClock,
  leaveInDoubt,
  reanchor,
} from '../timers/unproved-time.ts';
import { apartS, gainInSession, gainOverGap, type Gain } from '../model/elapsed-interval.ts';
import { isAlarm } from '../timers/timer.ts';
import { answerClock } from '../timers/clock-word.ts';
import type { Readings } from '../model/types.ts';
import { standingGaps } from '../rules/undone.ts';
import { changeTimers, known } from './change.ts';
import { breakOff, leaveReview } from './run.ts';

type Body<K extends FactBody['kind']> = Extract<FactBody, { kind: K }>;

/** The clocks of one session came apart: sleep, or a clock set. */
export function applyClocks(state: RunState, at: Readings, seq: number): RunState {
  const claimS = apartS(state.clock.anchor, at);
  const moved = reanchor(state, (anchor) => gainInSession(anchor, at), at);
  const clock = { ...doubtClock(moved.clock, claimS, true), anchor: at };
  const anchored = { ...moved, clock };
  if (claimS <= 0) return anchored;
  return openReview(lapseGates(anchored, claimS), claimS, seq, false);
}

/** A page opened on this run: everything since the last proof of life is a gap. */
export function applySession(
  state: RunState,
  body: Body<'session-opened'>,
  at: Readings,
  seq: number,
): RunState {
  const alive = lastAlive(state, body.lastHeartbeat);
  const gainFrom = (anchor: Readings): Gain =>
    gainOverGap(anchor, alive, at, state.notBeforeWallMs);
  const gap = gainFrom(alive);
  const plausible = gap.bound === 'finite';
  const moved = reanchor(state, gainFrom, at);
  const { claimS } = gainFrom(state.clock.anchor);
  // The clock may have been set while no page was there, by as much as nobody notices: the next word about it
  // must say whether the time has passed (I-20).
  const doubted = doubtClock(moved.clock, claimS, plausible);
  const clock = { ...doubted, anchor: at, confirmed: false };
  const anchored: RunState = { ...moved, clock };
  const lapsed = lapseGates(anchored, plausible ? gap.claimS : Infinity);
  return openReview(lapsed, Math.max(0, gap.claimS), seq, true);
}

/** The later of the last fact and the last heartbeat, if that is of the same session. */
function lastAlive(state: RunState, heartbeat: Readings | null): Readings {
  const { lastAt } = state.clock;
  return heartbeat?.session === lastAt.session && heartbeat.monoMs > lastAt.monoMs
    ? heartbeat
    : lastAt;
}

/**
 * Asks about every stage in progress whose work may have broken off in the
 * gap. Always a review after a new session; after a sleep only if something
 * is to be asked.
 */
function openReview(state: RunState, gapS: number, seq: number, always: boolean): RunState {
  if (state.status === 'closing' || state.status === 'drafting') return state;
  let next = state;
  const questions: OpenQuestion[] = [];
  for (const step of state.plan.steps) {
    const one = state.steps[step.id];
    const stage = one && step.stages[one.stage];
    if (one?.status !== 'active' || !stage || stage.resumption === 'continue') continue;
    questions.push(questionOf(state, step.id, one, stage, gapS, seq));
    next = changeTimers(
      next,
      (timer) => timer.step === step.id && timer.stage === stage.id && !isAlarm(timer),
      (timer) => ({ ...timer, gapOpen: true, clockProved: false }),
    );
  }
  if (questions.length === 0 && !always) return next;
  const from = state.status === 'reviewing' ? state.reviewFrom : state.status;
  return {
    ...next,
    questions,
    status: 'reviewing',
    reviewFrom: from === 'held' || from === 'suspended' ? from : 'running',
  };
}

/** A question already open about the same stage stays, with the longer gap. */
function questionOf(
  state: RunState,
  step: string,
  one: StepState,
  stage: Stage,
  gapS: number,
  seq: number,
): OpenQuestion {
  const open = state.questions.find(
    (question) => question.step === step && question.stage === stage.id,
  );
  return {
    id: open?.id ?? `${step}#${one.attempt}/${stage.id}@${seq}`,
    step,
    attempt: one.attempt,
    stage: stage.id,
    ask:
      stage.reviewAsk ?? message('engine.step.went-on', { step: stepOf(state.plan, step).title }),
    gapS: (open?.gapS ?? 0) + gapS,
  };
}

export function applyClockAnswer(
  state: RunState,
  body: Body<'clock-answered'>,
  at: Readings,
  seq: number,
): RunState {
  const toldS = body.actualWallMs === null ? null : (body.actualWallMs - at.wallMs) / 1000;
  const errorS = body.right ? 0 : toldS;
  const word = { answer: seq, errorS, passed: body.passed ?? null };
  return leaveWhenAnswered(answerClock(state, word));
}

/** What a person saw of one stage: it went on, it broke off, or nobody knows. */
export function applyReview(state: RunState, body: Body<'review-answered'>): RunState {
  const question = state.questions.find((one) => one.id === body.question);
  if (!question) return state;
  const { step } = question;
  const asked = { ...state, questions: state.questions.filter((one) => one !== question) };
  const ofStage = (timer: Timer): boolean =>
    timer.step === step && timer.stage === question.stage && !isAlarm(timer);
  const stage = stepOf(state.plan, step).stages.find((one) => one.id === question.stage);
  const brokeOff =
    body.answer === 'broke-off' || (body.answer === 'unknown' && stage?.resumption !== 'ask');
  let next: RunState;
  if (!brokeOff) {
    next = changeTimers(remembered(asked, question), ofStage, (timer) =>
      body.answer === 'went-on' ? closeGap(timer, state.clock) : leaveInDoubt(timer),
    );
  } else {
    const why =
      body.answer === 'broke-off' ? 'engine.because.broke-off' : 'engine.because.nobody-saw';
    next = breakOff(asked, step, message(why));
  }
  return leaveWhenAnswered(next);
}

/** The work is held to have gone on; a person may find out later that it did not. */
function remembered(state: RunState, { id, step, attempt, stage, ask }: OpenQuestion): RunState {
  const round = known(state, step).round;
  const number = stageNumber(stepOf(state.plan, step), stage);
  const gap = { id, step, attempt, round, stage: number, ask };
  return { ...state, reviewed: [...standingGaps(state), gap] };
}

/** The last answer is the person's word to go on to where it was. */
function leaveWhenAnswered(state: RunState): RunState {
  if (state.status !== 'reviewing' || state.questions.length > 0 || clockQuestion(state))
    return state;
  return leaveReview(state);
}
