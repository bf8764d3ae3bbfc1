import { LITRES_PER_M3, SECONDS_PER_MINUTE, inRange } from '../../units/index.ts';

/** Flows out of a kettle, jug or small hose that the jump formulas are asked about, L/min. */
const LEAST_FLOW_LMIN = 0.2;
const MOST_FLOW_LMIN = 12;

/** m³/s from a checked flow in L/min. */
export function flowM3S(flowLMin: number): number {
  inRange('flowLMin', flowLMin, LEAST_FLOW_LMIN, MOST_FLOW_LMIN);
  return flowLMin / (LITRES_PER_M3 * SECONDS_PER_MINUTE);
}
