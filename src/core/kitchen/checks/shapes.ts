import { areaM2, boundingBox, pointInPolygon } from '../../geometry/polygon.ts';
import { problemAt, type KitchenProblem } from '../model/problem.ts';
import type { Counter, Kitchen, Polygon, Sink } from '../model/kitchen.ts';
import { burnersOf } from './names.ts';
import { liesInside, overlap, polygonFault, SAME_PLACE_M } from './polygons.ts';

/** Bowls are measured at their opening, outlines at the rim: this much more is rounding. */
const BOWL_SLACK = 1.02;

function metres(value: number): string {
  return `${Number(value.toFixed(3))} m`;
}

function boxInWords(polygon: Polygon): string {
  const box = boundingBox(polygon);
  return `x ${metres(box.xMinM)} to ${metres(box.xMaxM)}, y ${metres(box.yMinM)} to ${metres(box.yMaxM)}`;
}

function* onePolygon(path: string, polygon: Polygon): Generator<KitchenProblem> {
  const fault = polygonFault(polygon);
  if (fault) yield problemAt(path, fault.found, fault.allowed, fault.advice);
}

function* holesOf(counter: Counter, at: string): Generator<KitchenProblem> {
  for (const [i, hole] of counter.holes.entries()) {
    const path = `${at}.holes[${i}]`;
    if (polygonFault(hole)) {
      yield* onePolygon(path, hole);
      continue;
    }
    if (!liesInside(hole, counter.outline)) {
      const found = `a cut-out at ${boxInWords(hole)}`;
      const allowed = `inside the counter's outline (${boxInWords(counter.outline)})`;
      yield problemAt(path, found, allowed, 'Measure it from the same corner as the counter.');
    }
    const earlier = counter.holes.slice(0, i).findIndex((other) => overlap(hole, other));
    if (earlier !== -1) {
      const found = `a cut-out that lies over holes[${earlier}]`;
      yield problemAt(path, found, 'cut-outs apart from each other', 'Draw one cut-out for both.');
    }
  }
}

function* backEdgesOf(counter: Counter, at: string): Generator<KitchenProblem> {
  const count = counter.outline.length;
  for (const [i, [from, to]] of counter.backEdges.entries()) {
    const path = `${at}.backEdges[${i}]`;
    const step = Math.abs(from - to);
    if (from >= count || to >= count) {
      const allowed = `corner numbers 0 to ${count - 1}`;
      yield problemAt(path, `[${from}, ${to}]`, allowed, 'The first corner of the outline is 0.');
    } else if (step !== 1 && step !== count - 1) {
      const allowed = 'two neighbouring corners of the outline';
      const advice = `After corner ${from} comes corner ${(from + 1) % count}.`;
      yield problemAt(path, `[${from}, ${to}]`, allowed, advice);
    }
  }
}

function* bowlsFit(sink: Sink, at: string): Generator<KitchenProblem> {
  const bowlsM2 = sink.bowls.reduce((sum, bowl) => sum + bowl.lengthM * bowl.widthM, 0);
  const outlineM2 = areaM2(sink.outline);
  if (bowlsM2 > outlineM2 * BOWL_SLACK) {
    const found = `bowls of ${bowlsM2.toFixed(2)} m² together`;
    const allowed = `no more than the outline of the sink, ${outlineM2.toFixed(2)} m²`;
    yield problemAt(`${at}.bowls`, found, allowed, 'Measure bowls and outline again, in metres.');
  }
}

/** Outlines are simple and enclose something; cut-outs lie inside; back edges are edges; bowls fit. */
export function* outlinesHold(kitchen: Kitchen): Generator<KitchenProblem> {
  for (const [i, fixture] of kitchen.fixtures.entries()) {
    const at = `fixtures[${i}]`;
    if (fixture.kind === 'counter') yield* backEdgesOf(fixture, at);
    if (!('outline' in fixture) || fixture.outline === undefined) continue;
    if (polygonFault(fixture.outline)) {
      yield* onePolygon(`${at}.outline`, fixture.outline);
      continue;
    }
    if (fixture.kind === 'counter') yield* holesOf(fixture, at);
    if (fixture.kind === 'sink') yield* bowlsFit(fixture, at);
  }
}

/** The middle of every burner lies on its cooktop. */
export function* burnersStandOnCooktops(kitchen: Kitchen): Generator<KitchenProblem> {
  for (const { burner, cooktop, path } of burnersOf(kitchen)) {
    if (polygonFault(cooktop.outline)) continue;
    if (pointInPolygon(burner.at, cooktop.outline, SAME_PLACE_M)) continue;
    const found = `[${burner.at.join(', ')}]`;
    const allowed = `a point on the cooktop (${boxInWords(cooktop.outline)})`;
    const advice = 'Measure the middle of the burner in the same plan view as the cooktop.';
    yield problemAt(`${path}.at`, found, allowed, advice);
  }
}
