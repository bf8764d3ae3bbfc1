export type * from './model/kitchen.ts';
export { foundText, type KitchenProblem, type KitchenWarning } from './model/problem.ts';
export {
  areaM2,
  boundingBox,
  distanceToEdgeM,
  edgesOf,
  netAreaM2,
  perimeterM,
  pointInPolygon,
  signedAreaM2,
  type Box,
} from '../geometry/polygon.ts';
export { countryOf, COUNTRY_CODES, type Country } from './model/country.ts';
export {
  LARGEST_FILE_BYTES,
  parseKitchen,
  readKitchen,
  type ParsedKitchen,
  type ParseOutcome,
} from './file/parse-kitchen.ts';
export { customRowIds, methodsForFixture, methodsForRow } from './queries/custom-rows.ts';
export { formatKitchen } from './file/format-kitchen.ts';
export { kitchenSchema } from './file/schema.ts';
export type { FilledIn, JsonSchema } from './codec/codec.ts';
export {
  BURNER_TYPES,
  CONDITIONS,
  FIXTURE_KINDS,
  MATERIALS,
  METHODS,
  OVEN_CLEANINGS,
  PURPOSES,
} from './model/ids.ts';
