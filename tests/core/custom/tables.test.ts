import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import {
  citation,
  customTable,
  findConditionRule,
  findFactRules,
  findRow,
  type Looked,
} from '../../../src/core/custom/index.ts';
import {
  BURNER_TYPES,
  CONDITIONS,
  FIXTURE_KINDS,
  MATERIALS,
  OVEN_CLEANINGS,
  PURPOSES,
} from '../../../src/core/kitchen/index.ts';
import { retired } from '../../../src/core/messages/english/custom/retired.ts';
import { english } from '../../../src/core/messages/english/index.ts';
import { inEnglish } from '../../support/english.ts';
import { TABLE_SCHEMA } from './table-schema.ts';

const SHARED = join(import.meta.dirname, '../../../shared');
const CUSTOMS = ['sephardic', 'ashkenazic'] as const;
const MADE_OF: readonly string[] = ['counter', 'sink', 'table', 'cupboard', 'drawer'];

function json(path: string): Record<string, unknown> {
  return JSON.parse(readFileSync(join(SHARED, path), 'utf8')) as Record<string, unknown>;
}

const SOURCES = { ...json('sources/custom.json'), ...json('sources/safety.json') } as Readonly<
  Record<string, { readonly checked: boolean }>
>;

/** Everything that a fixture of any kitchen can be looked up by. */
function everything(): readonly Looked[] {
  const all: Looked[] = [];
  for (const kind of FIXTURE_KINDS) {
    for (const purpose of PURPOSES) {
      if (kind === 'cooktop')
        all.push(...BURNER_TYPES.map((burner) => ({ kind, purpose, burner })));
      else if (kind === 'oven')
        all.push(...OVEN_CLEANINGS.map((cleaning) => ({ kind, purpose, cleaning })));
      else if (MADE_OF.includes(kind))
        all.push(
          ...MATERIALS.flatMap((material) =>
            CONDITIONS.map((condition) => ({ kind, purpose, material, condition })),
          ),
        );
      else all.push(...MATERIALS.map((material) => ({ kind, purpose, material })));
    }
  }
  return all;
}

describe.each(CUSTOMS)('the %s table', (custom) => {
  const table = customTable(custom);

  it('has a row for everything a kitchen can hold', () => {
    const without = everything().filter((looked) => {
      try {
        findRow(table, looked);
        return false;
      } catch {
        return true;
      }
    });
    expect(without).toEqual([]);
  });

  it('uses every row and every rule', () => {
    const rows = new Set(everything().map((looked) => findRow(table, looked).id));
    expect(table.rows.map(({ id }) => id).filter((id) => !rows.has(id))).toEqual([]);
    const rules = new Set(
      everything().map(
        (looked) => findConditionRule(table, looked, findRow(table, looked).method)?.id,
      ),
    );
    expect(table.conditionRules.map(({ id }) => id).filter((id) => !rules.has(id))).toEqual([]);
    const told = ['yes', 'no', 'unknown'] as const;
    const facts = new Set(
      everything().flatMap((looked) =>
        told.flatMap((is) =>
          findFactRules(
            table,
            { ...looked, facts: { varnished: is, kneaded: is, hotFood: is } },
            findRow(table, looked).method,
          ).map(({ id }) => id),
        ),
      ),
    );
    expect(table.factRules.map(({ id }) => id).filter((id) => !facts.has(id))).toEqual([]);
  });

  it('asks about what is unknown, and takes the stricter way until then', () => {
    const unknown = everything().filter(
      ({ kind, material }) => material === 'unknown' && MADE_OF.includes(kind),
    );
    expect(unknown.length).toBeGreaterThan(0);
    for (const looked of unknown) {
      const row = findRow(table, looked);
      expect(row.question, `${looked.kind} of unknown material`).toBeDefined();
      expect(row.cover, `${looked.kind} of unknown material`).toBe(true);
    }
  });

  it('asks about, or covers, every worn or unseen surface that it would pour', () => {
    for (const looked of everything()) {
      const { condition } = looked;
      const row = findRow(table, looked);
      if (row.method !== 'pour' || condition === undefined || condition === 'smooth') continue;
      const rule = findConditionRule(table, looked, row.method);
      expect(rule?.cover ?? row.cover, JSON.stringify(looked)).toBe(true);
      if (condition === 'unknown') expect(rule?.question ?? row.question).toBeDefined();
    }
  });

  it('names a source for every row, none of them called checked that was not read', () => {
    for (const row of [...table.rows, ...table.conditionRules, ...table.factRules]) {
      const source = SOURCES[row.source];
      expect(source, row.source).toBeDefined();
      if (row.checked) expect(source?.checked, row.id).toBe(true);
    }
  });
});

