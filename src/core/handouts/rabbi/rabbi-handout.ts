import { customName, questionList, type ChosenQuestion } from '../../custom/index.ts';
import { message, type Message, type Translator } from '../../messages/index.ts';
import type { Fixture, Kitchen } from '../../kitchen/index.ts';
import type { AnswerChange } from '../../plan/index.ts';
import { factsOf } from './facts.ts';

/** One open question with what is known of the thing it is about. */
export type HandoutQuestion = {
  readonly question: ChosenQuestion;
  readonly name: string;
  readonly fixture?: Fixture;
  /** Material, state and use, as far as they are told. */
  readonly facts: readonly Message[];
};

/**
 * The open questions for the rabbi, in the order of the list; those for the household itself are left out.
 * @param more what a plan asks besides
 */
export function rabbiHandout(
  kitchen: Kitchen,
  more: readonly ChosenQuestion[] = [],
): readonly HandoutQuestion[] {
  return [...questionList(kitchen).toAsk, ...more].map((question) => {
    const fixture = kitchen.fixtures.find(({ id }) => id === question.fixture);
    return {
      question,
      name: fixture?.name ?? question.fixture,
      ...(fixture && { fixture }),
      facts: fixture ? factsOf(fixture, question.part) : [],
    };
  });
}

/** What each answer would make of the plan, by the id of the question; a question that is not in it was not tried yet. */
export type ChangesByQuestion = Readonly<Record<string, readonly AnswerChange[]>>;

/** An end that moves by less is the same end, s; nothing is said of it, so that the page stays one. */
const UNCHANGED_S = 300;

/** An answer with what it changes, or, where that is not known, alone. */
export function answerMessages(
  { id, answers = [] }: ChosenQuestion,
  changes: ChangesByQuestion,
): readonly Message[] {
  const tried = changes[id];
  return tried
    ? tried.map(({ answer, finishS, kettles }) =>
        Math.abs(finishS) < UNCHANGED_S && kettles === 0
          ? answer.text
          : message('plan-page.questions.change', { answer: answer.text, finishS, kettles }),
      )
    : answers.map(({ text }) => text);
}

const UNDER = '   ';

/** The handout as plain text to be sent; lines end in `\n`. */
export function rabbiHandoutText(
  kitchen: Kitchen,
  changes: ChangesByQuestion,
  { t, say }: Translator,
  more: readonly ChosenQuestion[] = [],
): string {
  const lines = rabbiHandout(kitchen, more).flatMap(({ question, name, facts }, at) => {
    const { ask, why, untilThen } = question;
    return [
      '',
      t('custom.questions.numbered', { number: at + 1, fixture: name, ask }),
      ...(facts.length > 0 ? [`${UNDER}${t('handouts.rabbi.facts', { facts })}`] : []),
      `${UNDER}${say(why)}`,
      `${UNDER}${t('custom.questions.until-then', { untilThen })}`,
      ...answerMessages(question, changes).map((one) => `${UNDER}[ ] ${say(one)}`),
      `${UNDER}${t('custom.questions.answer-line')}`,
    ];
  });
  return [
    t('custom.questions.title', { kitchen: kitchen.name }),
    t('custom.questions.custom', { custom: customName(kitchen.household) }),
    t('custom.questions.standing'),
    ...lines,
    '',
    t('custom.questions.said-line'),
    '',
  ].join('\n');
}
