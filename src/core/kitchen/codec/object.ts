import { message, type Message } from '../../messages/index.ts';
import type { Range } from '../model/limits.ts';
import { escapedUnseen } from '../model/plain-line.ts';
import { fieldPath, problemAt, quotedList, shortened } from '../model/problem.ts';
import { didYouMean, nearest } from './nearest.ts';
import type { Defaults, JsonSchema, Notes, Codec } from './codec.ts';

type Raw = Readonly<Record<string, unknown>>;

/** A field that must be written, or is filled when it is left out. */
type SureField<T> =
  | { readonly codec: Codec<T>; readonly need: 'required' }
  | {
      readonly codec: Codec<T>;
      readonly need: 'filled';
      readonly fill: (defaults: Defaults, siblings: Raw) => T;
      readonly why: Message;
    };
/** A field that may stay out. */
type MaybeField<T> = { readonly codec: Codec<T>; readonly need: 'optional' };

type FieldOf<T, K extends keyof T> =
  object extends Pick<T, K>
    ? MaybeField<NonNullable<T[K]>> | SureField<NonNullable<T[K]>>
    : SureField<T[K]>;
type Fields<T> = { readonly [K in keyof T]-?: FieldOf<T, K> };
type AnyField = SureField<unknown> | MaybeField<unknown>;

/** The field must be written. */
export function must<T>(codec: Codec<T>): SureField<T> {
  return { codec, need: 'required' };
}

/** The field may be left out; then it is absent. */
export function may<T>(codec: Codec<T>): MaybeField<T> {
  return { codec, need: 'optional' };
}

/** The field may be left out; then `value` stands in its place and the reader says so. */
export function orElse<T>(codec: Codec<T>, value: T, why: Message): SureField<T> {
  return { codec, need: 'filled', fill: () => value, why };
}

/** Like {@link orElse}, from the country, the mains or the fields beside it. */
export function orEstimate<T>(
  codec: Codec<T>,
  fill: (defaults: Defaults, siblings: Raw) => T,
  why: Message,
): SureField<T> {
  return { codec, need: 'filled', fill, why };
}

export function isObject(value: unknown): value is Raw {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** More unknown fields of one object than this are counted, not named. */
const MOST_NAMED = 20;

/** What stands in an object that has no such fields. */
type Unknown = {
  /** None; otherwise the object is not read. */
  readonly none: boolean;
  /** Fields that some of them may be, misspelt: told once, as misspelt, and not as missing too. */
  readonly meant: ReadonlySet<string>;
};

function refuseUnknown(raw: Raw, names: readonly string[], at: string, notes: Notes): Unknown {
  const known = new Set(names);
  const unknown = Object.keys(raw).filter((name) => !known.has(name));
  const meant = new Set<string>();
  if (unknown.length === 0) return { none: true, meant };
  if (notes.isFull) return { none: false, meant };
  const allowed = message('problems.unknown-field.allowed', { names: names.join(', ') });
  const fallback = message('problems.unknown-field.advice');
  for (const name of unknown.slice(0, MOST_NAMED)) {
    const near = nearest(name, names);
    if (near !== undefined) meant.add(near);
    const found = message('problems.unknown-field.found', {
      name: escapedUnseen(shortened(name)),
    });
    const advice = near === undefined ? fallback : message('problems.did-you-mean', { name: near });
    notes.add(problemAt(fieldPath(at, name), found, allowed, advice));
  }
  const more = unknown.length - MOST_NAMED;
  if (more > 0) {
    const found = message('problems.unknown-field.more', { more });
    notes.add(problemAt(at, found, allowed, fallback));
  }
  return { none: false, meant };
}

function readField(
  [name, field]: readonly [string, AnyField],
  raw: Raw,
  at: string,
  notes: Notes,
): { readonly value?: unknown; readonly bad?: true } {
  const path = fieldPath(at, name);
  if (Object.hasOwn(raw, name)) {
    const value = field.codec.read(raw[name], path, notes);
    return value === undefined ? { bad: true } : { value };
  }
  if (field.need === 'optional') return {};
  if (field.need === 'filled') {
    const value = field.fill(notes.defaults, raw);
    notes.filled.push({ path, value, why: field.why });
    return { value };
  }
  field.codec.read(undefined, path, notes);
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
      properties: Object.fromEntries(entries.map(([name, f]) => [name, f.codec.schema])),
      required,
      additionalProperties: false,
    },
    encode(value) {
      const raw: Raw = Object.fromEntries(Object.entries(value));
      const present = entries.filter(([name]) => raw[name] !== undefined);
      return Object.fromEntries(present.map(([name, f]) => [name, f.codec.encode(raw[name])]));
    },
    read(value, at, notes) {
      if (!isObject(value)) {
        const allowed = message('problems.object.allowed', { names: required.join(', ') });
        return notes.refuse(at, value, allowed, message('problems.object.advice'));
      }
      const unknown = refuseUnknown(value, names, at, notes);
      let complete = unknown.none;
      const out: Record<string, unknown> = {};
      for (const entry of entries) {
        if (!Object.hasOwn(value, entry[0]) && unknown.meant.has(entry[0])) continue;
        const got = readField(entry, value, at, notes);
        if (got.bad) complete = false;
        else if (got.value !== undefined) out[entry[0]] = got.value;
      }
      // Every field of the table was read by the codec its type demands.
      return complete ? (out as T) : undefined;
    },
  };
}

