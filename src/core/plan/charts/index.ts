import type { Plan } from '../model/index.ts';
import { burnerCharts } from './burner-charts.ts';
import { kettleCharts } from './kettle-charts.ts';
import { roomCharts } from './room-charts.ts';
import type { HeatChart } from './types.ts';

export { pourCharts, type PourChart } from './pour-charts.ts';
export { moveMessage, pourMoves } from './pour-moves.ts';
export { pourWords } from './pour-words.ts';
export type { CurveLine, HeatChart } from './types.ts';

/** Shown when no burner is brought to a glow, min. */
const USUAL_HOLD_MIN = 30;

/** Every physical course of a plan as pictures: kettles, burners, room. Worked out anew, never stored. */
export function heatCharts(plan: Plan): readonly HeatChart[] {
  const holdMin = plan.methods.find(({ method }) => method === 'glow')?.minutes ?? USUAL_HOLD_MIN;
  const atOnce = plan.resources.find(({ kind }) => kind === 'burners-lit')?.capacity ?? 1;
  return [
    ...kettleCharts(plan.kitchen, plan.calibration),
    ...burnerCharts(plan.kitchen, holdMin),
    ...roomCharts(plan, atOnce),
  ];
}
