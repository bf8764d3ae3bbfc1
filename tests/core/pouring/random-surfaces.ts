import type { LanePoint, LanesOptions, Ring, Surface } from '../../../src/core/pouring/index.ts';

/** A generator with a fixed seed: the same surfaces in every run (mulberry32, a public-domain algorithm). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export type Sample = {
  readonly kind: string;
  readonly surface: Surface;
  readonly options: LanesOptions;
};

type Draw = (low: number, high: number) => number;

const rectangle = (x: number, y: number, w: number, h: number): LanePoint[] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];

function round(x: number, y: number, r: number, corners: number): LanePoint[] {
  return Array.from({ length: corners }, (_, k) => {
    const angle = (2 * Math.PI * k) / corners;
    return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
  });
}

/** Counter with its corners drawn off square and cut-outs that may touch or overhang. */
function counter(draw: Draw): Surface {
  const w = draw(1.2, 4);
  const d = draw(0.5, 1.1);
  const off = () => draw(-0.06, 0.06);
  const outer: LanePoint[] = [
    [0, 0],
    [w, 0],
    [w + off(), d + off()],
    [off(), d + off()],
  ];
  const holes: Ring[] = [];
  for (let k = Math.floor(draw(0, 4)); k > 0; k -= 1) {
    const x = draw(0.1, w - 0.2);
    const y = draw(0.05, d - 0.1);
    holes.push(
      draw(0, 1) < 0.5
        ? rectangle(x, y, draw(0.2, 0.8), draw(0.1, 0.45))
        : round(x, y, draw(0.02, 0.22), Math.floor(draw(5, 25))),
    );
  }
  return { outer, holes };
}

/** Blob whose radius wanders, corners sharp. */
function blob(draw: Draw): Surface {
  const corners = Math.floor(draw(5, 15));
  const radius = draw(0.5, 1.4);
  const outer = Array.from({ length: corners }, (_, k): LanePoint => {
    const angle = (2 * Math.PI * (k + draw(-0.3, 0.3))) / corners;
    const r = radius * draw(0.6, 1);
    return [1.4 * r * Math.cos(angle), r * Math.sin(angle)];
  });
  const holes = [0.25, -0.25]
    .slice(0, Math.floor(draw(0, 3)))
    .map((x) =>
      round(x * radius, draw(-0.1, 0.1), draw(0.05, 0.2) * radius, Math.floor(draw(3, 12))),
    );
  return { outer, holes };
}

/** Steps along the front, right angles. */
function stairs(draw: Draw): Surface {
  const outer: LanePoint[] = [[0, 0]];
  const steps = Math.floor(draw(2, 6));
  const width = draw(0.4, 0.9);
  outer.push([steps * width, 0]);
  for (let k = steps; k > 0; k -= 1) {
    const d = draw(0.4, 1.2);
    outer.push([k * width, d], [(k - 1) * width, d]);
  }
  const holes = draw(0, 1) < 0.5 ? [rectangle(0.3 * width, 0.1, 0.8 * width, 0.22)] : [];
  return { outer, holes };
}

function moved(surface: Surface, angle: number, dx: number, dy: number): Surface {
  const move = ([x, y]: LanePoint): LanePoint => [
    dx + x * Math.cos(angle) - y * Math.sin(angle),
    dy + x * Math.sin(angle) + y * Math.cos(angle),
  ];
  return { outer: surface.outer.map(move), holes: surface.holes.map((hole) => hole.map(move)) };
}

/** Surface number `n` of the fixed list. */
export function sample(n: number): Sample {
  const random = seeded(1000 + n);
  const draw: Draw = (low, high) => low + (high - low) * random();
  const kinds = { counter, blob, stairs };
  const kind = (['counter', 'blob', 'stairs'] as const)[n % 3] ?? 'counter';
  const surface = moved(kinds[kind](draw), draw(0, 6.28), draw(-3, 3), draw(-3, 3));
  const swathM = draw(0.06, 0.12);
  const options = kind === 'blob' ? { swathM } : { swathM, backEdges: [[0, 1]] as const };
  return { kind, surface, options };
}
