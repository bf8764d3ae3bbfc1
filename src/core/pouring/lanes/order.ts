/**
 * The order of the blocks: none before those behind it, one leg after the
 * other, and the least carried and lifted in between. Exact for few blocks, nearest-next for many.
 */
import type { Block, Pour } from './blocks.ts';
import type { Linker } from './link.ts';

/** Up to this many blocks every order is weighed. */
const EXACT_BLOCKS = 9;

type Begun = { readonly costM: number; readonly pours: readonly Pour[] };

function ready(block: Block, done: number): boolean {
  return block.after.every((b) => (done & (1 << b)) !== 0);
}

/** Blocks of each leg, as bits. */
function legSets(blocks: readonly Block[]): ReadonlyMap<number, number> {
  const sets = new Map<number, number>();
  blocks.forEach(({ leg }, b) => sets.set(leg, (sets.get(leg) ?? 0) | (1 << b)));
  return sets;
}

function exactOrder(blocks: readonly Block[], link: Linker): readonly Pour[] {
  const legs = legSets(blocks);
  // Best way to have poured a set of blocks, by the pour that came last.
  let layer = new Map<number, Map<Pour, Begun>>([[0, new Map()]]);
  for (let size = 0; size < blocks.length; size += 1) {
    const next = new Map<number, Map<Pour, Begun>>();
    for (const [done, lasts] of layer) {
      blocks.forEach((block, b) => {
        if ((done & (1 << b)) !== 0 || !ready(block, done)) return;
        const set = done | (1 << b);
        const there = next.get(set) ?? new Map<Pour, Begun>();
        next.set(set, there);
        for (const pour of block.pours) {
          let best: Begun | undefined =
            size === 0 ? { costM: pour.linksM, pours: [pour] } : undefined;
          for (const [last, begun] of lasts) {
            const legOfLast = legs.get(last.leg) ?? 0;
            if (last.leg !== block.leg && (legOfLast & done) !== legOfLast) continue;
            const costM = begun.costM + link(last.end, pour.start).costM + pour.linksM;
            if (!best || costM < best.costM) best = { costM, pours: [...begun.pours, pour] };
          }
          if (best) there.set(pour, best);
        }
      });
    }
    layer = next;
  }
  let best: Begun | undefined;
  for (const lasts of layer.values()) {
    for (const begun of lasts.values()) {
      if (!best || begun.costM < best.costM) best = begun;
    }
  }
  return best?.pours ?? [];
}

function nearestOrder(blocks: readonly Block[], link: Linker): readonly Pour[] {
  const order: Pour[] = [];
  const done = new Set<number>();
  const openLeg = (leg: number | undefined) =>
    blocks.some((block, b) => block.leg === leg && !done.has(b));
  let last: Pour | undefined;
  while (done.size < blocks.length) {
    let best: { block: number; pour: Pour; costM: number } | undefined;
    const stays = openLeg(last?.leg);
    for (const [b, block] of blocks.entries()) {
      if (done.has(b) || !block.after.every((a) => done.has(a))) continue;
      if (last && last.leg !== block.leg && stays) continue;
      for (const pour of block.pours) {
        const costM = pour.linksM + (last ? link(last.end, pour.start).costM : 0);
        if (!best || costM < best.costM) best = { block: b, pour, costM };
      }
    }
    if (!best) break;
    done.add(best.block);
    order.push(best.pour);
    last = best.pour;
  }
  return order;
}

/** The pours of all blocks in the order to pour them. */
export function orderBlocks(blocks: readonly Block[], link: Linker): readonly Pour[] {
  return blocks.length <= EXACT_BLOCKS ? exactOrder(blocks, link) : nearestOrder(blocks, link);
}
