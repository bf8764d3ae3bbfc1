import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaM2, pointInPolygon, type Polygon } from '../../../src/core/geometry/index.ts';
import { withAllowances } from '../../../src/core/covering/pieces/allowances.ts';
import { blocksOf } from '../../../src/core/covering/pieces/blocks.ts';
import { framed, isRectilinear, type Block } from '../../../src/core/covering/pieces/frame.ts';

const cm = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => n / 100);

/** A counter round one or two corners: L, or U of three legs. */
const corner: fc.Arbitrary<Polygon> = fc
  .record({
    legM: cm(120, 300),
    depthM: cm(45, 70),
    sideM: cm(100, 260),
    otherM: cm(100, 260),
    isU: fc.boolean(),
  })
  .map(({ legM, depthM, sideM, otherM, isU }) => {
    const l: Polygon = [
      [0, 0],
      [depthM, 0],
      [depthM, sideM],
      [legM + depthM, sideM],
      [legM + depthM, sideM + depthM],
      [0, sideM + depthM],
    ];
    if (!isU) return l;
    return [
      [0, 0],
      [depthM, 0],
      [depthM, sideM],
      [legM + depthM, sideM],
      [legM + depthM, sideM - otherM],
      [legM + 2 * depthM, sideM - otherM],
      [legM + 2 * depthM, sideM + depthM],
      [0, sideM + depthM],
    ];
  });

const angle = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });

function rotated(polygon: Polygon, by: number): Polygon {
  return polygon.map(([x, y]) => [
    x * Math.cos(by) - y * Math.sin(by),
    x * Math.sin(by) + y * Math.cos(by),
  ]);
}

function area({ x0, y0, x1, y1 }: Block): number {
  return (x1 - x0) * (y1 - y0);
}

describe('a corner counter', () => {
  it('is cut into rectangles that are all of it and nothing else, however it stands', () => {
    fc.assert(
      fc.property(corner, angle, (outline, by) => {
        const surface = framed(rotated(outline, by), [], []);
        expect(isRectilinear(surface.outline)).toBe(true);
        const blocks = blocksOf(surface);
        const covered = blocks.reduce((sum, block) => sum + area(block), 0);
        expect(covered).toBeCloseTo(areaM2(outline), 6);
        expect(blocks.length).toBeLessThanOrEqual(outline.length / 2);
        for (const block of blocks) {
          const middle = [(block.x0 + block.x1) / 2, (block.y0 + block.y1) / 2] as const;
          expect(pointInPolygon(middle, surface.outline)).toBe(true);
        }
      }),
    );
  });

  it('is joined beside its sink, not across it', () => {
    const outline: Polygon = [
      [0, 0],
      [2.4, 0],
      [2.4, 0.6],
      [0.6, 0.6],
      [0.6, 2],
      [0, 2],
    ];
    // A sink that reaches from the corner along the long leg: a join at x = 0.6 would cross it.
    const sink: Polygon = [
      [0.4, 0.1],
      [1.1, 0.1],
      [1.1, 0.5],
      [0.4, 0.5],
    ];
    const joinedAt = (holes: readonly Polygon[]) =>
      blocksOf(framed(outline, holes, [])).map(({ x0, y0, x1, y1 }) => [x1 - x0, y1 - y0]);
    expect(joinedAt([sink])).toContainEqual([2.4, 0.6]);
  });
});

describe('what a cover reaches beyond', () => {
  const allowances = { overhangM: 0.05, wallM: 0.02, overlapM: 0.04 };

  it('is an overhang where the edge is free, and a strip up the wall', () => {
    const outline: Polygon = [
      [0, 0],
      [2, 0],
      [2, 0.6],
      [0, 0.6],
    ];
    const surface = framed(outline, [], [[2, 3], [3, 0]]); // prettier-ignore
    const [block] = blocksOf(surface);
    const wide = withAllowances(block!, surface, allowances);
    expect(wide.x0).toBeCloseTo(-0.02, 9);
    expect(wide.y0).toBeCloseTo(-0.05, 9);
    expect(wide.x1).toBeCloseTo(2.05, 9);
    expect(wide.y1).toBeCloseTo(0.62, 9);
  });

  it('is one piece over the other where two meet', () => {
    const outline: Polygon = [
      [0, 0],
      [2, 0],
      [2, 0.6],
      [0.6, 0.6],
      [0.6, 2],
      [0, 2],
    ];
    const surface = framed(outline, [], []);
    const blocks = blocksOf(surface).map((block) => withAllowances(block, surface, allowances));
    expect(blocks.length).toBe(2);
    const [a, b] = blocks as [Block, Block];
    const overX = Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0);
    const overY = Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0);
    expect(Math.min(overX, overY)).toBeGreaterThanOrEqual(allowances.overlapM - 1e-9);
  });
});
