export { cautionsFor, cautionTexts, gatesOf, planCautions, withCautions } from './attach.ts';
export { CAUTIONS, FAULTS, type CautionKind, type CautionRow, type Trigger } from './table.ts';
