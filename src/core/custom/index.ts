export { answeredQuestions, rowsToChange } from './answers.ts';
export { burnerChoices, chooseMethod, type BurnerChoice, type Choice } from './choose-method.ts';
export {
  withAnswer,
  withFound,
  withOwnCustom,
  withOwnRow,
  withoutAnswer,
  withoutOwnCustom,
  withoutOwnRow,
} from './edit-kitchen.ts';
export { findConditionRule, findRow, type Looked } from './find-row.ts';
export { pourOrderQuestions } from './pour-order.ts';
export { forLooking, questionList, questionListText } from './question-list.ts';
export { citation, SOURCE_KEYS } from './sources.ts';
export { customName, customTable, ownCustomOf, tableOf } from './tables.ts';
export type * from './types.ts';
