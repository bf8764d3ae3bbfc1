import type { Translator } from '../../messages/index.ts';
import type { Kitchen } from '../../kitchen/index.ts';
import { answeredQuestions } from './answers.ts';
import { chooseMethod } from '../choose/choose-method.ts';
import { grouped } from './grouped.ts';
import { pourOrderQuestions } from './pour-order.ts';
import { customName } from '../table/tables.ts';
import type { AnsweredQuestion, ChosenQuestion } from '../model/types.ts';

/** The questions of a kitchen, apart by who answers them. */
export type QuestionList = {
  /** For the rabbi. */
  readonly toAsk: readonly ChosenQuestion[];
  /** For the household itself, by looking. */
  readonly toFind: readonly ChosenQuestion[];
  readonly answered: readonly AnsweredQuestion[];
};

/** A question without a word on who answers it goes to the rabbi. */
export function forLooking({ about }: Pick<ChosenQuestion, 'about'>): boolean {
  return about === 'material' || about === 'condition' || about === 'use';
}

/** Every question of a kitchen: open to ask, open to find out, and answered. */
export function questionList(kitchen: Kitchen): QuestionList {
  const open = grouped(kitchen.fixtures.map((one) => chooseMethod(one, kitchen)));
  return {
    toAsk: [...open.filter((one) => !forLooking(one)), ...pourOrderQuestions(kitchen)],
    toFind: open.filter(forLooking),
    answered: answeredQuestions(kitchen),
  };
}

/** Lines of an answer are set in by this. */
const UNDER = '   ';

/**
 * The list as plain text with room for the answers, to be sent or printed; lines end in `\n`.
 * @param more what a plan asks besides
 */
export function questionListText(
  kitchen: Kitchen,
  { t, say }: Translator,
  more: readonly ChosenQuestion[] = [],
): string {
  const name = (id: string): string => kitchen.fixtures.find((one) => one.id === id)?.name ?? id;
  const { toAsk, toFind, answered } = questionList(kitchen);
  const openLines = (list: readonly ChosenQuestion[]): readonly string[] =>
    list.flatMap(({ fixture, ask, why, untilThen }, at) => [
      t('custom.questions.numbered', { number: at + 1, fixture: name(fixture), ask }),
      `${UNDER}${say(why)}`,
      `${UNDER}${t('custom.questions.until-then', { untilThen })}`,
      `${UNDER}${t('custom.questions.answer-line')}`,
      `${UNDER}${t('custom.questions.said-line')}`,
      '',
    ]);
  const section = (title: string, lines: readonly string[]): readonly string[] =>
    lines.length === 0 ? [] : [title, '', ...lines];
  return [
    t('custom.questions.title', { kitchen: kitchen.name }),
    t('custom.questions.custom', { custom: customName(kitchen.household) }),
    t('custom.questions.standing'),
    '',
    ...section(t('custom.questions.to-ask'), openLines([...toAsk, ...more])),
    ...section(
      t('custom.questions.to-look'),
      toFind.map(({ fixture, ask }) => t('custom.questions.look', { fixture: name(fixture), ask })),
    ),
    ...(toFind.length > 0 ? [''] : []),
    ...section(
      t('custom.questions.answered'),
      answered.map(({ fixture, ask, answer, saidBy, saidOn }) =>
        // What a household wrote stands on one line.
        t('custom.questions.answered-line', {
          fixture: name(fixture),
          ask,
          answer,
          saidBy,
          saidOn,
        }).replaceAll(/\s+/g, ' '),
      ),
    ),
    '',
  ].join('\n');
}
