/**
 * Which strips, each at most one swath deep, cover a surface with the least
 * length of lane: a shortest path over the depths at which a strip may begin.
 * The length of a strip's lanes is the length of its shadow on the back edge,
 * counted twice where a cut-out lies wholly inside the strip.
 */
import { edgesOf } from '../../geometry/index.ts';
import { ringsOf } from '../model/plane.ts';
import { shadow, type SideEdge } from './slices.ts';
import { bothSpans, eitherSpans, lessSpans, spansLength, type Spans } from '../model/spans.ts';
import type { Surface } from '../model/types.ts';

/** Depths tried in one swath besides those the edges suggest. */
const STEPS_A_SWATH = 12;
/** Longest edges parallel to the lanes from which whole swaths are counted off. */
const GUIDE_EDGES = 6;
/** Rounding allowed to a strip, metres. */
const ROUNDING_M = 1e-9;
/** What one more lane costs beside its length, in swaths: its turn. */
const TURN_SWATHS = 1;
/** Weight that makes strips of equal cost equally deep; small against any length of lane. */
const EVENNESS = 0.01;

/** Bands in which a strip is weighed when strips are spaced evenly. */
const EVENING_BANDS = 4;
/** Length a strip may gain for the sake of even spacing, in swaths. */
const EVENING_LOSS_SWATHS = 0.05;

/** Depths of the edges parallel to the lanes, the longest first, and of both ends. */
function guides(surface: Surface): { ends: [number, number]; depths: number[] } {
  let ends: [number, number] = [Infinity, -Infinity];
  const lengths = new Map<number, number>();
  for (const ring of ringsOf(surface)) {
    for (const [a, b] of edgesOf(ring)) {
      ends = [Math.min(ends[0], a[1]), Math.max(ends[1], a[1])];
      if (Math.abs(a[1] - b[1]) > ROUNDING_M) continue;
      lengths.set(a[1], (lengths.get(a[1]) ?? 0) + Math.abs(a[0] - b[0]));
    }
  }
  const depths = [...lengths].toSorted((a, b) => b[1] - a[1]).map(([depth]) => depth);
  return { ends, depths: depths.slice(0, GUIDE_EDGES) };
}

/** Depths at which a strip may begin or end, in order. */
function candidates(surface: Surface, swathM: number): number[] {
  const { ends, depths } = guides(surface);
  const [first, last] = ends;
  const guided: number[] = [first, last];
  for (const depth of [first, last, ...depths]) {
    guided.push(depth);
    for (let y = depth + swathM; y < last; y += swathM) guided.push(y);
    for (let y = depth - swathM; y > first; y -= swathM) guided.push(y);
  }
  guided.sort((a, b) => a - b);
  const apart = guided.filter((y, i) => i === 0 || y - (guided[i - 1] ?? 0) > 1e-7);
  const all: number[] = [];
  apart.forEach((y, i) => {
    all.push(y);
    const next = apart[i + 1];
    if (next === undefined) return;
    const steps = Math.floor(((next - y) / swathM) * STEPS_A_SWATH);
    for (let k = 1; k < steps; k += 1) all.push(y + ((next - y) * k) / steps);
  });
  return all;
}

/** Length of lane in a strip grown band by band. */
class GrowingStrip {
  private all: Spans = [];
  private last: Spans = [];
  private twiceM = 0;

  add(band: Spans): void {
    const ended = lessSpans(this.all, this.last);
    if (ended.length > 0) this.twiceM += spansLength(bothSpans(band, ended));
    this.all = eitherSpans(this.all, band);
    this.last = band;
  }

  costM(swathM: number): number {
    return spansLength(this.all) + this.twiceM + this.all.length * TURN_SWATHS * swathM;
  }
}

/**
 * Depths of the strip borders from back to front, for a surface in its frame.
 * @param swathM deepest strip, metres
 * @param firstWhole the strip at the back is a full swath deep, so that its lane lies as near as can be
 */
export function chooseStrips(
  surface: Surface,
  edges: readonly SideEdge[],
  swathM: number,
  firstWhole = false,
): readonly number[] {
  const depths = candidates(surface, swathM);
  const bands = depths.slice(1).map((to, i) => shadow(edges, depths[i] ?? to, to));
  const best = depths.map(() => ({ costM: Infinity, from: -1 }));
  if (best[0]) best[0].costM = 0;
  for (let i = 0; i < depths.length; i += 1) {
    const strip = new GrowingStrip();
    const startM = best[i]?.costM ?? Infinity;
    for (let j = i + 1; j < depths.length; j += 1) {
      const deep = (depths[j] ?? 0) - (depths[i] ?? 0);
      if (deep > swathM + ROUNDING_M) break;
      strip.add(bands[j - 1] ?? []);
      const short = deep < swathM - ROUNDING_M && j < depths.length - 1;
      if (firstWhole && i === 0 && short) continue;
      const share = deep / swathM;
      const costM = startM + strip.costM(swathM) + EVENNESS * swathM * share * share;
      const there = best[j];
      if (there && costM < there.costM) {
        there.costM = costM;
        there.from = i;
      }
    }
  }
  const borders: number[] = [];
  for (let k = depths.length - 1; k >= 0; k = best[k]?.from ?? -1) borders.push(depths[k] ?? 0);
  borders.reverse();
  if (!firstWhole) return evened(borders, edges, swathM);
  return [...borders.slice(0, 1), ...evened(borders.slice(1), edges, swathM)];
}

function stripCostM(edges: readonly SideEdge[], from: number, to: number, swathM: number): number {
  // Thin bands, so that a cut-out lying wholly inside the strip is seen.
  const strip = new GrowingStrip();
  for (let k = 0; k < EVENING_BANDS; k += 1) {
    const at = (share: number) => from + ((to - from) * share) / EVENING_BANDS;
    strip.add(shadow(edges, at(k), at(k + 1)));
  }
  return strip.costM(swathM);
}

/** Spaces runs of strips evenly, the longest runs first, where that makes the lanes no longer. */
function evened(
  borders: readonly number[],
  edges: readonly SideEdge[],
  swathM: number,
): readonly number[] {
  let even = [...borders];
  const costs = new Map<string, number>();
  const cost = (from: number, to: number) => {
    const key = `${from} ${to}`;
    const known = costs.get(key) ?? stripCostM(edges, from, to, swathM);
    costs.set(key, known);
    return known;
  };
  for (let start = 0; start + 2 < borders.length;) {
    let next = start + 1;
    for (let end = borders.length - 1; end >= start + 2; end -= 1) {
      const from = even[start] ?? 0;
      const deep = ((even[end] ?? 0) - from) / (end - start);
      const tried = even.map((y, i) => (i > start && i < end ? from + deep * (i - start) : y));
      let gainM = 0;
      for (let i = start; i < end; i += 1) {
        gainM += cost(even[i] ?? 0, even[i + 1] ?? 0) - cost(tried[i] ?? 0, tried[i + 1] ?? 0);
      }
      if (gainM < -EVENING_LOSS_SWATHS * swathM * (end - start)) continue;
      even = tried;
      next = end;
      break;
    }
    start = next;
  }
  return even;
}
