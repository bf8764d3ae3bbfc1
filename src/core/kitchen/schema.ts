import {
  dateShape,
  edgeShape,
  idShape,
  nameShape,
  pointShape,
  polygonShape,
  powerShape,
  voltsShape,
  wordsShape,
} from './parse/common-shapes.ts';
import { FIXTURE_SHAPES } from './parse/fixture-shapes.ts';
import { kitchenShape } from './parse/kitchen-shape.ts';
import type { JsonSchema } from './parse/shape.ts';
import {
  burnerTypeShape,
  conditionShape,
  designationShape,
  materialShape,
  methodShape,
} from './parse/words.ts';

const NAMED = [
  idShape,
  nameShape,
  wordsShape,
  dateShape,
  pointShape,
  polygonShape,
  edgeShape,
  powerShape,
  voltsShape,
  materialShape,
  conditionShape,
  designationShape,
  methodShape,
  burnerTypeShape,
  ...FIXTURE_SHAPES,
];

/**
 * The format of the kitchen file as JSON Schema, draft 2020-12. It says what
 * each field may hold; what must fit together (ids, outlines, circuits) is
 * beyond a schema and checked by the reader alone.
 */
export function kitchenSchema(): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Kitchen file, version 1',
    description:
      'What a household tells about its kitchen. SI units, the unit last in every name; lengths in metres in one plan view, x to the right and y away from the viewer. A field that is not required is filled with a usual value. Beyond this schema the reader checks that ids are unique and exist where they are used, that outlines do not cross themselves and hold their cut-outs, and that burners lie on their cooktop.',
    ...kitchenShape.schema,
    $defs: Object.fromEntries(NAMED.map(({ name, definition }) => [name, definition])),
  };
}
