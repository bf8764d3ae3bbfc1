export { answeredQuestions, rowsToChange } from './household/answers.ts';
export { burnerChoices, type BurnerChoice } from './choose/burners.ts';
export { REST_ROW } from './choose/said.ts';
export { chooseMethod } from './choose/choose-method.ts';
export { closedUp } from './choose/inside-passover.ts';
export {
  answerAs,
  withAnswer,
  withFound,
  withOwnCustom,
  withOwnRow,
  withoutAnswer,
  withoutOwnCustom,
  withoutOwnRow,
} from './household/edit-kitchen.ts';
export { findConditionRule, findFactRules, findRow, type Looked } from './table/find-row.ts';
export { grouped } from './household/grouped.ts';
export { pourOrderQuestions, poursUpwards } from './household/pour-order.ts';
export { forLooking, questionList, questionListText } from './household/question-list.ts';
export { citation, SOURCE_KEYS, sourceState, stateOfMethod } from './table/sources.ts';
export { customName, customTable, ownCustomOf, PART_ROWS, tableOf } from './table/tables.ts';
export type * from './model/types.ts';
