import { SECONDS_PER_MINUTE } from '../../units/index.ts';
import { USUAL_ROOM_C } from '../common/constants.ts';
import type { CurvePoint } from '../common/curve.ts';
import { cleanCycle } from '../tables/appliances.ts';
import { ovenStages, type OvenInput } from './oven-stages.ts';

const HEAT_POINTS = 40;
const COOL_POINTS = 100;
/** The rise is drawn as 95 % of an exponential whose end is the cleaning temperature. */
const RISE_CONSTANTS = 3;
/** Drawn on, after the lock opens, for so many time constants. */
const COOL_CONSTANTS = 2.5;

/**
 * Temperature in the oven over a self-clean cycle and its cooling, for a
 * picture: typical stages only.
 * @throws OutOfRangeError as ovenStages
 */
export function ovenCurve(of: OvenInput): readonly CurvePoint[] {
  const { heatMin, holdMin } = ovenStages(of);
  const row = cleanCycle(of.cycle ?? 'normal');
  const roomC = of.roomC ?? USUAL_ROOM_C;
  const topC = row.cleanC.typical;
  const heatS = heatMin.typical * SECONDS_PER_MINUTE;
  const holdEndS = heatS + holdMin.typical * SECONDS_PER_MINUTE;
  const whole = 1 - Math.exp(-RISE_CONSTANTS);
  const heating = Array.from({ length: HEAT_POINTS + 1 }, (_, i) => {
    const share = i / HEAT_POINTS;
    const risen = (1 - Math.exp(-RISE_CONSTANTS * share)) / whole;
    return { timeS: heatS * share, tempC: roomC + (topC - roomC) * risen };
  });
  const tauS = row.coolTauMin.typical * SECONDS_PER_MINUTE;
  const cooling = Array.from({ length: COOL_POINTS + 1 }, (_, i) => {
    const afterS = (tauS * COOL_CONSTANTS * i) / COOL_POINTS;
    return {
      timeS: holdEndS + afterS,
      tempC: roomC + (topC - roomC) * Math.exp(-afterS / tauS),
    };
  });
  return [...heating, ...cooling];
}
