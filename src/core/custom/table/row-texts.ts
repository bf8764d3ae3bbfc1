import type { Message } from '../../messages/index.ts';
import type {
  ConditionRule,
  CoverMaterial,
  CustomRow,
  FactRule,
  PartRow,
  RowQuestion,
  RowWhen,
} from '../model/types.ts';

type RawAnswer = Omit<NonNullable<RowQuestion['answers']>[number], 'text' | 'cover'> & {
  readonly cover?: boolean;
};

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
  readonly alsoSources?: readonly string[];
  readonly checked: boolean;
  readonly question?: RawQuestion;
};

/** The rule of a condition as it lies in the table. */
export type RawRule = Omit<ConditionRule, 'reason' | 'question'> &
  Pick<RawRow, 'text' | 'question'>;

/** The rule of a fact as it lies in the table. */
export type RawFactRule = Omit<FactRule, 'reason' | 'question'> & Pick<RawRow, 'text' | 'question'>;

/** The row of a part as it lies in its table. */
export type RawPartRow = Omit<PartRow, 'reason' | 'question'> & Pick<RawRow, 'question'>;

/** The families of keys of a row; a test walks the tables and finds every one in the catalogue. */
type RowPart =
  'reason' | 'would-change' | 'note' | 'ask' | 'why' | 'until-then' | `answer-${number}`;

function rowText({ id, text }: Pick<RawRow, 'id' | 'text'>, part: RowPart): Message {
  return { key: `custom.way.${text ?? id}.${part}`, params: {} };
}

function questionWith(textOf: (part: RowPart) => Message, raw: RawQuestion): RowQuestion {
  const { about, answers } = raw;
  return {
    ask: textOf('ask'),
    why: textOf('why'),
    untilThen: textOf('until-then'),
    ...(about && { about }),
    ...(answers && {
      answers: answers.map((answer, at) => ({
        ...answer,
        cover: answer.cover ?? false,
        text: textOf(`answer-${at + 1}`),
      })),
    }),
  };
}

function questionOf(row: Pick<RawRow, 'id' | 'text'>, raw: RawQuestion): RowQuestion {
  return questionWith((part) => rowText(row, part), raw);
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

/** The rule of a condition or a fact with the messages that belong to it. */
export function ruleWithTexts<T extends { readonly id: string }>({
  text,
  question,
  ...rule
}: T & Pick<RawRow, 'text' | 'question'>) {
  const told = { id: rule.id, ...(text !== undefined && { text }) };
  return {
    ...rule,
    reason: rowText(told, 'reason'),
    ...(question && { question: questionOf(told, question) }),
  };
}

/** The row of a part with the messages that belong to it. */
export function partWithTexts({ question, ...row }: RawPartRow): PartRow {
  const under = (part: RowPart): Message => ({ key: `custom.part.${row.id}.${part}`, params: {} });
  return {
    ...row,
    reason: under('reason'),
    ...(question && { question: questionWith(under, question) }),
  };
}
