/** No path of lags leads from one activity to the other. */
export const NO_LAG = -Infinity;

/** Start-to-start: `to` starts at least `weight` ticks after `from` starts. */
export type Arc = { readonly from: number; readonly to: number; readonly weight: number };

type Paths = { readonly lag: Float64Array } | { readonly cycle: readonly number[] };

/**
 * Longest paths between all pairs of `count` activities, row by row: entry
 * `i * count + j` is the least time from the start of i to the start of j
 * (negative: j may start that much before i, and no more).
 * Floyd, Communications of the ACM 5 (1962) 345; what no path reaches is skipped.
 * @returns the matrix, or the activities of a cycle whose lags add up to more than nothing
 */
export function longestPaths(count: number, arcs: readonly Arc[]): Paths {
  const paths = pathsOf(count, arcs, undefined);
  // The way round a cycle is only kept track of when there is one.
  return 'lag' in paths ? paths : pathsOf(count, arcs, new Int32Array(count * count).fill(-1));
}

function pathsOf(count: number, arcs: readonly Arc[], next: Int32Array | undefined): Paths {
  const lag = new Float64Array(count * count).fill(NO_LAG);
  for (let i = 0; i < count; i++) lag[i * count + i] = 0;
  for (const { from, to, weight } of arcs) {
    if (from === to && weight > 0) return { cycle: [from] };
    const at = from * count + to;
    if (from !== to && weight > lag[at]!) {
      lag[at] = weight;
      if (next) next[at] = to;
    }
  }
  const reached = new Int32Array(count);
  for (let via = 0; via < count; via++) {
    let many = 0;
    for (let to = 0; to < count; to++) if (lag[via * count + to] !== NO_LAG) reached[many++] = to;
    for (let from = 0; from < count; from++) {
      const first = lag[from * count + via]!;
      if (first === NO_LAG || from === via) continue;
      for (let k = 0; k < many; k++) {
        const to = reached[k]!;
        const through = first + lag[via * count + to]!;
        const at = from * count + to;
        if (through <= lag[at]!) continue;
        if (to === from) return { cycle: next ? pathBack(count, next, from, via) : [] };
        lag[at] = through;
        if (next) next[at] = next[from * count + via]!;
      }
    }
  }
  return { lag };
}

function pathBack(count: number, next: Int32Array, from: number, via: number): number[] {
  const path: number[] = [];
  for (let at = from; at !== via && path.length <= count; at = next[at * count + via]!)
    path.push(at);
  for (let at = via; at !== from && path.length <= 2 * count; at = next[at * count + from]!) {
    path.push(at);
  }
  return path;
}

/** Rows and columns taken at once, so that both stay near in memory. */
const TILE = 32;

/** The matrix with rows and columns changed round: entry `i * count + j` is the lag from j to i. */
export function transposed(lag: Float64Array, count: number): Float64Array {
  const into = new Float64Array(count * count);
  for (let top = 0; top < count; top += TILE) {
    const bottom = Math.min(count, top + TILE);
    for (let left = 0; left < count; left += TILE) {
      const right = Math.min(count, left + TILE);
      for (let i = top; i < bottom; i++) {
        for (let j = left; j < right; j++) into[j * count + i] = lag[i * count + j]!;
      }
    }
  }
  return into;
}

/**
 * Adds one arc to a matrix of longest paths, in place.
 * @returns false when it closes a cycle of more than nothing
 */
export function addArc(
  lag: Float64Array,
  count: number,
  from: number,
  to: number,
  weight: number,
): boolean {
  if (weight <= lag[from * count + to]!) return true;
  if (weight + lag[to * count + from]! > 0) return false;
  for (let i = 0; i < count; i++) {
    const head = lag[i * count + from]!;
    if (head === NO_LAG) continue;
    for (let j = 0; j < count; j++) {
      const through = head + weight + lag[to * count + j]!;
      if (through > lag[i * count + j]!) lag[i * count + j] = through;
    }
  }
  return true;
}
