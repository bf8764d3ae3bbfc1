/**
 * Reading kitchens and working out plans: its own chunk, since an open run
 * needs none of it. Asked for as soon as a kitchen is opened.
 */
export { formatKitchen, parseKitchen } from '../../../core/kitchen/index.ts';
export {
  buildPlan,
  heatCharts,
  moveMessage,
  planForRecheck,
  pourCharts,
  pourMoves,
  ranOut,
  whatItChanges,
} from '../../../core/plan/index.ts';
export { calibrationOf } from '../../../core/calibration/index.ts';
