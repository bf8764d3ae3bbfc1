import { bench, describe } from 'vitest';
import { planLanes } from '../../src/core/pouring/index.ts';
import type { LanePoint, Surface } from '../../src/core/pouring/index.ts';

/** A million steps of a fixed arithmetic: what everything else is measured against. */
function referenceLoop(): number {
  let state = 1;
  for (let step = 0; step < 1e6; step++) state = (Math.imul(state, 1664525) + 1013904223) | 0;
  return state;
}

/** A hall counter of 200 corners, wavy at the back and the front, with three oval cut-outs. */
function hallCounter(): Surface {
  const steps = Array.from({ length: 100 }, (_, k) => k);
  const back = steps.map((k): LanePoint => [k * 0.12, 0.02 * Math.sin(k / 7)]);
  const front = steps.map((k): LanePoint => [k * 0.12, 0.8 + 0.15 * Math.sin(k / 9)]);
  const oval = (x: number) =>
    Array.from({ length: 24 }, (_, k): LanePoint => {
      const angle = (k * Math.PI) / 12;
      return [x + 0.3 * Math.cos(angle), 0.42 + 0.2 * Math.sin(angle)];
    });
  return { outer: [...back, ...front.toReversed()], holes: [1.5, 4.5, 8].map(oval) };
}

const galley: Surface = {
  outer: [
    [0, 0],
    [2.6, 0],
    [2.6, 0.62],
    [0, 0.62],
  ],
  holes: [
    [
      [0.9, 0.07],
      [1.46, 0.07],
      [1.46, 0.55],
      [0.9, 0.55],
    ],
  ],
};

/** An island too wide for one arm, poured from its four sides. */
const island: Surface = {
  outer: [
    [0, 0],
    [2.4, 0],
    [2.4, 1.2],
    [0, 1.2],
  ],
  holes: [],
};
const round = ([a, b, c, d]: readonly LanePoint[]) =>
  [
    [a, b],
    [b, c],
    [c, d],
    [d, a],
  ].map(([from = [0, 0], to = [0, 0]], i) => ({
    edge: [i, (i + 1) % 4] as const,
    a: from,
    b: to,
  }));

describe('lanes, as a ratio of the reference loop', () => {
  const hall = hallCounter();
  bench('reference loop', () => void referenceLoop());
  bench('a galley with a hob', () => void planLanes(galley, { swathM: 0.09, backEdges: [[0, 1]] }));
  bench(
    'a galley with a hob, from where one stands',
    () =>
      void planLanes(galley, {
        swathM: 0.09,
        backEdges: [[0, 1]],
        sides: round(galley.outer).slice(2, 3),
      }),
  );
  bench(
    'an island from all its sides',
    () => void planLanes(island, { swathM: 0.09, sides: round(island.outer) }),
  );
  bench(
    'a hall counter of 200 corners with three cut-outs',
    () => void planLanes(hall, { swathM: 0.09, backEdges: [[0, 99]] }),
  );
});