describe('the two customs', () => {
  // Differences that the codes themselves name.
  it.each([
    [
      'glass is rinsed by one and not purged by the other',
      { kind: 'sink', purpose: 'passover', material: 'glass' },
      'clean',
      'cover',
    ],
    [
      'porcelain is asked about by one and not purged by the other',
      { kind: 'sink', purpose: 'new-kitchen', material: 'porcelain' },
      'pour',
      'cover',
    ],
    [
      'steel is poured by both',
      { kind: 'sink', purpose: 'new-kitchen', material: 'stainless-steel' },
      'pour',
      'pour',
    ],
    [
      'what burned on fire is purged by fire',
      { kind: 'cooktop', purpose: 'passover', burner: 'electric-coil' },
      'glow',
      'glow',
    ],
    [
      'a steam clean is no purge',
      { kind: 'oven', purpose: 'passover', cleaning: 'steam' },
      'light-heat',
      'light-heat',
    ],
    ['cold use is cleaned', { kind: 'fridge', purpose: 'new-kitchen' }, 'clean', 'clean'],
  ] as const)('%s', (_, looked, sephardic, ashkenazic) => {
    expect(findRow(customTable('sephardic'), looked).method).toBe(sephardic);
    expect(findRow(customTable('ashkenazic'), looked).method).toBe(ashkenazic);
  });

  it('both rest a day', () => {
    for (const custom of CUSTOMS) expect(customTable(custom).restHours).toBe(24);
  });
});

type RawTable = { [field: string]: unknown; rows: Record<string, unknown>[] };

describe('the shape of a table', () => {
  const fits = new Ajv({ strict: false }).compile(TABLE_SCHEMA);
  const good = (): RawTable => structuredClone(json('customs/sephardic.json')) as RawTable;

  it.each(CUSTOMS)('%s keeps to it, and names every row once', (custom) => {
    const table = json(`customs/${custom}.json`) as RawTable;
    expect(fits(table), JSON.stringify(fits.errors)).toBe(true);
    const ids = table.rows.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it.each([
    ['another custom', (t: RawTable) => (t['id'] = 'mine')],
    ['a rest of no length', (t: RawTable) => (t['restHours'] = 0)],
    ['a material nobody has', (t: RawTable) => (t.rows[2]!['materials'] = ['gold'])],
    ['a method nobody has', (t: RawTable) => (t.rows[1]!['method'] = 'sing')],
    ['no kinds', (t: RawTable) => delete t.rows[1]!['kinds']],
    ['minutes without end', (t: RawTable) => (t.rows[1]!['minutes'] = 1e9)],
    ['a field nobody reads', (t: RawTable) => (t.rows[1]!['colour'] = 'red')],
    ['a ruling without answers', (t: RawTable) => (t.rows[1]!['question'] = { about: 'ruling' })],
  ])('is broken by %s', (_, spoil) => {
    const table = good();
    spoil(table);
    expect(fits(table)).toBe(false);
  });
});

describe('the texts of the tables', () => {
  const entries = new Set(Object.keys(english));
  const keysOf = (value: unknown): readonly string[] => {
    if (Array.isArray(value)) return value.flatMap(keysOf);
    if (typeof value !== 'object' || value === null) return [];
    const { key, params, ...rest } = value as Record<string, unknown>;
    return typeof key === 'string' && params !== undefined
      ? [key]
      : keysOf(Object.values(rest).concat(key === undefined ? [] : [key]));
  };
  const used = new Set(
    CUSTOMS.flatMap((custom) => {
      const { rows, conditionRules, factRules } = customTable(custom);
      return keysOf([rows, conditionRules, factRules]);
    }),
  );

  it('stand in the catalogue, every one', () => {
    expect(used.size).toBeGreaterThan(100);
    expect([...used].filter((key) => !entries.has(key))).toEqual([]);
  });

  it('are all used: no text is left of a row that is gone', () => {
    expect([...entries].filter((key) => key.startsWith('custom.way.') && !used.has(key))).toEqual(
      [],
    );
  });

  it('are there for everything that covers', () => {
    for (const custom of CUSTOMS) {
      const { rows, conditionRules, factRules } = customTable(custom);
      for (const { coverWith } of [...rows, ...conditionRules, ...factRules])
        if (coverWith) expect(entries.has(`custom.cover.${coverWith}`), coverWith).toBe(true);
    }
  });
});

describe('sources', () => {
  const files = readdirSync(join(SHARED, 'sources'));

  it('no key stands for two sources', () => {
    const seen = new Map<string, string>();
    for (const file of files) {
      for (const key of Object.keys(json(`sources/${file}`))) {
        expect(seen.get(key), `${key} of ${file}`).toBeUndefined();
        seen.set(key, file);
      }
    }
  });

  it('every row of cautions, faults and cleaning names one that exists', () => {
    const rows = [
      ...(json('cautions.json')['rows'] as { source: string }[]),
      ...(json('fault-policies.json')['rows'] as { source: string }[]),
      ...['rows', 'preparing', 'finishing'].flatMap(
        (list) => json('cleaning.json')[list] as { source: string }[],
      ),
    ];
    for (const { source } of rows)
      expect(inEnglish.say(citation(source))).not.toMatch(/^sources\./);
  });

  it('each has its citation in the catalogue, and none is cited that is not there', () => {
    const cited = Object.keys(english).filter(
      (key) => key.startsWith('sources.') && !Object.hasOwn(retired, key),
    );
    expect(cited.toSorted()).toEqual(
      Object.keys(SOURCES)
        .map((key) => citation(key).key)
        .toSorted(),
    );
  });

  it('a key that is not there is refused by name', () => {
    expect(() => citation('hearsay')).toThrow('hearsay');
  });
});
