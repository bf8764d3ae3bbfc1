import { boundingBox, pointInPolygon, type Polygon } from '../../geometry/index.ts';
import { SAME_LINE_M, type Block, type Framed } from './frame.ts';

/** Places of corners along one side, those on one line told once. */
function places(values: readonly number[]): readonly number[] {
  const found: number[] = [];
  for (const value of values.toSorted((a, b) => a - b)) {
    const last = found.at(-1);
    if (last === undefined || value - last > SAME_LINE_M) found.push(value);
  }
  return found;
}

type Span = readonly [number, number];

function spansOf(values: readonly number[]): readonly Span[] {
  return values.slice(1).map((to, at) => [values[at]!, to]);
}

/** The surface in slabs across one side; neighbours that reach equally far are one. */
function slabs(outline: Polygon, across: 'x' | 'y'): readonly Block[] {
  const xs = spansOf(places(outline.map(([x]) => x)));
  const ys = spansOf(places(outline.map(([, y]) => y)));
  const [slabSpans, runSpans] = across === 'x' ? [xs, ys] : [ys, xs];
  const blocks: { slab: [number, number]; run: [number, number] }[] = [];
  for (const slab of slabSpans) {
    const runs: [number, number][] = [];
    for (const run of runSpans) {
      const [u, v] = [(slab[0] + slab[1]) / 2, (run[0] + run[1]) / 2];
      if (!pointInPolygon(across === 'x' ? [u, v] : [v, u], outline)) continue;
      const last = runs.at(-1);
      if (last && last[1] === run[0]) last[1] = run[1];
      else runs.push([...run]);
    }
    for (const run of runs) {
      const same = blocks.find(
        (one) => one.slab[1] === slab[0] && one.run[0] === run[0] && one.run[1] === run[1],
      );
      if (same) same.slab[1] = slab[1];
      else blocks.push({ slab: [...slab], run });
    }
  }
  return blocks.map(({ slab, run }) =>
    across === 'x'
      ? { x0: slab[0], x1: slab[1], y0: run[0], y1: run[1] }
      : { y0: slab[0], y1: slab[1], x0: run[0], x1: run[1] },
  );
}

/** Blocks that a cut-out reaches beyond the edge of: a join would run over it. */
function joinsOverHoles(blocks: readonly Block[], holes: readonly Polygon[]): number {
  const meets = (block: Block, hole: Polygon) => {
    const { xMinM, yMinM, xMaxM, yMaxM } = boundingBox(hole);
    return block.x0 < xMaxM && block.x1 > xMinM && block.y0 < yMaxM && block.y1 > yMinM;
  };
  return holes.filter((hole) => blocks.filter((block) => meets(block, hole)).length > 1).length;
}

/**
 * A surface whose edges all run along x or y as rectangles: the fewest of the
 * slabs in either direction, with no join over a cut-out where that can be.
 */
export function blocksOf({ outline, holes }: Framed): readonly Block[] {
  const [best = []] = [slabs(outline, 'x'), slabs(outline, 'y')].toSorted(
    (a, b) => joinsOverHoles(a, holes) - joinsOverHoles(b, holes) || a.length - b.length,
  );
  return best;
}
