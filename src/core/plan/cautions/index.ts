export { cautionsFor, cautionTexts, gatesOf, planCautions, withCautions } from './attach.ts';
export { CAUTIONS, FAULTS, type CautionKind } from './table.ts';
