/**
 * A strip of a surface cut into upright-sided trapezoids: the surface in its
 * frame (x along the back edge, y toward the front) between two depths.
 */
import { edgesOf } from '../../geometry/index.ts';
import { ringsOf } from '../model/plane.ts';
import type { Surface } from '../model/types.ts';
import { tidySpans, type Spans } from '../model/spans.ts';

/** An edge, left end first; an upright one parts slabs and bounds no trapezoid. */
export type SideEdge = {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
};

/** Between x0 and x1, from the line lo0–lo1 (back) to the line hi0–hi1 (front). */
export type Trapezoid = {
  readonly x0: number;
  readonly x1: number;
  readonly lo0: number;
  readonly lo1: number;
  readonly hi0: number;
  readonly hi1: number;
};

/** Closer than this along the back edge is one place, metres. */
const SAME_X_M = 1e-9;

export function sideEdges(surface: Surface): readonly SideEdge[] {
  const edges: SideEdge[] = [];
  for (const ring of ringsOf(surface)) {
    for (const [a, b] of edgesOf(ring)) {
      if (a[0] <= b[0]) edges.push({ x0: a[0], y0: a[1], x1: b[0], y1: b[1] });
      else edges.push({ x0: b[0], y0: b[1], x1: a[0], y1: a[1] });
    }
  }
  return edges;
}

/** Depth of an edge at x; beyond its ends that of the end, which then lies outside the strip. */
function yAt(edge: SideEdge, atX: number): number {
  const x = Math.min(edge.x1, Math.max(edge.x0, atX));
  return edge.y0 + ((edge.y1 - edge.y0) * (x - edge.x0)) / (edge.x1 - edge.x0);
}

/** Every x between the depths at which an edge begins, ends or crosses one of them. */
function breaks(edges: readonly SideEdge[], from: number, to: number): number[] {
  const xs: number[] = [];
  const corner = (x: number, y: number) => {
    if (y >= from && y <= to) xs.push(x);
  };
  for (const e of edges) {
    if (Math.max(e.y0, e.y1) < from || Math.min(e.y0, e.y1) > to) continue;
    corner(e.x0, e.y0);
    corner(e.x1, e.y1);
    for (const level of [from, to]) {
      if (e.y0 < level !== e.y1 < level) {
        xs.push(e.x0 + ((e.x1 - e.x0) * (level - e.y0)) / (e.y1 - e.y0));
      }
    }
  }
  xs.sort((a, b) => a - b);
  return xs.filter((x, i) => i === 0 || x - (xs[i - 1] ?? 0) > SAME_X_M);
}

/**
 * The strip between the depths `from` and `to`, slab by slab from left to
 * right; the trapezoids of one slab lie back to front.
 */
export function sliceStrip(
  edges: readonly SideEdge[],
  from: number,
  to: number,
): readonly (readonly Trapezoid[])[] {
  const xs = breaks(edges, from, to);
  const slabs: Trapezoid[][] = [];
  const clamp = (y: number) => Math.min(to, Math.max(from, y));
  for (let i = 1; i < xs.length; i += 1) {
    const x0 = xs[i - 1] ?? 0;
    const x1 = xs[i] ?? 0;
    const mid = (x0 + x1) / 2;
    const crossing: { edge: SideEdge; y: number }[] = [];
    for (const edge of edges) {
      // Half open, so that a corner right above the middle counts once.
      if (edge.x0 <= mid && edge.x1 > mid) crossing.push({ edge, y: yAt(edge, mid) });
    }
    crossing.sort((a, b) => a.y - b.y);
    const slab: Trapezoid[] = [];
    for (let k = 0; k + 1 < crossing.length; k += 2) {
      const [back, front] = [crossing[k], crossing[k + 1]];
      if (!back || !front || front.y <= from || back.y >= to) continue;
      const lo0 = clamp(yAt(back.edge, x0));
      const lo1 = clamp(yAt(back.edge, x1));
      const hi0 = Math.max(lo0, clamp(yAt(front.edge, x0)));
      const hi1 = Math.max(lo1, clamp(yAt(front.edge, x1)));
      if (hi0 > lo0 || hi1 > lo1) slab.push({ x0, x1, lo0, lo1, hi0, hi1 });
    }
    slabs.push(slab);
  }
  return slabs;
}

/** Where edges cross a depth, in pairs: the surface just before (`side` 1) or just behind (-1) it. */
function crossSection(edges: readonly SideEdge[], depth: number, side: 1 | -1): Spans {
  const xs: number[] = [];
  for (const { x0, y0, x1, y1 } of edges) {
    const crosses = side === 1 ? y0 <= depth !== y1 <= depth : y0 < depth !== y1 < depth;
    if (crosses) xs.push(x0 + ((x1 - x0) * (depth - y0)) / (y1 - y0));
  }
  xs.sort((a, b) => a - b);
  const spans: [number, number][] = [];
  for (let i = 0; i + 1 < xs.length; i += 2) spans.push([xs[i] ?? 0, xs[i + 1] ?? 0]);
  return spans;
}

/**
 * Where along the back edge the strip holds any surface: where it reaches
 * either depth, and under the edges in between.
 */
export function shadow(edges: readonly SideEdge[], from: number, to: number): Spans {
  const spans = [...crossSection(edges, from, 1), ...crossSection(edges, to, -1)];
  for (const edge of edges) {
    const { x0, y0, x1, y1 } = edge;
    if (Math.max(y0, y1) <= from || Math.min(y0, y1) >= to || x0 === x1) continue;
    if (y0 === y1) {
      spans.push([x0, x1]);
      continue;
    }
    const xAt = (y: number) =>
      x0 + ((x1 - x0) * (Math.min(to, Math.max(from, y)) - y0)) / (y1 - y0);
    const a = xAt(y0);
    const b = xAt(y1);
    spans.push(a < b ? [a, b] : [b, a]);
  }
  return tidySpans(spans);
}
