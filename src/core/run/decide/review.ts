import { message } from '../../messages/index.ts';
import type { RunState } from '../model/state.ts';
import { clockQuestion } from '../timers/unproved-time.ts';
import type { Request } from '../model/types.ts';
import { accept, refuse, type Decision } from './refusal.ts';

type Asked<K extends Request['kind']> = Extract<Request, { kind: K }>;

export function answerReview(state: RunState, asked: Asked<'answer-review'>): Decision {
  if (!state.questions.some((question) => question.id === asked.question)) {
    return refuse('unknown-question', message('engine.unknown.question', { id: asked.question }));
  }
  return accept({ kind: 'review-answered', question: asked.question, answer: asked.answer });
}

export function answerClockQuestion(state: RunState, asked: Asked<'answer-clock'>): Decision {
  if (!clockQuestion(state)) return refuse('nothing-asked', message('engine.clock.not-asked'));
  const actual = asked.right ? null : (asked.actualWallMs ?? null);
  if (actual !== null && !(actual >= state.notBeforeWallMs && Number.isFinite(actual))) {
    return refuse(
      'out-of-range',
      message('engine.clock.range', { actualWallMs: actual, fromWallMs: state.notBeforeWallMs }),
    );
  }
  return accept({ kind: 'clock-answered', right: asked.right, actualWallMs: actual });
}
