/**
 * Reading kitchens and working out plans: its own chunk, since an open run
 * needs none of it. The page asks for it as soon as it has drawn itself.
 */
export { formatKitchen, parseKitchen } from '../../core/kitchen/index.ts';
export {
  buildPlan,
  heatPictures,
  planForDoubt,
  pourPictures,
  ranOut,
} from '../../core/plan/index.ts';
export { learnedOf } from '../../core/record/index.ts';
