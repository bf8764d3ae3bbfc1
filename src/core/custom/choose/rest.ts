import { message } from '../../messages/index.ts';
import type { Fixture, Kitchen } from '../../kitchen/index.ts';
import type { Choice, ChosenQuestion, RowQuestion } from '../model/types.ts';
import { REST_ROW, saidOf } from './said.ts';

/** Heat that burns out what was absorbed; no rest before it was found in the codes. */
function burnsOut({ method }: Choice): boolean {
  return method.method === 'self-clean' || method.method === 'glow';
}

function questionOf({ method: { method, cover } }: Choice): RowQuestion {
  return {
    ask: message('custom.rest.ask'),
    why: message('custom.rest.why'),
    untilThen: message('custom.rest.until-then'),
    about: 'ruling',
    answers: [
      { text: message('custom.rest.answer-1'), method, cover, rest: true },
      { text: message('custom.rest.answer-2'), method, cover, rest: false },
    ],
  };
}

/**
 * Asks whether a fixture that is purged by heat alone must rest before it, and
 * follows the answer. Until then it rests.
 */
export function withRest(fixture: Fixture, kitchen: Kitchen, choice: Choice): Choice {
  if (!burnsOut(choice)) return choice;
  const said = saidOf(fixture, kitchen).findLast(
    ({ row, rest }) => rest !== undefined && (row === undefined || row === REST_ROW),
  );
  if (said) {
    const { rest } = said;
    return rest === false ? { ...choice, method: { ...choice.method, rest } } : choice;
  }
  const question: ChosenQuestion = {
    id: `ask-${fixture.id}-${REST_ROW}`,
    fixture: fixture.id,
    row: REST_ROW,
    ...questionOf(choice),
  };
  return {
    ...choice,
    method: { ...choice.method, question: choice.method.question ?? question.id },
    questions: [...choice.questions, question],
  };
}
