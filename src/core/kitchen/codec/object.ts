import { fieldPath, problemAt } from '../model/problem.ts';
import { didYouMean, nearest } from './nearest.ts';
import type { Defaults, JsonSchema, Notes, Codec } from './codec.ts';

type Raw = Readonly<Record<string, unknown>>;

/** A field that must be written, or is filled when it is left out. */
type SureField<T> = {
  readonly shape: Codec<T>;
  readonly need: 'required' | 'filled';
  readonly fill?: (defaults: Defaults, siblings: Raw) => T;
  readonly why?: string;
};
/** A field that may stay out. */
type MaybeField<T> = { readonly shape: Codec<T>; readonly need: 'optional' };

type FieldOf<T, K extends keyof T> =
  object extends Pick<T, K>
    ? MaybeField<NonNullable<T[K]>> | SureField<NonNullable<T[K]>>
    : SureField<T[K]>;
type Fields<T> = { readonly [K in keyof T]-?: FieldOf<T, K> };
type AnyField = SureField<unknown> | MaybeField<unknown>;

/** The field must be written. */
export function must<T>(shape: Codec<T>): SureField<T> {
  return { shape, need: 'required' };
}

/** The field may be left out; then it is absent. */
export function may<T>(shape: Codec<T>): MaybeField<T> {
  return { shape, need: 'optional' };
}

/** The field may be left out; then `value` stands in its place and the reader says so. */
export function orElse<T>(shape: Codec<T>, value: T, why: string): SureField<T> {
  return { shape, need: 'filled', fill: () => value, why };
}

/** Like {@link orElse}, from the country, the mains or the fields beside it. */
export function orEstimate<T>(
  shape: Codec<T>,
  fill: (defaults: Defaults, siblings: Raw) => T,
  why: string,
): SureField<T> {
  return { shape, need: 'filled', fill, why };
}

export function isObject(value: unknown): value is Raw {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function refuseUnknown(raw: Raw, names: readonly string[], at: string, notes: Notes): boolean {
  const unknown = Object.keys(raw).filter((name) => !names.includes(name));
  for (const name of unknown) {
    const allowed = `the fields ${names.join(', ')}`;
    const advice = didYouMean(name, names, 'Take it out; free words go into a comment field.');
    notes.add(problemAt(fieldPath(at, name), `the unknown field "${name}"`, allowed, advice));
  }
  return unknown.length > 0;
}

/** A required field that is missing but stands beside it misspelt is told once, as misspelt. */
function misspelt(name: string, raw: Raw, names: readonly string[]): boolean {
  return Object.keys(raw).some((key) => !names.includes(key) && nearest(key, names) === name);
}

function readField(
  [name, field]: readonly [string, AnyField],
  raw: Raw,
  at: string,
  notes: Notes,
): { readonly value?: unknown; readonly bad?: true } {
  const path = fieldPath(at, name);
  if (Object.hasOwn(raw, name)) {
    const value = field.shape.read(raw[name], path, notes);
    return value === undefined ? { bad: true } : { value };
  }
  if (field.need === 'optional') return {};
  if (field.need === 'filled' && field.fill) {
    const value = field.fill(notes.defaults, raw);
    notes.filled.push({ path, value, why: field.why ?? '' });
    return { value };
  }
  field.shape.read(undefined, path, notes);
  return { bad: true };
}

/** An object with exactly these fields; the order of the table is the order of writing. */
export function object<T extends object>(fields: Fields<T>): Codec<T> {
  const entries: readonly (readonly [string, AnyField])[] = Object.entries<AnyField>(fields);
  const names = entries.map(([name]) => name);
  const required = entries.filter(([, f]) => f.need === 'required').map(([name]) => name);
  return {
    schema: {
      type: 'object',
      properties: Object.fromEntries(entries.map(([name, f]) => [name, f.shape.schema])),
      required,
      additionalProperties: false,
    },
    arrange(value) {
      const raw: Raw = Object.fromEntries(Object.entries(value));
      const present = entries.filter(([name]) => raw[name] !== undefined);
      return Object.fromEntries(present.map(([name, f]) => [name, f.shape.arrange(raw[name])]));
    },
    read(value, at, notes) {
      if (!isObject(value)) {
        const allowed = `an object in { } with ${required.join(', ')}`;
        return notes.refuse(at, value, allowed, 'Write the fields between { and }.');
      }
      let whole = !refuseUnknown(value, names, at, notes);
      const out: Record<string, unknown> = {};
      for (const entry of entries) {
        if (!Object.hasOwn(value, entry[0]) && misspelt(entry[0], value, names)) continue;
        const got = readField(entry, value, at, notes);
        if (got.bad) whole = false;
        else if (got.value !== undefined) out[entry[0]] = got.value;
      }
      // Every field of the table was read by the shape its type demands.
      return whole ? (out as T) : undefined;
    },
  };
}

/** A list of `min` to `max` values of one shape. */
export function list<T>(item: Codec<T>, min: number, max: number): Codec<readonly T[]> {
  return {
    schema: { type: 'array', items: item.schema, minItems: min, maxItems: max },
    arrange: (values) => values.map((value) => item.arrange(value)),
    read(value, at, notes) {
      const allowed = `a list in [ ] of ${min} to ${max}`;
      if (!Array.isArray(value)) {
        const advice = isObject(value) ? 'Put [ and ] round it.' : 'Write a list in [ ].';
        return notes.refuse(at, value, allowed, advice);
      }
      if (value.length < min || value.length > max) {
        const advice = value.length < min ? `Add ${min - value.length} more.` : 'Take some out.';
        return notes.refuse(at, value, allowed, advice);
      }
      const read = value.map((one: unknown, i) => item.read(one, `${at}[${i}]`, notes));
      return read.every((one) => one !== undefined) ? read : undefined;
    },
  };
}

/** Two values in square brackets. */
export function pair(item: Codec<number>, allowed: string): Codec<readonly [number, number]> {
  const schema: JsonSchema = {
    type: 'array',
    prefixItems: [item.schema, item.schema],
    items: false,
    minItems: 2,
  };
  return {
    schema,
    arrange: (value) => value,
    read(value, at, notes) {
      if (!Array.isArray(value) || value.length !== 2) {
        return notes.refuse(at, value, allowed, 'Write two numbers in square brackets: [1, 2].');
      }
      const first = item.read(value[0], `${at}[0]`, notes);
      const second = item.read(value[1], `${at}[1]`, notes);
      return first === undefined || second === undefined ? undefined : [first, second];
    },
  };
}

/** An object whose field `kind` says which of several shapes it has. */
export function byKind<T extends { readonly kind: string }>(
  shapes: Readonly<Record<T['kind'], Codec<T>>>,
): Codec<T> {
  const table = new Map<unknown, Codec<T>>(Object.entries<Codec<T>>(shapes));
  const kinds = Object.keys(shapes);
  const distinct = [...new Set(table.values())];
  return {
    schema: { oneOf: distinct.map((shape) => shape.schema) },
    arrange: (value) => table.get(value.kind)?.arrange(value) ?? value,
    read(value, at, notes) {
      if (!isObject(value)) {
        return notes.refuse(at, value, 'an object in { } with a kind', 'Write it between { and }.');
      }
      const shape = table.get(value['kind']);
      if (shape) return shape.read(value, at, notes);
      const allowed = kinds.map((kind) => `"${kind}"`).join(', ');
      const advice = didYouMean(value['kind'], kinds, 'Say what it is with one of these words.');
      return notes.refuse(fieldPath(at, 'kind'), value['kind'], allowed, advice);
    },
  };
}
