import { message } from '../../messages/index.ts';
import { AHEAD_MAX_S, ASK_CLOCK_S, LONG_GAP_S } from '../model/constants.ts';
import type { RunState } from '../model/state.ts';
import { clockQuestion } from '../timers/unproved-time.ts';
import { missingS } from '../timers/clock-word.ts';
import type { Readings, Request } from '../model/types.ts';
import type { FactBody } from '../model/facts.ts';
import { standingGaps } from '../rules/undone.ts';
import { goOnObstacle } from '../rules/work-guard.ts';
import { accept, refuse, type Decision } from './refusal.ts';

type Asked<K extends Request['kind']> = Extract<Request, { kind: K }>;

/** The last answer leads out of a review; into a rest day with work in progress it leads to a pause (I-21). */
function heldFirst(state: RunState, now: Readings): readonly FactBody[] {
  const leads = state.status === 'reviewing' && state.reviewFrom === 'running';
  return leads && goOnObstacle(state, now) ? [{ kind: 'paused' }] : [];
}

export function answerReview(
  state: RunState,
  asked: Asked<'answer-review'>,
  now: Readings,
): Decision {
  if (!state.questions.some((question) => question.id === asked.question)) {
    return refuse('unknown-question', message('engine.unknown.question', { id: asked.question }));
  }
  return accept(...heldFirst(state, now), {
    kind: 'review-answered',
    question: asked.question,
    answer: asked.answer,
  });
}

export function answerClockQuestion(
  state: RunState,
  asked: Asked<'answer-clock'>,
  now: Readings,
): Decision {
  if (!clockQuestion(state)) return refuse('nothing-asked', message('engine.clock.not-asked'));
  const actual = asked.right ? null : (asked.actualWallMs ?? null);
  const latest = Math.max(state.clock.shownMs, now.wallMs) + AHEAD_MAX_S * 1000;
  if (actual !== null && !(actual >= state.notBeforeWallMs && actual <= latest)) {
    return refuse(
      'out-of-range',
      message('engine.clock.range', {
        actualWallMs: actual,
        fromWallMs: state.notBeforeWallMs,
        toWallMs: latest,
      }),
    );
  }
  const errorS = asked.right ? 0 : actual === null ? null : (actual - now.wallMs) / 1000;
  if (errorS !== null && asked.passed === undefined && needsPassed(state, errorS)) {
    return refuse(
      'passed-missing',
      message('engine.clock.passed-missing', { missingS: missingS(state.clock, errorS) }),
    );
  }
  const passed = errorS !== null && (asked.passed ?? true);
  return accept(...heldFirst(state, now), {
    kind: 'clock-answered',
    right: asked.right,
    actualWallMs: actual,
    passed,
  });
}

/**
 * Must a person also say that the missing time passed? Not when nothing is
 * missing; nor between two words about the clock, unless it is most of a day.
 */
export function needsPassed({ clock }: RunState, errorS: number): boolean {
  const leftS = missingS(clock, errorS);
  return leftS > ASK_CLOCK_S && (!clock.confirmed || leftS >= LONG_GAP_S);
}

export function withdrawClockAnswer(state: RunState): Decision {
  if (state.clock.answers.length === 0)
    return refuse('nothing-asked', message('engine.clock.nothing-answered'));
  return accept({ kind: 'clock-answer-withdrawn' });
}

/** Only towards less: what was said to have broken off cannot have gone on after all. */
export function withdrawReviewAnswer(
  state: RunState,
  { question }: Asked<'withdraw-review-answer'>,
): Decision {
  return standingGaps(state).some(({ id }) => id === question)
    ? accept({ kind: 'review-answer-withdrawn', question })
    : refuse('unknown-question', message('engine.unknown.question', { id: question }));
}
