import type { ChainLink } from '../../../core/plan/index.ts';

type Spot = { readonly steps: readonly string[]; readonly y: number };

/** A line along the bars that decide the end, from one to the next where the one waits for the other; an SVG path. */
export function threadOf(
  chain: readonly ChainLink[],
  spots: readonly Spot[],
  x: (atS: number) => number,
): string {
  const parts: string[] = [];
  let last: Spot | undefined;
  for (const link of chain) {
    const to = x(link.toS).toFixed(1);
    if (link.kind === 'closed') {
      if (parts.length > 0) parts.push(`H${to}`);
      continue;
    }
    // A kettle that is poured stands in a lane and in its row: the line stays where it is.
    const able = spots.filter(({ steps }) => steps.includes(link.step));
    const spot: Spot | undefined = able.find((one) => one === last) ?? able[0];
    if (!spot) continue;
    last = spot;
    const from = x(link.fromS).toFixed(1);
    parts.push(parts.length === 0 ? `M${from} ${spot.y}` : `H${from}V${spot.y}`, `H${to}`);
  }
  return parts.join('');
}
