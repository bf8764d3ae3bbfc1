import { message, type Message } from '../../messages/index.ts';
import { reasonOf } from '../model/reason.ts';
import type { Step } from '../../plan/index.ts';
import type { FactBody } from '../model/facts.ts';
import { stepsAbout, usesVessel } from '../rules/belonging.ts';
import { heldVessels } from '../rules/boiled-water.ts';
import { needsMakeSafe } from '../model/plan-index.ts';
import type { RunState } from '../model/state.ts';
import type { Readings } from '../model/types.ts';
import { closeTimers, known, putStep } from './change.ts';
import { heat } from './heated.ts';
import { unwindStep } from './run.ts';
import { enterStage, renew } from './steps.ts';

type Body<K extends FactBody['kind']> = Extract<FactBody, { kind: K }>;

const LATER: ReadonlySet<Step['phase']> = new Set(['purge', 'cool', 'cover', 'mark']);

/**
 * A fixture was used or touched: its rest begins again at once, as a new
 * attempt, and everything of that fixture that comes after the rest will be
 * done again (I-17). What is hot just now is made safe first. A cool-down that
 * is going on stays: the thing is hot whatever was doubted.
 */
export function applyRecheck(
  state: RunState,
  body: Body<'recheck-reported'>,
  at: Readings,
): RunState {
  let next = heat(state, body.fixture, at);
  const why = reasonOf(body.text, message('engine.because.doubt'));
  for (const step of doubted(state, body.fixture)) {
    const one = known(next, step.id);
    if (one.status === 'waiting') continue;
    if (step.kind === 'cool' && one.status === 'active') {
      next = putStep(next, step.id, { renew: why });
      continue;
    }
    next =
      one.status === 'settled'
        ? renew(next, step.id, one.attempt + 1)
        : stopAndRenew(next, step, why);
  }
  for (const step of stepsAbout(state.plan, body.fixture)) {
    if (step.kind !== 'rest') continue;
    if (known(next, step.id).status === 'waiting') continue;
    const attempt = known(next, step.id).attempt + 1;
    next = enterStage(renew(next, step.id, attempt), step.id, 0, at);
  }
  return next;
}

/**
 * A word that changed clocks and plans only can be taken back: no work was
 * stopped by it, and no boiled water given up, which a hand has poured away since.
 */
export function canTakeBack(state: RunState, fixture: string): boolean {
  const holds = heldVessels(state).some(({ boil }) => usesVessel(boil, fixture));
  const untouched = doubted(state, fixture).every((step) => {
    const { status } = known(state, step.id);
    return status === 'waiting' || status === 'settled' || step.kind === 'cool';
  });
  return !holds && untouched;
}

/** What was told to be used was not: all stands as before that word, and time went on (I-17). */
export function applyRecheckWithdrawal(state: RunState): RunState {
  return state.doubt ? { ...state.doubt.before, clock: state.clock } : state;
}

/** Ends an attempt that goes on, making safe what is hot first, and has it done again. */
export function stopAndRenew(state: RunState, step: Step, reason: Message): RunState {
  const one = known(state, step.id);
  if (one.status === 'unwinding') return putStep(state, step.id, { renew: reason });
  if (needsMakeSafe(step, one.stage)) {
    return putStep(unwindStep(state, step.id, 'stopped', reason), step.id, { renew: reason });
  }
  const quiet = closeTimers(state, (timer) => timer.step === step.id, true);
  return renew(
    { ...quiet, questions: quiet.questions.filter((question) => question.step !== step.id) },
    step.id,
    one.attempt + 1,
  );
}

/** Later steps of the fixture, and what had to be done shortly before them (boiling). */
function doubted(state: RunState, fixture: string): readonly Step[] {
  const own = stepsAbout(state.plan, fixture).filter(
    (step) => LATER.has(step.phase) && step.kind !== 'rest',
  );
  // What was poured from a vessel before stays poured; what it holds now does not count.
  const withIt = state.plan.steps.filter(
    (step) =>
      !own.includes(step) &&
      usesVessel(step, fixture) &&
      ['active', 'unwinding'].includes(known(state, step.id).status),
  );
  const holding = heldVessels(state)
    .filter(({ boil }) => usesVessel(boil, fixture))
    .map(({ boil }) => boil);
  const later = [...own, ...withIt, ...holding];
  const before = new Set(
    later
      .filter((step) => known(state, step.id).status !== 'waiting')
      .flatMap((step) => step.needs.filter((need) => need.withinS !== undefined))
      .map((need) => need.step),
  );
  return [
    ...later,
    ...state.plan.steps.filter((step) => before.has(step.id) && !later.includes(step)),
  ];
}
