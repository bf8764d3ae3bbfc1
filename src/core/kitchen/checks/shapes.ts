import {
  areaM2,
  boundingBox,
  liesInside,
  overlap,
  pointInPolygon,
  SAME_PLACE_M,
  type Polygon,
} from '../../geometry/index.ts';
import { message, type Message } from '../../messages/index.ts';
import type { Cooktop, Fixture, Kitchen, Sink } from '../model/kitchen.ts';
import { problemAt, type KitchenProblem } from '../model/problem.ts';
import { outlineOf } from '../queries/fixtures.ts';
import { polygonFault } from './polygons.ts';

/** Bowls are measured at their opening, outlines at the rim: this much more is rounding. */
const BOWL_SLACK = 1.02;

function boxMessage(polygon: Polygon): Message {
  return message('problems.box', boundingBox(polygon));
}

export function* onePolygon(path: string, polygon: Polygon): Generator<KitchenProblem> {
  const fault = polygonFault(polygon);
  if (fault) yield problemAt(path, fault.found, fault.allowed, fault.advice);
}

/** Cut-outs are outlines, lie inside and apart from each other. */
export function* holesHold(
  outline: Polygon,
  holes: readonly Polygon[],
  at: string,
): Generator<KitchenProblem> {
  for (const [i, hole] of holes.entries()) {
    const path = `${at}.holes[${i}]`;
    if (polygonFault(hole)) {
      yield* onePolygon(path, hole);
      continue;
    }
    if (!liesInside(hole, outline)) {
      yield problemAt(
        path,
        message('problems.hole.found', { box: boxMessage(hole) }),
        message('problems.hole.allowed', { box: boxMessage(outline) }),
        message('problems.hole.advice'),
      );
    }
    const earlier = holes.slice(0, i).findIndex((other) => overlap(hole, other));
    if (earlier !== -1) {
      yield problemAt(
        path,
        message('problems.holes-overlap.found', { earlier }),
        message('problems.holes-overlap.allowed'),
        message('problems.holes-overlap.advice'),
      );
    }
  }
}

/** Pairs of corners that are to be edges are edges. */
export function* edgesHold(
  outline: Polygon,
  edges: readonly (readonly [number, number])[],
  at: string,
): Generator<KitchenProblem> {
  const count = outline.length;
  for (const [i, [from, to]] of edges.entries()) {
    const path = `${at}[${i}]`;
    const step = Math.abs(from - to);
    const found = message('problems.value', { json: `[${from}, ${to}]` });
    if (from >= count || to >= count) {
      const allowed = message('problems.back-edge.corners', { last: count - 1 });
      yield problemAt(path, found, allowed, message('problems.back-edge.first'));
    } else if (step !== 1 && step !== count - 1) {
      const allowed = message('problems.back-edge.neighbours');
      const advice = message('problems.back-edge.next', { from, next: (from + 1) % count });
      yield problemAt(path, found, allowed, advice);
    }
  }
}

function* bowlsFit(sink: Sink, at: string): Generator<KitchenProblem> {
  const bowlsM2 = sink.bowls.reduce((sum, bowl) => sum + bowl.lengthM * bowl.widthM, 0);
  const outlineM2 = areaM2(sink.outline);
  if (bowlsM2 > outlineM2 * BOWL_SLACK) {
    yield problemAt(
      `${at}.bowls`,
      message('problems.bowls.found', { bowlsM2 }),
      message('problems.bowls.allowed', { outlineM2 }),
      message('problems.bowls.advice'),
    );
  }
}

/** The middle of every burner lies on its cooktop. */
function* burnersStandOn(cooktop: Cooktop, at: string): Generator<KitchenProblem> {
  for (const [i, burner] of cooktop.burners.entries()) {
    if (pointInPolygon(burner.at, cooktop.outline, SAME_PLACE_M)) continue;
    yield problemAt(
      `${at}.burners[${i}].at`,
      message('problems.value', { json: `[${burner.at.join(', ')}]` }),
      message('problems.burner-place.allowed', { box: boxMessage(cooktop.outline) }),
      message('problems.burner-place.advice'),
    );
  }
}

/**
 * What is drawn of one fixture: the outline is simple and encloses something,
 * cut-outs lie inside, back edges are edges, bowls fit, burners stand on it.
 */
export function* shapeHolds(fixture: Fixture, at: string): Generator<KitchenProblem> {
  if (fixture.kind === 'counter')
    yield* edgesHold(fixture.outline, fixture.backEdges, `${at}.backEdges`);
  if (fixture.kind === 'counter' || fixture.kind === 'table')
    yield* edgesHold(fixture.outline, fixture.openSides ?? [], `${at}.openSides`);
  const outline = outlineOf(fixture);
  if (outline === undefined) return;
  if (polygonFault(outline)) {
    yield* onePolygon(`${at}.outline`, outline);
    return;
  }
  if (fixture.kind === 'counter') yield* holesHold(outline, fixture.holes, at);
  if (fixture.kind === 'sink') yield* bowlsFit(fixture, at);
  if (fixture.kind === 'cooktop') yield* burnersStandOn(fixture, at);
}

export function* shapesHold(kitchen: Kitchen): Generator<KitchenProblem> {
  for (const [i, fixture] of kitchen.fixtures.entries()) {
    yield* shapeHolds(fixture, `fixtures[${i}]`);
  }
}
