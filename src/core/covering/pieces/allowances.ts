import { distanceToEdgeM, edgesOf, pointInPolygon, type Point } from '../../geometry/index.ts';
import { SAME_LINE_M, type Block, type Framed } from './frame.ts';

/** How far a cover reaches beyond the surface. */
export type Allowances = {
  /** Over a free edge, to be taped beneath it, m. */
  readonly overhangM: number;
  /** Up a wall, m. */
  readonly wallM: number;
  /** Over the next piece, m. */
  readonly overlapM: number;
};

type Side = 'x0' | 'x1' | 'y0' | 'y1';

/** Points looked at along a side. */
const SAMPLES = 24;

/** Points just outside one side of a block. */
function outside({ x0, y0, x1, y1 }: Block, side: Side): readonly Point[] {
  return Array.from({ length: SAMPLES }, (_, i) => {
    const share = (i + 0.5) / SAMPLES;
    const x = x0 + (x1 - x0) * share;
    const y = y0 + (y1 - y0) * share;
    const off = 2 * SAME_LINE_M;
    if (side === 'x0') return [x0 - off, y];
    if (side === 'x1') return [x1 + off, y];
    return side === 'y0' ? [x, y0 - off] : [x, y1 + off];
  });
}

/** Number of the edge of the outline that is nearest to a point. */
function nearestEdge(point: Point, { outline }: Framed): number {
  const distances = edgesOf(outline).map(([a, b]) => distanceToEdgeM(point, a, b));
  return distances.indexOf(Math.min(...distances));
}

/** What one side of a block meets along its length: the next block, a wall, the free edge. */
function meets(block: Block, side: Side, surface: Framed): ReadonlySet<'block' | 'wall' | 'free'> {
  return new Set(
    outside(block, side).map((point) => {
      if (pointInPolygon(point, surface.outline)) return 'block';
      return surface.walls.has(nearestEdge(point, surface)) ? 'wall' : 'free';
    }),
  );
}

/** A block with what its cover needs beyond it; of two that meet, the one further along lies over the other. */
export function withAllowances(
  block: Block,
  surface: Framed,
  { overhangM, wallM, overlapM }: Allowances,
): Block {
  const beyond = (side: Side): number => {
    const met = meets(block, side, surface);
    const over = met.has('block') && (side === 'x0' || side === 'y0') ? overlapM : 0;
    return Math.max(over, met.has('wall') ? wallM : 0, met.has('free') ? overhangM : 0);
  };
  return {
    x0: block.x0 - beyond('x0'),
    y0: block.y0 - beyond('y0'),
    x1: block.x1 + beyond('x1'),
    y1: block.y1 + beyond('y1'),
  };
}
