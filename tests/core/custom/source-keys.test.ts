import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';

const SHARED = join(import.meta.dirname, '../../../shared');

type Json = Readonly<Record<string, unknown>>;

function tables(): readonly string[] {
  return readdirSync(SHARED, { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile() && one.name.endsWith('.json'))
    .map((one) => relative(SHARED, join(one.parentPath, one.name)))
    .filter((path) => !path.startsWith('sources') && !path.endsWith('.schema.json'))
    .toSorted();
}

function read(path: string): unknown {
  return JSON.parse(readFileSync(join(SHARED, path), 'utf8'));
}

function isRecord(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

const KEYS = new Set(
  readdirSync(join(SHARED, 'sources')).flatMap((file) =>
    Object.keys(read(`sources/${file}`) as object),
  ),
);

/** `shockK: null` says "does not crack so" and has no source of its own: `shockSource: null`. */
function hasNoValue(row: Json, field: string, key: unknown): boolean {
  const stem = field.replace(/Sources?$/, '');
  const told = Object.entries(row).filter(([name]) => name.startsWith(stem) && name !== field);
  return key === null && told.length > 0 && told.every(([, value]) => value === null);
}

/** Keys a value names as its sources: `source`, `sources`, `restSource` and the like. */
function named(value: Json): readonly string[] {
  return Object.entries(value)
    .filter(([field]) => /^sources?$|Sources?$/.test(field))
    .flatMap(([field, key]) => (hasNoValue(value, field, key) ? [] : [key].flat().map(String)));
}

type Row = { readonly at: string; readonly row: Json; readonly above: readonly string[] };

/** Every row: an object in a list of objects that stands in a field of the table itself. */
function rowsOf(table: Json): readonly Row[] {
  return Object.entries(table).flatMap(([field, list]): Row[] =>
    Array.isArray(list)
      ? list.filter(isRecord).map((row, n) => ({ at: `${field}[${n}]`, row, above: named(table) }))
      : [],
  );
}

/** Every key named anywhere inside. */
function allNamed(value: unknown): readonly string[] {
  if (Array.isArray(value)) return value.flatMap(allNamed);
  if (!isRecord(value)) return [];
  return [...named(value), ...Object.values(value).flatMap(allNamed)];
}

describe('sources of the shared tables', () => {
  it.each(tables())('%s: every row names one that exists', (path) => {
    const table = read(path);
    expect(isRecord(table)).toBe(true);
    if (!isRecord(table)) return;
    const rows = rowsOf(table);
    const without = rows.filter(
      ({ row, above }) => allNamed(row).length === 0 && above.length === 0,
    );
    const keys = allNamed(table);
    // eslint-disable-next-line no-console
    console.info(`${path}: ${rows.length} rows, ${keys.length} source keys`);
    expect(keys.filter((key) => !KEYS.has(key))).toEqual([]);
    expect(keys.length, 'source keys').toBeGreaterThan(0);
    expect(without.map(({ at }) => at)).toEqual([]);
  });
});
