import { NO_LAG } from '../model/lags.ts';
import type { Model } from '../model/model.ts';

/** Work that starts at fixed distances, from its first on: such as a glow and the cooling chained to it. */
type Block = readonly number[];

/** The blocks of a model with their activities in the order of their starts; most are one activity. */
function blocksOf({ count, lag, duration }: Model): readonly Block[] {
  const taken = new Uint8Array(count);
  const blocks: Block[] = [];
  for (let i = 0; i < count; i++) {
    if (taken[i]) continue;
    const block = [i];
    for (let j = i + 1; j < count; j++) {
      const to = lag[i * count + j]!;
      const back = lag[j * count + i]!;
      if (to !== NO_LAG && back === -to) block.push(j);
    }
    for (const j of block) taken[j] = 1;
    const at = (j: number) => lag[i * count + j]!;
    blocks.push(block.toSorted((a, b) => at(a) - at(b) || duration[a]! - duration[b]! || a - b));
  }
  return blocks;
}

function areAlike(model: Model, a: Block, b: Block): boolean {
  const { count, lag, duration, demand, closed, earliest, latest, capacity } = model;
  const kinds = capacity.length;
  return a.every((i, k) => {
    const j = b[k]!;
    return (
      duration[i] === duration[j] &&
      closed[i] === closed[j] &&
      earliest[i] === earliest[j] &&
      latest[i] === latest[j] &&
      lag[a[0]! * count + i] === lag[b[0]! * count + j] &&
      demand
        .subarray(i * kinds, (i + 1) * kinds)
        .every((amount, r) => amount === demand[j * kinds + r])
    );
  });
}

/** Whether two alike blocks may change places: their lags to and from all else, and to each other, are the same. */
function maySwap({ count, lag }: Model, a: Block, b: Block): boolean {
  const inBlock = new Set([...a, ...b]);
  const [i, j] = [a[0]!, b[0]!];
  if (lag[i * count + j] !== lag[j * count + i]) return false;
  for (let k = 0; k < count; k++) {
    if (inBlock.has(k)) continue;
    if (lag[i * count + k] !== lag[j * count + k]) return false;
    if (lag[k * count + i] !== lag[k * count + j]) return false;
  }
  return true;
}

/** What blocks that may change places share, told at a glance. */
function lookOf({ count, lag, duration, earliest, latest }: Model, block: Block): string {
  const i = block[0]!;
  let behind = 0;
  let sum = 0;
  for (let at = i * count; at < (i + 1) * count; at++) {
    if (lag[at] === NO_LAG) continue;
    behind++;
    sum += lag[at]!;
  }
  return [block.length, duration[i], earliest[i], latest[i], behind, sum].join(' ');
}

/** Blocks that may change places with all others of their row. */
function rowsOf(model: Model): readonly (readonly Block[])[] {
  const byLook = new Map<string, Block[][]>();
  for (const block of blocksOf(model)) {
    const look = lookOf(model, block);
    const rows = byLook.get(look) ?? [];
    byLook.set(look, rows);
    const row = rows.find(
      ([first]) => areAlike(model, first!, block) && maySwap(model, first!, block),
    );
    if (row) row.push(block);
    else rows.push([block]);
  }
  return [...byLook.values()].flat();
}

/** Work that is the same but for its name, in rows. */
export class Twins {
  /** Neighbours of a row, the one that starts first before the other. */
  readonly pairs: readonly (readonly [number, number])[];
  /** One number for the same part of all blocks of a row; −1 for what has no twin. */
  private readonly part: Int32Array;
  private readonly place: Int32Array;

  /**
   * Any schedule stays one when two of a row change places, so each row may be
   * taken to start in the order it is listed in.
   */
  constructor(model: Model) {
    this.part = new Int32Array(model.count).fill(-1);
    this.place = new Int32Array(model.count);
    const rows = rowsOf(model).filter(({ length }) => length > 1);
    let parts = 0;
    for (const row of rows) {
      row.forEach((block, place) =>
        block.forEach((i, part) => {
          this.part[i] = parts + part;
          this.place[i] = place;
        }),
      );
      parts += row[0]!.length;
    }
    this.pairs = rows.flatMap((row) =>
      row.slice(1).map((block, at) => [row[at]![0]!, block[0]!] as const),
    );
  }

  /** Whether `i` starts no earlier than `j` because it is the same part of a block behind it in a row. */
  isBehind(i: number, j: number): boolean {
    return this.part[i]! >= 0 && this.part[i] === this.part[j] && this.place[i]! > this.place[j]!;
  }
}