/** A list of so many values of one kind. */
export function list<T>(item: Codec<T>, { least, most }: Range): Codec<readonly T[]> {
  const allowed = message('problems.list.allowed', { least, most });
  return {
    schema: { type: 'array', items: item.schema, minItems: least, maxItems: most },
    encode: (values) => values.map((value) => item.encode(value)),
    read(value, at, notes) {
      if (!Array.isArray(value)) {
        const advice = isObject(value)
          ? message('problems.list.wrap')
          : message('problems.list.write');
        return notes.refuse(at, value, allowed, advice);
      }
      if (value.length < least || value.length > most) {
        const advice =
          value.length < least
            ? message('problems.list.add', { count: least - value.length })
            : message('problems.list.take-out');
        return notes.refuse(at, value, allowed, advice);
      }
      const read = value.map((one: unknown, i) => item.read(one, `${at}[${i}]`, notes));
      return read.every((one) => one !== undefined) ? read : undefined;
    },
  };
}

/** Two values in square brackets. */
export function pair(item: Codec<number>, allowed: Message): Codec<readonly [number, number]> {
  const schema: JsonSchema = {
    type: 'array',
    prefixItems: [item.schema, item.schema],
    items: false,
    minItems: 2,
  };
  return {
    schema,
    encode: (value) => value,
    read(value, at, notes) {
      if (!Array.isArray(value) || value.length !== 2) {
        return notes.refuse(at, value, allowed, message('problems.pair.advice'));
      }
      const first = item.read(value[0], `${at}[0]`, notes);
      const second = item.read(value[1], `${at}[1]`, notes);
      return first === undefined || second === undefined ? undefined : [first, second];
    },
  };
}

/** An object whose field `kind` says which of several codecs reads it. */
export function byKind<T extends { readonly kind: string }>(
  codecs: Readonly<Record<T['kind'], Codec<T>>>,
): Codec<T> {
  const table = new Map<unknown, Codec<T>>(Object.entries<Codec<T>>(codecs));
  const kinds = Object.keys(codecs);
  const distinct = [...new Set(table.values())];
  return {
    schema: { oneOf: distinct.map((codec) => codec.schema) },
    encode: (value) => table.get(value.kind)?.encode(value) ?? value,
    read(value, at, notes) {
      if (!isObject(value)) {
        const allowed = message('problems.kind.object');
        return notes.refuse(at, value, allowed, message('problems.kind.wrap'));
      }
      const codec = table.get(value['kind']);
      if (codec) return codec.read(value, at, notes);
      const advice = didYouMean(value['kind'], kinds, message('problems.kind.advice'));
      return notes.refuse(fieldPath(at, 'kind'), value['kind'], quotedList(kinds), advice);
    },
  };
}
