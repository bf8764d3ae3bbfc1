import type { Plan } from '../types.ts';
import { burnerPictures } from './burner-pictures.ts';
import { kettlePictures } from './kettle-pictures.ts';
import { roomPictures } from './room-pictures.ts';
import type { HeatPicture } from './types.ts';

export { pourPictures, type PourPicture } from './pour-pictures.ts';
export type { CurveLine, HeatPicture } from './types.ts';

/** Shown when no burner is brought to a glow, min. */
const USUAL_HOLD_MIN = 30;

/** Every physical course of a plan as pictures: kettles, burners, room. Worked out anew, never stored. */
export function heatPictures(plan: Plan): readonly HeatPicture[] {
  const holdMin = plan.methods.find(({ method }) => method === 'glow')?.minutes ?? USUAL_HOLD_MIN;
  const atOnce = plan.resources.find(({ id }) => id === 'burners-lit')?.capacity ?? 1;
  return [
    ...kettlePictures(plan.kitchen, plan.learned),
    ...burnerPictures(plan.kitchen, holdMin),
    ...roomPictures(plan.kitchen, atOnce),
  ];
}
