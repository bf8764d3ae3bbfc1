import { REASON, type Atoms, type Bounds } from './bounds.ts';
import { Envelope } from './envelope.ts';
import type { OpenTime } from './hours.ts';

/** Dust of added-up energies, in ticks. */
const DUST_TICKS = 1e-3;

/** Some of the work on one resource. */
export type Load = {
  readonly members: readonly number[];
  /** How long each member keeps the whole of the resource busy by itself, ticks. */
  readonly busy: readonly number[];
  /** Members that go together with no other; where there are none, only too much work is looked for. */
  readonly firm: readonly boolean[];
  readonly open: OpenTime;
};

/**
 * Energy of one load. Work that must lie between two moments must fit the open
 * time between them; of work that goes one at a time, what does not fit beside
 * it comes after it (edge-finding: Carlier & Pinson, Management Science 35
 * (1989) 164). Both ways in time, on moments counted in open time.
 */
export class Energy {
  private readonly load: Load;
  private readonly bounds: Bounds;
  private readonly duration: Float64Array;
  private readonly head: Float64Array;
  private readonly tail: Float64Array;
  /** Members from the latest head, and from the earliest tail. */
  private readonly byHead: number[];
  private readonly byTail: number[];
  private readonly atoms: Atoms;
  private readonly pushes: boolean;
  private readonly envelope: Envelope;
  /** Of each member, in the order of heads. */
  private readonly place: Int32Array;
  /** A bound of a member grew since the last look. */
  isStale = true;
  /** 1 forwards, −1 backwards in time. */
  private way: 1 | -1 = 1;

  constructor(load: Load, bounds: Bounds, duration: Float64Array, atoms: Atoms) {
    this.load = load;
    this.bounds = bounds;
    this.duration = duration;
    this.atoms = atoms;
    const count = load.members.length;
    this.head = new Float64Array(count);
    this.envelope = new Envelope(count);
    this.place = new Int32Array(count);
    this.pushes = load.firm.includes(true);
    this.tail = new Float64Array(count);
    this.byHead = Array.from({ length: count }, (_, k) => k);
    this.byTail = Array.from({ length: count }, (_, k) => k);
  }

  concerns(activity: number): boolean {
    return this.load.members.includes(activity);
  }

  /** Work of one look, in steps. */
  get work(): number {
    const { length } = this.load.members;
    return length * (this.pushes ? length : Math.ceil(Math.log2(length)) + 4);
  }

  /** @returns false on a clash */
  propagate(): boolean {
    this.way = 1;
    this.measure();
    if (!this.look()) return false;
    if (!this.pushes) return true;
    this.way = -1;
    this.measure();
    return this.look();
  }

  private measure(): void {
    const { bound } = this.bounds;
    const { members, open } = this.load;
    members.forEach((i, k) => {
      const early = open.until(bound[2 * i]!);
      const late = open.until(this.duration[i]! - bound[2 * i + 1]!);
      this.head[k] = this.way > 0 ? early : -late;
      this.tail[k] = this.way > 0 ? late : -early;
    });
    sortBy(this.byHead, (a, b) => this.head[b]! - this.head[a]!);
    sortBy(this.byTail, (a, b) => this.tail[a]! - this.tail[b]!);
  }

  private look(): boolean {
    return this.pushes ? this.lookAtAll() : this.lookAtTooMuch();
  }

  /** Every end in turn. */
  private lookAtAll(): boolean {
    const { byTail, tail } = this;
    for (let at = 0; at < byTail.length; at++) {
      const end = tail[byTail[at]!]!;
      if (at + 1 < byTail.length && tail[byTail[at + 1]!] === end) continue;
      if (!this.lookUntil(end)) return false;
    }
    return true;
  }

