export type * from './types.ts';
export { foundText, type KitchenProblem, type KitchenWarning } from './problem.ts';
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
} from './geometry.ts';
export { countryOf, COUNTRY_CODES, type Country } from './country.ts';
export {
  LARGEST_FILE_BYTES,
  parseKitchen,
  readKitchen,
  type ParsedKitchen,
  type ParseOutcome,
} from './parse-kitchen.ts';
export { customRowIds, methodsForFixture, methodsForRow } from './custom-rows.ts';
export { formatKitchen } from './format-kitchen.ts';
export { kitchenSchema } from './schema.ts';
export type { FilledIn, JsonSchema } from './parse/shape.ts';
export {
  BURNER_TYPES,
  CONDITIONS,
  FIXTURE_KINDS,
  MATERIALS,
  METHODS,
  OVEN_CLEANINGS,
  PURPOSES,
} from './ids.ts';
