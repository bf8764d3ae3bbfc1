import { message, type Message } from '../../messages/index.ts';
import type { ChosenQuestion, Choice } from '../../custom/index.ts';
import type { PlanContext } from './plan-context.ts';

/** What was told about fixtures that had been purged. */
export type Recheck = {
  /** In the household's words. */
  readonly what: string;
  /** Fixtures that it touches. */
  readonly fixtures: readonly string[];
};

function questionOf(fixture: string, name: string, what: string): ChosenQuestion {
  return {
    id: `ask-doubt-${fixture}`,
    fixture,
    ask: message('plan.question.recheck', { fixture: name }),
    why: message('plan.question.recheck.why', { what }),
    untilThen: message('plan.question.recheck.until-then'),
  };
}

/** A cooktop that is not in doubt and only heats the kettle: nothing of it is purged. */
function onlyHeats({ method, coverWith }: Choice): Choice {
  const { fixture, source, checked, wouldChange } = method;
  return {
    method: {
      fixture,
      method: 'clean',
      cover: false,
      reason: message('plan.only-heats'),
      source,
      checked,
      wouldChange,
    },
    questions: [],
    coverWith,
    notes: [],
  };
}

/**
 * The context of a small plan after a doubt: each doubted fixture comes with its
 * question; kettles and whatever only heats them have been purged and are not
 * in doubt.
 */
export function recheckContext(context: PlanContext, { what, fixtures }: Recheck): PlanContext {
  const doubted = new Set(fixtures);
  const choices = new Map(
    context.kitchen.fixtures.flatMap(({ id, name }) => {
      const choice = context.choices.get(id);
      if (!choice) return [];
      if (!doubted.has(id)) return [[id, onlyHeats(choice)] as const];
      const question = questionOf(id, name, what);
      return [
        [
          id,
          {
            ...choice,
            method: { ...choice.method, question: question.id },
            questions: [question, ...choice.questions],
          },
        ] as const,
      ];
    }),
  );
  const heatOnly = new Set(
    context.kitchen.fixtures.flatMap((one) =>
      one.kind === 'cooktop' && !doubted.has(one.id) ? one.burners.map(({ id }) => id) : [],
    ),
  );
  const { utensils: _notInDoubt, ...rest } = context;
  return {
    ...rest,
    choices,
    burners: new Map(
      [...context.burners].map(([id, lit]) => [
        id,
        heatOnly.has(id) ? { ...lit, method: 'clean' as const } : lit,
      ]),
    ),
    kettles: context.kettles.map((kettle) => ({ ...kettle, purged: true })),
    // What was told of hot uses was before the doubt.
    lastHots: new Map(),
  };
}

/** Said first of such a plan. */
export function recheckNotice({ what }: Recheck): Message {
  return message('plan.notice.recheck', { what: what.trim().replace(/[.\s]+$/, '') });
}
