import type { Kitchen } from '../kitchen/index.ts';
import { answeredQuestions } from './answers.ts';
import { chooseMethod } from './choose-method.ts';
import { customName } from './tables.ts';
import type { AnsweredQuestion, ChosenQuestion } from './types.ts';

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
  return about === 'material' || about === 'condition';
}

/** Every question of a kitchen: open to ask, open to find out, and answered. */
export function questionList(kitchen: Kitchen): QuestionList {
  const open = kitchen.fixtures.flatMap((one) => chooseMethod(one, kitchen).questions);
  return {
    toAsk: open.filter((one) => !forLooking(one)),
    toFind: open.filter(forLooking),
    answered: answeredQuestions(kitchen),
  };
}

const STANDING =
  'Customs differ. The plan follows the custom we chose; the answers below replace it.';

/** The list as plain text with room for the answers, to be sent or printed; lines end in `\n`. */
export function questionListText(kitchen: Kitchen): string {
  const name = (id: string): string => kitchen.fixtures.find((one) => one.id === id)?.name ?? id;
  const { toAsk, toFind, answered } = questionList(kitchen);
  const openLines = (list: readonly ChosenQuestion[]): readonly string[] =>
    list.flatMap((one, at) => [
      `${at + 1}. ${name(one.fixture)}: ${one.ask}`,
      `   ${one.why}`,
      `   Until it is answered: ${one.untilThen}`,
      '   Answer: ______________________________',
      '   Said by: ________________  on: ________',
      '',
    ]);
  const section = (title: string, lines: readonly string[]): readonly string[] =>
    lines.length === 0 ? [] : [title, '', ...lines];
  return [
    `Questions for our rabbi: ${kitchen.name}`,
    `Custom: ${customName(kitchen.household)}`,
    STANDING,
    '',
    ...section('To ask', openLines(toAsk)),
    ...section(
      'We look ourselves',
      toFind.map((one) => `- ${name(one.fixture)}: ${one.ask}`),
    ),
    ...(toFind.length > 0 ? [''] : []),
    ...section(
      'Answered',
      answered.map((one) =>
        `- ${name(one.fixture)}: ${one.ask} ${one.answer} (${one.saidBy}, ${one.saidOn})`.replaceAll(
          /\s+/g,
          ' ',
        ),
      ),
    ),
    '',
  ].join('\n');
}
