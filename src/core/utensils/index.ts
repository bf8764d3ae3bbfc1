export { batchTimes } from './batches/batch-times.ts';
export { buildUtensilPlan } from './build-utensil-plan.ts';
export {
  batchMessages,
  describeUtensils,
  outsideMessages,
  potMessage,
  utensilSections,
} from './describe/describe-utensils.ts';
export type * from './model/types.ts';
