import type { Ring, Surface } from '../../../src/core/pouring/index.ts';

/** Corners on a circle round the origin. */
export const regular = (corners: number, radius: number): Ring =>
  Array.from({ length: corners }, (_, k) => [
    radius * Math.cos((2 * Math.PI * k) / corners + 0.1),
    radius * Math.sin((2 * Math.PI * k) / corners + 0.1),
  ]);

export const square: Ring = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/** Area by the textbook, apart from the code under test. */
export const shoelace = (ring: Ring) =>
  Math.abs(
    ring.reduce((sum, [x, y], i) => {
      const [u, v] = ring[(i + 1) % ring.length] ?? [x, y];
      return sum + x * v - u * y;
    }, 0) / 2,
  );

export const areaOf = (pieces: readonly Surface[]) =>
  pieces.reduce(
    (sum, { outer, holes }) => sum + shoelace(outer) - holes.reduce((s, h) => s + shoelace(h), 0),
    0,
  );
