import {
  dateCodec,
  edgeCodec,
  idCodec,
  localTimeCodec,
  nameCodec,
  pointCodec,
  polygonCodec,
  powerCodec,
  voltsCodec,
  wordsCodec,
} from '../codec/common-codecs.ts';
import { FIXTURE_CODECS } from '../codec/fixture-codecs.ts';
import { kitchenCodec } from '../codec/kitchen-codec.ts';
import { heightsCodec, openingCodec, wallPlaceCodec } from '../codec/wall-codecs.ts';
import { utensilCodec } from '../codec/utensil-codec.ts';
import type { JsonSchema } from '../codec/codec.ts';
import {
  burnerTypeCodec,
  conditionCodec,
  designationCodec,
  materialCodec,
  methodCodec,
  partCodec,
} from '../codec/choices.ts';

const NAMED = [
  idCodec,
  nameCodec,
  wordsCodec,
  dateCodec,
  localTimeCodec,
  pointCodec,
  polygonCodec,
  edgeCodec,
  powerCodec,
  voltsCodec,
  materialCodec,
  conditionCodec,
  designationCodec,
  methodCodec,
  partCodec,
  burnerTypeCodec,
  heightsCodec,
  wallPlaceCodec,
  openingCodec,
  ...FIXTURE_CODECS,
  utensilCodec,
];

/**
 * The format of the kitchen file as JSON Schema, draft 2020-12. It says what
 * each field may hold; what must fit together (ids, outlines, circuits) is
 * beyond a schema and checked by the reader alone.
 */
export function kitchenSchema(): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    // not shown: for whoever writes such files by program
    title: 'Kitchen file, version 1',
    description:
      // not shown: for whoever writes such files by program
      'What a household tells about its kitchen. SI units, the unit last in every name; lengths in metres in one plan view, x to the right and y away from the viewer. A field that is not required is filled with a usual value. Beyond this schema the reader checks that ids are unique and exist where they are used, that outlines do not cross themselves and hold their cut-outs, and that burners lie on their cooktop.',
    ...kitchenCodec.schema,
    $defs: Object.fromEntries(NAMED.map(({ name, definition }) => [name, definition])),
  };
}
