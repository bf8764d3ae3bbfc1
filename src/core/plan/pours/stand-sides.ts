import { overlap, type Polygon } from '../../geometry/index.ts';
import {
  outlineOf,
  type Counter,
  type FixtureKind,
  type Kitchen,
  type Table,
} from '../../kitchen/index.ts';
import { LanesRefusal, openSides, type StandSide } from '../../pouring/index.ts';

/** What hangs above or stands on something else takes nobody's room. */
const OFF_THE_FLOOR: ReadonlySet<FixtureKind> = new Set<FixtureKind>(['hood', 'microwave']);

/** Outlines of what stands on the floor beside a fixture; what is under or on it is not beside it. */
function beside(kitchen: Kitchen, top: Counter | Table): readonly Polygon[] {
  return kitchen.fixtures.flatMap((other) => {
    const outline = outlineOf(other);
    if (other.id === top.id || !outline || OFF_THE_FLOOR.has(other.kind)) return [];
    return overlap(outline, top.outline) ? [] : [outline];
  });
}

/**
 * Where one can stand to pour a counter or a table: as the household tells;
 * else in front of its walls, round an island or a table everywhere, less
 * where another fixture stands.
 * @throws LanesRefusal for an outline that cannot be poured
 */
export function standSides(kitchen: Kitchen, top: Counter | Table): readonly StandSide[] {
  return openSides(
    { outer: top.outline, holes: [] },
    {
      backEdges: top.kind === 'counter' ? top.backEdges : [],
      inTheWay: beside(kitchen, top),
      ...(top.openSides && { told: top.openSides }),
    },
  );
}

/** Numbers of the edges at which one can stand, for asking about them; none for an outline that cannot be poured. */
export function openEdges(kitchen: Kitchen, top: Counter | Table): readonly number[] {
  try {
    return [...new Set(standSides(kitchen, top).map(({ edge: [from] }) => from))];
  } catch (refusal) {
    if (refusal instanceof LanesRefusal) return [];
    throw refusal;
  }
}
