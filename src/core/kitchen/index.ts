export { nearest } from './codec/nearest.ts';
export type { Point, Polygon } from '../geometry/index.ts';
export type * from './model/kitchen.ts';
export type * from './model/utensil.ts';
export { escapedUnseen, plainLine, seenText } from './model/plain-line.ts';
export {
  foundValue,
  problemAt,
  problemMessage,
  problemWhere,
  type KitchenProblem,
} from './model/problem.ts';
export { LIMITS, type Range } from './model/limits.ts';
export { countryOf, COUNTRY_CODES, kettlePlateV, shortLoadShare } from './model/country.ts';
export {
  LARGEST_FILE_BYTES,
  parseKitchen,
  readKitchen,
  tooLarge,
  utf8Bytes,
  type ParsedKitchen,
} from './file/parse-kitchen.ts';
export { drawingHolds, outlineHolds } from './checks/index.ts';
export { hoodTold, toldAirless, windowTold } from './queries/air-out.ts';
export { burnersOf, burnerVolts, hasHeatLamp, isGas } from './queries/burners.ts';
export { emergencyNumber } from './queries/emergency-number.ts';
export { drawnOutlines, fixtureOf, mayBeUndrawn, outlineOf } from './queries/fixtures.ts';
export { personName } from './queries/people.ts';
export { partsOf, possibleParts } from './queries/parts.ts';
export { atWall, fromWall, isSameEdge, wallOf, wallsOf, type Wall } from './queries/walls.ts';
export { unitsOf } from './queries/units.ts';
export { isElectric, standsOnStove } from './queries/vessels.ts';
export { methodsForFixture, methodsForRow } from './queries/custom-rows.ts';
export { formatKitchen } from './file/format-kitchen.ts';
export { kitchenSchema } from './file/schema.ts';
export type { FilledIn } from './codec/codec.ts';
export {
  BURNER_TYPES,
  CONDITIONS,
  COOKTOP_SURFACES,
  CUSTOMS,
  DESIGNATIONS,
  FIXTURE_KINDS,
  HOOD_KINDS,
  LANE_DIRECTIONS,
  LEAVEN_DAYS,
  POUR_UNTIL,
  MATERIALS,
  METHODS,
  OVEN_CLEANINGS,
  PARTS,
  PURPOSES,
  UNIT_SYSTEMS,
  UTENSIL_KINDS,
  UTENSIL_MATERIALS,
  UTENSIL_METHODS,
  UTENSIL_USES,
  VESSEL_BODIES,
  VESSEL_KINDS,
} from './model/ids.ts';
