import {
  boundingBox,
  readKitchen,
  type Bowl,
  type Fixture,
  type Point,
  type Polygon,
} from '../../kitchen/index.ts';

// The reader of kitchen files is the one judge of outlines. Shapes are laid
// before it in a kitchen that holds nothing else, so that what the survey draws
// is never refused later.

function isRead(fixture: object): boolean {
  const bare = { id: 'x', name: 'x', designation: 'undecided' };
  const outcome = readKitchen({
    format: 'glowpour-kitchen',
    version: 1,
    name: 'x',
    country: 'IL',
    household: { purpose: 'new-kitchen', custom: 'sephardic' },
    room: { floorAreaM2: 10 },
    fixtures: [{ ...fixture, ...bare }],
  });
  return !('problems' in outcome);
}

/** Whether a polygon can be an outline with these cut-outs. */
export function isValidOutline(outline: Polygon, holes: readonly Polygon[] = []): boolean {
  return isRead({ kind: 'counter', outline, holes });
}

/** Whether two sound polygons share more than an edge. */
export function shareSurface(one: Polygon, other: Polygon): boolean {
  const [a, b] = [boundingBox(one), boundingBox(other)];
  const apart =
    a.xMaxM <= b.xMinM || b.xMaxM <= a.xMinM || a.yMaxM <= b.yMinM || b.yMaxM <= a.yMinM;
  if (apart) return false;
  const FARTHEST_M = 200;
  const plane: Polygon = [
    [-FARTHEST_M, -FARTHEST_M],
    [FARTHEST_M, -FARTHEST_M],
    [FARTHEST_M, FARTHEST_M],
    [-FARTHEST_M, FARTHEST_M],
  ];
  return !isValidOutline(plane, [one, other]);
}

function bowlsAreSound(outline: Polygon, bowls: readonly Bowl[]): boolean {
  return isRead({ kind: 'sink', outline, bowls, rimWidthM: 0, material: 'unknown' });
}

function burnersAreSound(outline: Polygon, places: readonly Point[]): boolean {
  const burners = places.map((at, i) => ({
    id: `b${i}`,
    name: 'x',
    type: 'gas-open',
    at,
    diameterM: 0.1,
    ratedW: 1000,
  }));
  return isRead({ kind: 'cooktop', outline, surface: 'metal', burners });
}

/** Whether everything that is drawn of a fixture can stand in a kitchen file. */
export function isValidFixture(fixture: Fixture): boolean {
  switch (fixture.kind) {
    case 'counter': {
      const { outline, holes, backEdges } = fixture;
      return isRead({ kind: 'counter', outline, holes, backEdges });
    }
    case 'sink':
      return bowlsAreSound(fixture.outline, fixture.bowls);
    case 'cooktop':
      return burnersAreSound(
        fixture.outline,
        fixture.burners.map(({ at }) => at),
      );
    default:
      return !('outline' in fixture) || fixture.outline === undefined
        ? true
        : isValidOutline(fixture.outline);
  }
}
