export { burnerChoices, chooseMethod, type BurnerChoice, type Choice } from './choose-method.ts';
export { findConditionRule, findRow, type Looked } from './find-row.ts';
export { readCustomTable } from './read-table.ts';
export { citation, SOURCE_KEYS, sourceOf } from './sources.ts';
export { customTable } from './tables.ts';
export type * from './types.ts';
