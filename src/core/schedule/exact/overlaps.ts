import type { Bounds } from './bounds.ts';
import type { Literal, Orders } from './orders.ts';
import type { Model } from '../model/model.ts';

/** What stands between the earliest starts and a schedule: an order to choose, or activities that must not all run together. */
export type Obstacle =
  | { readonly kind: 'order'; readonly literal: Literal }
  | { readonly kind: 'set'; readonly members: readonly number[] };

type Choice = { readonly literal: Literal; readonly activity: number };

/** Looks where activities that all start as early as they may ask for more than there is. */
export class Overlaps {
  private readonly model: Model;
  private readonly bounds: Bounds;
  private readonly orders: Orders;
  /** Activities that hold something, from the earliest start. */
  private readonly byStart: number[];

  constructor(model: Model, bounds: Bounds, orders: Orders) {
    this.model = model;
    this.bounds = bounds;
    this.orders = orders;
    this.byStart = Array.from({ length: model.count }, (_, i) => i).filter(
      (i) => model.duration[i]! > 0 && model.wants[i]!.length > 0,
    );
  }

  /** Steps of one look. */
  get work(): number {
    return 16 * this.byStart.length;
  }

  private sort(): void {
    const { bound } = this.bounds;
    const list = this.byStart;
    for (let at = 1; at < list.length; at++) {
      const one = list[at]!;
      let to = at;
      for (; to > 0 && bound[2 * list[to - 1]!]! > bound[2 * one]!; to--) list[to] = list[to - 1]!;
      list[to] = one;
    }
  }

  /** The obstacle that clashes were about most; undefined: the earliest starts are a schedule. */
  next(): Obstacle | undefined {
    const { model, bounds } = this;
    let best: Choice | undefined;
    let running: number[] = [];
    this.sort();
    for (const i of this.byStart) {
      const now = bounds.bound[2 * i]!;
      running = running.filter((k) => bounds.bound[2 * k]! + model.duration[k]! > now);
      running.push(i);
      for (const r of model.wants[i]!) {
        const members = this.tooMany(running, i, r);
        if (!members) continue;
        if (members.length > 2 ? !this.orders.hasSet(members) : !this.knows(members)) {
          return { kind: 'set', members };
        }
        best = this.better(best, members);
      }
    }
    return best && { kind: 'order', literal: best.literal };
  }

  private knows([i, j]: readonly number[]): boolean {
    return this.orders.known(i!, j!) !== undefined;
  }

  /** As few of the running activities as ask for too much of a resource, with the last that began. */
  private tooMany(running: readonly number[], last: number, r: number): number[] | undefined {
    const { demand, capacity } = this.model;
    const kinds = capacity.length;
    let sum = 0;
    for (const k of running) sum += demand[k * kinds + r]!;
    if (sum <= capacity[r]!) return undefined;
    const amount = (k: number) => demand[k * kinds + r]!;
    const members = [last];
    let held = amount(last);
    const others = running.filter((k) => k !== last && amount(k) > 0);
    for (const k of others.toSorted((a, b) => amount(b) - amount(a))) {
      if (held > capacity[r]!) break;
      members.push(k);
      held += amount(k);
    }
    return members.toSorted((a, b) => a - b);
  }

  /** The pair that clashes were about more; the one that must begin sooner goes first. */
  private better(best: Choice | undefined, members: readonly number[]): Choice | undefined {
    const { bound } = this.bounds;
    let found = best;
    for (const i of members) {
      const day = this.sooner(i);
      if (day && (!found || day.activity > found.activity)) found = day;
    }
    for (const i of members) {
      for (const j of members) {
        // Latest starts with the sign turned: the greater must begin sooner.
        const later = bound[2 * i + 1]! - bound[2 * j + 1]!;
        if (i === j || later < 0 || (later === 0 && bound[2 * i]! > bound[2 * j]!)) continue;
        const choice = this.choice(i, j);
        if (choice && (!found || choice.activity > found.activity)) found = choice;
      }
    }
    return found;
  }

  /** That an activity begins before the first night it could wait for. */
  private sooner(i: number): Choice | undefined {
    const night = this.bounds.firstHole(i);
    if (night === undefined) return undefined;
    return { literal: { side: 2 * i + 1, value: 1 - night }, activity: this.orders.activity[i]! };
  }

  private choice(i: number, j: number): Choice | undefined {
    const one = this.open(i, j);
    if (one) return one;
    return this.open(j, i);
  }

  private open(first: number, second: number): Choice | undefined {
    const { bound } = this.bounds;
    const { side, value } = this.orders.known(first, second)!;
    if (bound[side]! >= value || bound[side ^ 1]! >= 1 - value) return undefined;
    return { literal: { side, value }, activity: this.orders.activity[side >> 1]! };
  }
}
