import { message, type Message } from '../../messages/index.ts';
import {
  foundValue,
  problemAt,
  type KitchenProblem,
  type KitchenWarning,
} from '../model/problem.ts';

/** A piece of JSON Schema, draft 2020-12. */
export type JsonSchema = { readonly [keyword: string]: unknown };

/** A field the file left out and what was put in its place. */
export type FilledIn = { readonly path: string; readonly value: unknown; readonly why: Message };

/** What fills fields that were left out, from the country and the mains of the file. */
export type Defaults = {
  readonly supplyV: number;
  readonly kettleW: number;
  /** Voltage on the plates of kettles. */
  readonly kettleV: number;
};

/** More problems than this help nobody: the rest waits for the next try. */
export const MOST_PROBLEMS = 100;

/** Where readers put what they find. */
export class Notes {
  readonly problems: KitchenProblem[] = [];
  readonly filled: FilledIn[] = [];
  /** Texts that were read without some of their letters. */
  readonly cleaned: KitchenWarning[] = [];
  readonly defaults: Defaults;

  constructor(defaults: Defaults) {
    this.defaults = defaults;
  }

  /** Notes a problem about a value; always answers `undefined`, the mark of "not read". */
  refuse(path: string, value: unknown, allowed: Message, advice: Message): undefined {
    this.add(problemAt(path, foundValue(value), allowed, advice));
    return undefined;
  }

  /** Notes a text of which only what is seen was read. */
  leftOut(path: string, value: string): void {
    const allowed = message('problems.text.seen');
    const advice = message('problems.text.look');
    if (this.cleaned.length < MOST_PROBLEMS)
      this.cleaned.push(problemAt(path, foundValue(value), allowed, advice));
  }

  /** No further problem is taken; what is still wrong is not looked for in words. */
  get isFull(): boolean {
    return this.problems.length >= MOST_PROBLEMS;
  }

  add(problem: KitchenProblem): void {
    if (!this.isFull) this.problems.push(problem);
  }
}

/**
 * One kind of value in the file: how it is read, how it is published as JSON
 * Schema, and in what order its fields are written. One table gives all three,
 * so that reader, schema and writer cannot drift apart.
 */
export type Codec<T> = {
  readonly schema: JsonSchema;
  /** The value, or `undefined` after noting at least one problem. Never throws. */
  read(value: unknown, at: string, notes: Notes): T | undefined;
  /** The value with its fields in the order of the table. */
  encode(value: T): unknown;
};

/** A codec published under a name, so that the schema says it once. */
export type NamedCodec<T> = Codec<T> & { readonly name: string; readonly definition: JsonSchema };

/** Gives a codec a name in the schema's `$defs`. */
export function named<T>(name: string, codec: Codec<T>): NamedCodec<T> {
  return { ...codec, name, definition: codec.schema, schema: { $ref: `#/$defs/${name}` } };
}
