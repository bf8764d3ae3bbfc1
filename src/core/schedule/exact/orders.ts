import { Atoms, type Bounds, type Side } from './bounds.ts';
import type { Clauses } from './clauses.ts';
import type { Ties } from './ties.ts';
import type { Twins } from './twins.ts';
import { excludes, type Model } from '../model/model.ts';

/** "One activity is over before another begins": the side that says so, and from which value on. */
export type Literal = { readonly side: Side; readonly value: number };

/** Which of two activities that ask for the same goes first, as variables of 0 and 1 made when they are needed. */
export class Orders {
  /** By variable: how often it had to do with a clash of late. */
  readonly activity: number[];
  private readonly literals = new Map<number, Literal>();
  private readonly sets = new Set<string>();
  private readonly model: Model;
  private readonly bounds: Bounds;
  private readonly ties: Ties;
  private readonly clauses: Clauses;
  private readonly twins: Twins;
  private readonly step: number;

  /** @param step that all times are multiples of, in ticks */
  constructor(
    model: Model,
    bounds: Bounds,
    ties: Ties,
    clauses: Clauses,
    twins: Twins,
    step: number,
  ) {
    this.twins = twins;
    this.model = model;
    this.bounds = bounds;
    this.ties = ties;
    this.clauses = clauses;
    this.activity = Array.from({ length: model.count + 1 }, () => 0);
    this.step = step;
  }

  private variable(): number {
    const variable = this.activity.length;
    this.activity.push(0);
    this.bounds.grow(variable, 0, 1);
    return variable;
  }

  /** Whether lags that always hold, or the order of twins, forbid that `i` is over before `j`. */
  private isBarred(i: number, j: number): boolean {
    const { count, lag, duration } = this.model;
    return lag[j * count + i]! > -duration[i]! || this.twins.isBehind(i, j);
  }

  private keep(i: number, j: number, literal: Literal): void {
    this.literals.set(i * this.model.count + j, literal);
  }

  /** What is known of an order already; undefined: nothing was asked about it. */
  known(i: number, j: number): Literal | undefined {
    return this.literals.get(i * this.model.count + j);
  }

  /** Makes the variables of a pair. @returns false on a clash */
  introduce(i: number, j: number): boolean {
    if (this.known(i, j)) return true;
    return excludes(this.model, i, j)
      ? this.either(i, j)
      : this.reified(i, j) && this.reified(j, i);
  }

  /** Makes the variables of pairs that exclude each other and may still go either way, up to so many. @returns false on a clash */
  introduceExcluding(most: number): boolean {
    const { count, lag, duration } = this.model;
    const { bounds } = this;
    const apart = (i: number, j: number) =>
      lag[i * count + j]! >= duration[i]! ||
      bounds.bound[2 * j]! + bounds.bound[2 * i + 1]! >= duration[i]!;
    const pairs = this.model.excluded;
    let room = most;
    for (let k = 0; k < pairs.length && room > 0; k += 2) {
      const i = pairs[k]!;
      const j = pairs[k + 1]!;
      if (apart(i, j) || apart(j, i)) continue;
      if (!this.introduce(i, j)) return false;
      room--;
    }
    return true;
  }

  private either(i: number, j: number): boolean {
    const { duration } = this.model;
    const side = 2 * this.variable();
    this.keep(i, j, { side, value: 1 });
    this.keep(j, i, { side: side + 1, value: 0 });
    return (
      this.ties.add(i, j, duration[i]!, side, 1) &&
      this.ties.add(j, i, duration[j]!, side + 1, 0) &&
      this.bar(i, j) &&
      this.bar(j, i)
    );
  }

  /** A variable that says whether `i` is over before `j`, no more. */
  private reified(i: number, j: number): boolean {
    const length = this.model.duration[i]!;
    const side = 2 * this.variable();
    this.keep(i, j, { side, value: 1 });
    return (
      this.ties.add(i, j, length, side, 1) &&
      this.ties.add(j, i, this.step - length, side + 1, 0) &&
      this.bar(i, j)
    );
  }

  private bar(i: number, j: number): boolean {
    if (!this.isBarred(i, j)) return true;
    const { side, value } = this.known(i, j)!;
    return this.bounds.raise(side ^ 1, 1 - value, 0, 0, 0);
  }

  /** Whether it is known that these together ask for too much. */
  hasSet(members: readonly number[]): boolean {
    return this.sets.has(members.join(' '));
  }

  /** Of activities that together ask for too much, one is over before another begins. @returns false on a clash */
  forbid(members: readonly number[]): boolean {
    this.sets.add(members.join(' '));
    const clause = new Atoms();
    for (const i of members) {
      for (const j of members) {
        if (i === j) continue;
        if (!this.introduce(i, j)) return false;
        const { side, value } = this.known(i, j)!;
        clause.add(side, value);
      }
    }
    return this.clauses.add(clause);
  }
}
