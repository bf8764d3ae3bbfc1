import { ASK_CLOCK_S, CLOCK_TOLERANCE_S } from '../model/constants.ts';
import type { ClockState, RunState } from '../model/state.ts';
import {
  creditClaim,
  dropClaim,
  looser,
  settleClaim,
  type ElapsedInterval,
  type Told,
} from '../model/elapsed-interval.ts';
import { mapSpans } from './map-spans.ts';

/**
 * A person's word about the wall clock: its error now, s (right time less time
 * shown; 0 when it is right), or null when nobody knows. `passed`: the time
 * that is missing has really passed (the tablet slept), it was not the clock
 * that was set. Null: an answer of a journal from before that was asked.
 */
export type ClockWord = {
  /** Number of its fact. */
  readonly answer: number;
  readonly errorS: number | null;
  readonly passed: boolean | null;
};

/** Missing time that this error would leave to be explained, s; negative when the clocks contradict it. */
export function missingS(clock: ClockState, errorS: number): number {
  return clock.claimS + errorS - clock.errorS;
}

/**
 * Applies a person's word. Taken against the error known before, the wall
 * differences since then count, yet only for what began while that error was
 * known, and only when the person says that the time passed (I-20).
 */
export function answerClock(state: RunState, word: ClockWord): RunState {
  const changeS = word.errorS === null ? null : word.errorS - state.clock.errorS;
  const moved = mapSpans(state, (span, timer) => {
    const after = spanAfter(span, timer?.gapOpen === true, word, changeS);
    return remember(span, after, word.answer);
  });
  const timers: Record<string, RunState['timers'][string]> = {};
  for (const [id, timer] of Object.entries(moved.timers)) {
    timers[id] = timer.gapOpen ? { ...timer, clockProved: true } : timer;
  }
  const { claimS, errorS, errorKnown, confirmed, told, answers } = state.clock;
  const clock: ClockState = {
    ...state.clock,
    errorS: word.errorS ?? 0,
    errorKnown: word.errorS !== null,
    confirmed: word.errorS !== null,
    told: told || word.errorS !== null,
    claimS: 0,
    doubt: false,
    answers: [...answers, { answer: word.answer, claimS, errorS, errorKnown, confirmed, told }],
  };
  return { ...moved, timers, clock };
}

function spanAfter(
  span: ElapsedInterval,
  gapOpen: boolean,
  word: ClockWord,
  changeS: number | null,
): ElapsedInterval {
  if (changeS === null) return dropClaim(span);
  const believed = word.passed === null || (word.passed && span.base === 'known');
  if (believed) {
    const settled = settleClaim(span, changeS);
    return gapOpen ? settled : creditClaim(settled);
  }
  if (span.claimS === 0 && span.bound !== 'until-clock') return { ...span, base: 'known' };
  // Nothing is missing: the bounds that stood are good.
  const leftS = span.claimS + changeS;
  const nothingMissing =
    span.base === 'known' && leftS >= -CLOCK_TOLERANCE_S && leftS <= ASK_CLOCK_S;
  if (nothingMissing) return { ...settleClaim(span, changeS), claimS: 0 };
  return { ...dropClaim(span), base: 'known' };
}

/** Writes down what a word changed of a span. */
export function remember(
  before: ElapsedInterval,
  after: ElapsedInterval,
  answer: number,
): ElapsedInterval {
  const told: Told = {
    answer,
    atLeastS: after.atLeastS - before.atLeastS,
    atMostS: after.atMostS - before.atMostS,
    claimS: after.claimS - before.claimS,
    bound: before.bound,
    base: before.base,
  };
  return { ...after, told: [...before.told, told] };
}

/** The span as it would be had that word never been given. */
function forget(span: ElapsedInterval, answer: number): ElapsedInterval {
  let next = span;
  for (let last = next.told.at(-1); last?.answer === answer; last = next.told.at(-1)) {
    next = {
      ...next,
      atLeastS: next.atLeastS - last.atLeastS,
      atMostS: next.atMostS - last.atMostS,
      claimS: next.claimS - last.claimS,
      bound: looser(last.bound, next.bound),
      base: last.base,
      told: next.told.slice(0, -1),
    };
  }
  // What began under that word does not know any more under which error it began.
  const under = next.told.length === span.told.length && next.base === 'known';
  return under ? { ...next, base: 'doubt' } : next;
}

/** What a word credited to a span, s. */
export function creditedBy(span: ElapsedInterval, answer: number): number {
  return span.told
    .filter((one) => one.answer === answer)
    .reduce((sum, { atLeastS }) => sum + atLeastS, 0);
}

/** Takes the last answer back: spans and clock stand as before it, and the clock is in doubt again (I-26). */
export function forgetAnswer(state: RunState): RunState {
  const { answers } = state.clock;
  const last = answers.at(-1);
  if (!last) return state;
  const { answer, claimS, errorS, errorKnown, confirmed, told } = last;
  const moved = mapSpans(state, (span) => forget(span, answer));
  // What a gap may count by that word waits for the next one.
  const timers = Object.fromEntries(
    Object.entries(moved.timers).map(([id, timer]) => [id, { ...timer, clockProved: false }]),
  );
  const clock: ClockState = {
    ...state.clock,
    errorS,
    errorKnown,
    confirmed,
    told,
    claimS: claimS + state.clock.claimS,
    doubt: true,
    answers: answers.slice(0, -1),
  };
  return { ...moved, timers, clock };
}