  /** The first end by which too much must be over. */
  private lookAtTooMuch(): boolean {
    const { byHead, byTail, place, envelope, head, tail, load } = this;
    const last = byHead.length - 1;
    byHead.forEach((k, at) => (place[k] = last - at));
    envelope.clear();
    for (const k of byTail) {
      const over = envelope.add(place[k]!, head[k]!, load.busy[k]!);
      if (over - DUST_TICKS > tail[k]! && !this.lookUntil(tail[k]!)) return false;
    }
    return true;
  }

  /** All intervals that end at one moment. */
  private lookUntil(end: number): boolean {
    const { head, tail, byHead } = this;
    const { busy, firm } = this.load;
    let energy = 0;
    let longest = -1;
    let full = -Infinity;
    let fullFrom = 0;
    for (const k of byHead) {
      const from = head[k]!;
      if (tail[k]! <= end) energy += busy[k]!;
      else if (firm[k]! && (longest < 0 || busy[k]! > busy[longest]!)) longest = k;
      if (energy === 0) continue;
      if (from + energy > full) {
        full = from + energy;
        fullFrom = from;
      }
      if (energy - DUST_TICKS > end - from) return this.overload(from, end, energy);
      if (longest < 0) continue;
      const withLast = energy + busy[longest]!;
      if (withLast - DUST_TICKS <= end - from || head[longest]! >= full) continue;
      const spare = Math.ceil(withLast - (end - from) - DUST_TICKS) - 1;
      if (!this.pushBehind(longest, from, end, fullFrom, full, spare)) return false;
    }
    return true;
  }

  /** The atom that member `k` begins, seen this way in time, no earlier than a moment of open time. */
  private addHead(k: number, moment: number, into: Atoms): void {
    const i = this.load.members[k]!;
    if (this.way > 0) into.add(2 * i, this.load.open.earliest(moment));
    else into.add(2 * i + 1, this.duration[i]! - this.load.open.latest(-moment));
  }

  /** The atom that member `k` is over by a moment of open time. */
  private addTail(k: number, moment: number, into: Atoms): void {
    const i = this.load.members[k]!;
    if (this.way > 0) into.add(2 * i + 1, this.duration[i]! - this.load.open.latest(moment));
    else into.add(2 * i, this.load.open.earliest(-moment));
  }

  private overload(from: number, end: number, needed: number): false {
    const { clash } = this.bounds;
    clash.clear();
    // The interval may be longer by what is too much, and the work still does not fit.
    const spare = Math.max(0, Math.ceil(needed - (end - from) - DUST_TICKS) - 1);
    for (const k of this.byHead) {
      if (this.tail[k]! > end || this.head[k]! < from) continue;
      this.addHead(k, from - spare, clash);
      this.addTail(k, end, clash);
    }
    return false;
  }

  private pushBehind(
    last: number,
    from: number,
    end: number,
    fullFrom: number,
    full: number,
    spare: number,
  ): boolean {
    const { atoms, load } = this;
    atoms.clear();
    for (const k of this.byHead) {
      if (this.tail[k]! > end || this.head[k]! < from) continue;
      this.addHead(k, this.head[k]! >= fullFrom ? fullFrom : from - Math.max(0, spare), atoms);
      this.addTail(k, end, atoms);
    }
    this.addHead(last, from - Math.max(0, spare), atoms);
    const i = load.members[last]!;
    const side = this.way > 0 ? 2 * i : 2 * i + 1;
    const moment = Math.ceil(full - DUST_TICKS);
    const value =
      this.way > 0 ? load.open.earliest(moment) : this.duration[i]! - load.open.latest(-moment);
    if (value <= this.bounds.bound[side]!) return true;
    return this.bounds.raise(side, value, REASON.listed, this.bounds.list(atoms), 0);
  }
}

/** Sorts what is nearly in order. */
function sortBy(list: number[], compare: (a: number, b: number) => number): void {
  for (let at = 1; at < list.length; at++) {
    const one = list[at]!;
    let to = at;
    for (; to > 0 && compare(list[to - 1]!, one) > 0; to--) list[to] = list[to - 1]!;
    list[to] = one;
  }
}
