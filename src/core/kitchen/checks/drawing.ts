import type { Polygon } from '../../geometry/index.ts';
import { Notes, type Codec } from '../codec/codec.ts';
import { pointCodec, polygonCodec } from '../codec/common-codecs.ts';
import { backEdgesCodec, bowlsCodec, holesCodec } from '../codec/fixture-codecs.ts';
import { list } from '../codec/object.ts';
import { LIMITS } from '../model/limits.ts';
import type { Fixture } from '../model/kitchen.ts';
import { outlineOf } from '../queries/fixtures.ts';
import { polygonFault } from './polygons.ts';
import { holesHold, shapeHolds } from './shapes.ts';

const burnerPointsCodec = list(pointCodec, LIMITS.burners);

/** Whether the reader takes a value; none of these is filled from the country. */
function reads<T>(codec: Codec<T>, value: unknown): boolean {
  return codec.read(value, '', new Notes({ supplyV: 0, kettleW: 0, kettleV: 0 })) !== undefined;
}

/** Whether a polygon can be an outline with these cut-outs in a kitchen file. */
export function outlineHolds(outline: Polygon, holes: readonly Polygon[] = []): boolean {
  return (
    reads(polygonCodec, outline) &&
    reads(holesCodec, holes) &&
    polygonFault(outline) === undefined &&
    holesHold(outline, holes, '').next().done === true
  );
}

/** Whether everything that is drawn of a fixture can stand in a kitchen file; its words and powers aside. */
export function drawingHolds(fixture: Fixture): boolean {
  const outline = outlineOf(fixture);
  if (outline !== undefined && !reads(polygonCodec, outline)) return false;
  const partsRead = (): boolean => {
    switch (fixture.kind) {
      case 'counter':
        return reads(holesCodec, fixture.holes) && reads(backEdgesCodec, fixture.backEdges);
      case 'sink':
        return reads(bowlsCodec, fixture.bowls);
      case 'cooktop': {
        const points = fixture.burners.map(({ at }) => at);
        return reads(burnerPointsCodec, points);
      }
      default:
        return true;
    }
  };
  return partsRead() && shapeHolds(fixture, '').next().done === true;
}
