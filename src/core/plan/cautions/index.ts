export {
  cautionsFor,
  cautionTexts,
  gatesOf,
  laterCautions,
  planCautions,
  withCautions,
} from './attach.ts';
export { CAUTIONS, FAULTS, type CautionKind } from './table.ts';
