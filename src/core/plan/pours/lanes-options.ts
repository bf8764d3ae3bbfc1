import type { Counter, Kitchen, Table } from '../../kitchen/index.ts';
import { ARM_M, type LanesOptions, type Surface } from '../../pouring/index.ts';
import { standSides } from './stand-sides.ts';

/** A counter or a table as a surface to be poured. */
export function surfaceOf(top: Counter | Table): Surface {
  return { outer: top.outline, holes: top.kind === 'counter' ? top.holes : [] };
}

/**
 * How the lanes of a counter or a table are drawn in this kitchen.
 * @param laneM width of a pass, m
 */
export function lanesOptions(kitchen: Kitchen, top: Counter | Table, laneM: number) {
  const { laneDirection: direction = 'back-to-front', armM = ARM_M } = kitchen.household;
  const backEdges = top.kind === 'counter' && top.backEdges.length > 0 ? top.backEdges : undefined;
  return {
    swathM: laneM,
    direction,
    armM,
    sides: standSides(kitchen, top),
    ...(backEdges && { backEdges }),
  } satisfies LanesOptions;
}
