import type { Message } from '../messages/index.ts';
import type { ConditionRule, CoverMaterial, CustomRow, RowQuestion, RowWhen } from './types.ts';

type RawAnswer = Omit<NonNullable<RowQuestion['answers']>[number], 'text'>;

type RawQuestion = {
  readonly about?: RowQuestion['about'];
  readonly answers?: readonly RawAnswer[];
};

/** A row as it lies in the table: numbers and ids; its texts stand in the catalogue. */
export type RawRow = RowWhen & {
  readonly id: string;
  /** Id of its texts where the customs say it differently; else that of the row. */
  readonly text?: string;
  readonly method: CustomRow['method'];
  readonly cover: boolean;
  readonly coverWith?: CoverMaterial;
  readonly minutes?: number;
  readonly term?: string;
  readonly note?: boolean;
  readonly source: string;
  readonly checked: boolean;
  readonly question?: RawQuestion;
};

/** The rule of a condition as it lies in the table. */
export type RawRule = Pick<
  ConditionRule,
  | 'id'
  | 'kinds'
  | 'methods'
  | 'materials'
  | 'conditions'
  | 'method'
  | 'cover'
  | 'coverWith'
  | 'source'
  | 'checked'
> &
  Pick<RawRow, 'text' | 'question'>;

/** The families of keys of a row; a test walks the tables and finds every one in the catalogue. */
type RowPart =
  'reason' | 'would-change' | 'note' | 'ask' | 'why' | 'until-then' | `answer-${number}`;

function rowText({ id, text }: Pick<RawRow, 'id' | 'text'>, part: RowPart): Message {
  return { key: `custom.row.${text ?? id}.${part}`, params: {} };
}

function questionOf(row: Pick<RawRow, 'id' | 'text'>, raw: RawQuestion): RowQuestion {
  const { about, answers } = raw;
  return {
    ask: rowText(row, 'ask'),
    why: rowText(row, 'why'),
    untilThen: rowText(row, 'until-then'),
    ...(about && { about }),
    ...(answers && {
      answers: answers.map((answer, at) => ({
        ...answer,
        text: rowText(row, `answer-${at + 1}`),
      })),
    }),
  };
}

/** The row with the messages that belong to it. */
export function withTexts({ text, note, term, question, ...row }: RawRow): CustomRow {
  const told = { id: row.id, ...(text !== undefined && { text }) };
  return {
    ...row,
    reason: rowText(told, 'reason'),
    wouldChange: rowText(told, 'would-change'),
    ...(term !== undefined && { term: { key: `custom.term.${term}`, params: {} } }),
    ...(note && { note: rowText(told, 'note') }),
    ...(question && { question: questionOf(told, question) }),
  };
}

/** The rule of a condition with the messages that belong to it. */
export function ruleWithTexts({ text, question, ...rule }: RawRule): ConditionRule {
  const told = { id: rule.id, ...(text !== undefined && { text }) };
  return {
    ...rule,
    reason: rowText(told, 'reason'),
    ...(question && { question: questionOf(told, question) }),
  };
}
