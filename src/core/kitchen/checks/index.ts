import type { KitchenProblem } from '../model/problem.ts';
import type { Kitchen } from '../model/kitchen.ts';
import type { Check } from './finding.ts';
import {
  circuitsExist,
  idsAreUnique,
  overridesHaveFixtures,
  rangesExist,
  vesselsHaveTheirHeat,
} from './names.ts';
import { ownCustomHolds } from './own-custom.ts';
import { placeFitsZone } from './place.ts';
import { roomWallsHold } from './room-walls.ts';
import { shapesHold } from './shapes.ts';
import { datesExist, powerIsTold, zoneExists } from './told.ts';

/** Checks that look at more than one field; in the order their problems are told. */
const CHECKS: readonly Check[] = [
  powerIsTold,
  zoneExists,
  placeFitsZone,
  datesExist,
  idsAreUnique,
  circuitsExist,
  vesselsHaveTheirHeat,
  rangesExist,
  overridesHaveFixtures,
  ownCustomHolds,
  shapesHold,
  roomWallsHold,
];

/** Everything that does not fit together in a kitchen whose fields are each in order. */
export function crossCheck(kitchen: Kitchen): readonly KitchenProblem[] {
  return CHECKS.flatMap((check) => [...check(kitchen)]);
}

export { drawingHolds, outlineHolds } from './drawing.ts';
export { warningsFor } from './warnings.ts';
