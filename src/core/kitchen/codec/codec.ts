import { foundText, problemAt, type KitchenProblem } from '../model/problem.ts';

/** A piece of JSON Schema, draft 2020-12. */
export type JsonSchema = { readonly [keyword: string]: unknown };

/** A field the file left out and what was put in its place. */
export type FilledIn = { readonly path: string; readonly value: unknown; readonly why: string };

/** What fills fields that were left out, from the country and the mains of the file. */
export type Defaults = { readonly supplyV: number; readonly kettleW: number };

/** More problems than this help nobody: the rest waits for the next try. */
export const MOST_PROBLEMS = 100;

/** Where readers put what they find. */
export class Notes {
  readonly problems: KitchenProblem[] = [];
  readonly filled: FilledIn[] = [];
  readonly defaults: Defaults;

  constructor(defaults: Defaults) {
    this.defaults = defaults;
  }

  /** Notes a problem about a value; always answers `undefined`, the mark of "not read". */
  refuse(path: string, value: unknown, allowed: string, advice: string): undefined {
    this.add(problemAt(path, foundText(value), allowed, advice));
    return undefined;
  }

  add(problem: KitchenProblem): void {
    if (this.problems.length < MOST_PROBLEMS) this.problems.push(problem);
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
  arrange(value: T): unknown;
};

/** A shape published under a name, so that the schema says it once. */
export type NamedCodec<T> = Codec<T> & { readonly name: string; readonly definition: JsonSchema };

/** Gives a shape a name in the schema's `$defs`. */
export function named<T>(name: string, shape: Codec<T>): NamedCodec<T> {
  return { ...shape, name, definition: shape.schema, schema: { $ref: `#/$defs/${name}` } };
}
