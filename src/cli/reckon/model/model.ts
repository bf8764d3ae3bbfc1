import type { Band } from '../../../core/units/index.ts';

/** What an input may be: a number, a list of them with commas, yes or no, or a text. */
type InputKind = 'number' | 'numbers' | 'flag' | 'text';

export type ModelInput = {
  readonly name: string;
  readonly kind: InputKind;
  readonly unit: string;
  /** Lowest and highest number that is answered. */
  readonly range?: readonly [min: number, max: number];
  readonly choices?: readonly string[];
  /** Taken when it is not given; absent: it must be given unless `optional`. */
  readonly usual?: number | string | boolean;
  readonly optional?: boolean;
  readonly about?: string;
};

export type Value = number | string | boolean | readonly number[];
export type Values = Readonly<Record<string, Value>>;

/** A number, a band (printed as result, low and high), or anything JSON can hold. */
export type Found = Readonly<Record<string, number | string | boolean | null | Band | object>>;

/**
 * One model that `reckon` answers. Those of other files join in registry.ts.
 * `evaluate` may throw OutOfRangeError.
 */
export type Model = {
  readonly name: string;
  readonly about: string;
  readonly inputs: readonly ModelInput[];
  readonly results: Readonly<Record<string, string>>;
  /** Titles of the sources. */
  readonly sources: readonly string[];
  evaluate(values: Values): Found;
};

/** A solver that takes one file and prints its own object; an `error` in it is a refusal. */
export type FileModel = { readonly name: string; run(path: string): object };

/** Refusal of what was typed. */
export class Refusal extends Error {
  readonly input: string;
  readonly found: unknown;
  readonly allowed: string;

  constructor(input: string, found: unknown, allowed: string, advice: string) {
    super(`${input} is ${String(found)}; allowed: ${allowed}. ${advice}`);
    this.input = input;
    this.found = found;
    this.allowed = allowed;
  }
}

/** Input that is a number. */
export function number(
  name: string,
  unit: string,
  range: readonly [number, number],
  usual?: number,
): ModelInput {
  return { name, kind: 'number', unit, range, ...(usual !== undefined && { usual }) };
}

/** Input that may be left out without a default. */
export function optional(input: ModelInput): ModelInput {
  return { ...input, optional: true };
}
