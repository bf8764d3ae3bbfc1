import { questionList, type ChosenQuestion } from '../../custom/index.ts';
import type { Kitchen } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { unreachedSpots } from '../pours/unreached-spots.ts';
import type { Plan } from '../model/index.ts';

/** Somebody ruled about the whole of a fixture: nothing more of the plan's own is asked about it. */
function isRuled({ household }: Kitchen, id: string): boolean {
  return household.overrides.some(
    ({ fixture, part, burner, row }) =>
      fixture === id && part === undefined && burner === undefined && row === undefined,
  );
}

function unreachedQuestion(fixture: string, spots: readonly Message[]): ChosenQuestion {
  return {
    id: `ask-${fixture}-unreached`,
    fixture,
    ask: message('plan.question.unreached', { spots }),
    why: message('plan.question.unreached.why'),
    untilThen: message('plan.question.unreached.until-then'),
    about: 'ruling',
    answers: [
      { text: message('plan.question.unreached.cover'), method: 'pour', cover: true },
      { text: message('plan.question.unreached.enough'), method: 'pour', cover: false },
    ],
  };
}

/**
 * What only a plan asks, beside what the custom asks of the kitchen: of what would be closed up
 * inside Passover, and of spots that no arm reaches. What was ruled since is not asked.
 * @param kitchen as it is now; the plan may be a moment behind it
 */
export function planQuestions(plan: Plan, kitchen: Kitchen): readonly ChosenQuestion[] {
  const { toAsk, toFind, answered } = questionList(kitchen);
  const known = new Set([...toAsk, ...toFind, ...answered].map(({ id }) => id));
  const ids = new Set(kitchen.fixtures.map(({ id }) => id));
  const ofDays = plan.questions.filter(({ id }) => id.endsWith('-inside-passover'));
  const unreached = kitchen.fixtures.flatMap(({ id }) => {
    const spots = unreachedSpots(plan.steps, id);
    return spots.length > 0 ? [unreachedQuestion(id, spots)] : [];
  });
  return [...ofDays, ...unreached].filter(
    ({ id, fixture }) => !known.has(id) && ids.has(fixture) && !isRuled(kitchen, fixture),
  );
}
