import { holesUntil, type Holes } from '../model/start-holes.ts';

/**
 * A side of a variable that only ever grows: side 2v is the lower bound of
 * variable v, side 2v + 1 its upper bound with the sign turned. "Side y is at
 * least x" is an atom; its opposite is "side y ^ 1 is at least 1 − x".
 */
export type Side = number;

/** Why a bound was raised; `data` and `aux` of the entry say more. */
export const REASON = {
  /** Chosen, or true from the beginning. */
  none: 0,
  /** A tie (data) passes a bound on. */
  tie: 1,
  /** The same side stood at `aux`, from where closed hours carry it on. */
  hours: 2,
  /** A clause (data) of which all else is false. */
  clause: 3,
  /** A tie (data) that cannot be kept; the side it comes from stood at `aux`. */
  broken: 4,
  /** Listed from `data` on in the pool. */
  listed: 5,
} as const;

/** Atoms: sides, and the values they are at least. */
export class Atoms {
  readonly side: Side[] = [];
  readonly value: number[] = [];

  add(side: Side, value: number): void {
    this.side.push(side);
    this.value.push(value);
  }

  clear(): void {
    this.side.length = 0;
    this.value.length = 0;
  }
}

/** The bounds of all variables, and the trail by which each came to be. */
export class Bounds {
  bound: Float64Array;
  /** Latest entry of the trail for each side, or −1. */
  head: Int32Array;
  /** The trail, one array a field. */
  readonly side: Side[] = [];
  readonly value: number[] = [];
  readonly old: number[] = [];
  /** The entry before for the same side, or −1. */
  readonly before: number[] = [];
  readonly level: number[] = [];
  readonly reason: number[] = [];
  readonly data: number[] = [];
  readonly aux: number[] = [];
  /** Explanations of `REASON.listed`: how many atoms, then sides and values in turn. */
  readonly pool: number[] = [];
  /** Where in the trail each level above 0 begins. */
  readonly levels: number[] = [];
  /** What cannot hold together; filled when something fails. */
  readonly clash = new Atoms();
  /** Sides whose growth has not been passed on. */
  readonly queue: Side[] = [];
  /** How much of the queue has been passed on. */
  private passed = 0;
  private queued: Uint8Array;
  /** Forbidden values of each variable, where there are any. */
  private readonly holes: readonly (Holes | undefined)[];

  constructor(variables: number, holes: readonly (Holes | undefined)[]) {
    this.bound = new Float64Array(2 * variables).fill(-Infinity);
    this.head = new Int32Array(2 * variables).fill(-1);
    this.queued = new Uint8Array(2 * variables);
    this.holes = holes;
  }

  /** Room for one more variable. */
  grow(variable: number, low: number, high: number): void {
    if (2 * variable >= this.bound.length) {
      const bound = new Float64Array(2 * this.bound.length);
      bound.set(this.bound);
      const head = new Int32Array(bound.length).fill(-1);
      head.set(this.head);
      const queued = new Uint8Array(bound.length);
      queued.set(this.queued);
      Object.assign(this, { bound, head, queued });
    }
    this.bound[2 * variable] = low;
    this.bound[2 * variable + 1] = -high;
  }

  /** Raises a side and pushes it past what is forbidden. @returns false on a clash */
  raise(side: Side, value: number, reason: number, data: number, aux: number): boolean {
    if (value <= this.bound[side]!) return true;
    this.push(side, value, reason, data, aux);
    const holes = this.holes[side >> 1];
    if (holes && !this.pushPast(holes, side)) return false;
    const at = this.bound[side]!;
    if (at + this.bound[side ^ 1]! <= 0) return true;
    return this.fail(side, at, side ^ 1, 1 - at);
  }

  private push(side: Side, value: number, reason: number, data: number, aux: number): void {
    const entry = this.side.length;
    this.side.push(side);
    this.value.push(value);
    this.old.push(this.bound[side]!);
    this.before.push(this.head[side]!);
    this.level.push(this.levels.length);
    this.reason.push(reason);
    this.data.push(data);
    this.aux.push(aux);
    this.head[side] = entry;
    this.bound[side] = value;
    if (this.queued[side] === 1) return;
    this.queued[side] = 1;
    this.queue.push(side);
  }

  /** The first forbidden value between the bounds of a variable; undefined: there is none. */
  firstHole(variable: number): number | undefined {
    const holes = this.holes[variable];
    if (!holes) return undefined;
    const next = holesUntil(holes, this.bound[2 * variable]!);
    const first = holes[2 * next];
    return first !== undefined && first < -this.bound[2 * variable + 1]! ? first : undefined;
  }

  private pushPast(holes: Holes, side: Side): boolean {
    const lower = (side & 1) === 0;
    const at = lower ? this.bound[side]! : -this.bound[side]!;
    if (!Number.isFinite(at)) return true;
    const behind = holesUntil(holes, at);
    if (behind === 0) return true;
    const first = holes[2 * behind - 2]!;
    const free = holes[2 * behind - 1]!;
    if (at >= free) return true;
    if (lower) this.push(side, free, REASON.hours, 0, first);
    else this.push(side, 1 - first, REASON.hours, 0, 1 - free);
    return true;
  }

  /** Two atoms cannot both hold. */
  fail(a: Side, aValue: number, b: Side, bValue: number): false {
    this.clash.clear();
    this.clash.add(a, aValue);
    this.clash.add(b, bValue);
    return false;
  }

  /** The next side to pass on, or −1. */
  next(): Side {
    if (this.passed >= this.queue.length) {
      this.queue.length = 0;
      this.passed = 0;
      return -1;
    }
    const side = this.queue[this.passed++]!;
    this.queued[side] = 0;
    return side;
  }

  /** Puts atoms that explain an entry into the pool. @returns where they stand */
  list(atoms: Atoms): number {
    const at = this.pool.length;
    this.pool.push(atoms.side.length);
    for (let k = 0; k < atoms.side.length; k++) this.pool.push(atoms.side[k]!, atoms.value[k]!);
    return at;
  }

  /** Goes back to the end of a level. */
  undo(level: number): void {
    for (const side of this.queue) this.queued[side] = 0;
    this.queue.length = 0;
    this.passed = 0;
    if (level >= this.levels.length) return;
    const length = this.levels[level]!;
    for (let entry = this.side.length - 1; entry >= length; entry--) {
      const side = this.side[entry]!;
      this.bound[side] = this.old[entry]!;
      this.head[side] = this.before[entry]!;
      if (this.reason[entry] === REASON.listed) this.pool.length = this.data[entry]!;
    }
    this.side.length = length;
    this.value.length = length;
    this.old.length = length;
    this.before.length = length;
    this.level.length = length;
    this.reason.length = length;
    this.data.length = length;
    this.aux.length = length;
    this.levels.length = level;
  }

  /** The first entry that made a side reach a value; −1: it did from the beginning. */
  entryOf(side: Side, value: number): number {
    let entry = this.head[side]!;
    while (entry >= 0 && this.old[entry]! >= value) entry = this.before[entry]!;
    return entry;
  }
}
