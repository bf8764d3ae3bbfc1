import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  customTable,
  PART_ROWS,
  SOURCE_KEYS,
  sourceState,
  stateOfMethod,
  type Source,
} from '../../../src/core/custom/index.ts';
import { buildPlan, describePlan } from '../../../src/core/plan/index.ts';
import { inEnglish } from '../../support/english.ts';
import { demoKitchen } from '../kitchen/demos.ts';

const SOURCES = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../../shared/sources/custom.json'), 'utf8'),
) as Readonly<Record<string, Source>>;
const UNREAD = ['inference', 'later-authorities', 'common-practice'];

/** What is wrong with a source as it stands in the table, if anything. */
function wrongWith({ kind, checked, place, title, note }: Source): string | undefined {
  if (kind === undefined || note === undefined) return 'no kind or no note';
  if (checked && (kind !== 'text' || !place || !title)) return 'checked without a place';
  if (!checked && !UNREAD.includes(kind)) return 'unread and does not say what it is instead';
  return undefined;
}

describe('the religious sources', () => {
  it('each prints its state', () => {
    const told = SOURCE_KEYS.map((key) => `${key}: ${sourceState(key)}`);
    // eslint-disable-next-line no-console
    console.info(told.join('\n'));
    expect(Object.keys(SOURCES).every((key) => sourceState(key) !== 'memory')).toBe(true);
  });

  it.each(Object.entries(SOURCES))('%s: read with its place, or says what it is', (_, source) => {
    expect(wrongWith(source)).toBeUndefined();
  });

  it.each([
    ['checked without a place', { kind: 'text', checked: true, note: 'x', title: 'A book' }],
    ['an inference that claims to be read', { kind: 'inference', checked: true, note: 'x' }],
    ['a text that was not read', { kind: 'text', checked: false, note: 'x', place: '1:1' }],
  ] as const)('refuses %s', (_, source) => {
    expect(wrongWith(source)).toBeDefined();
  });

  it('no row claims more than its source, nor less', () => {
    const rows = [
      ...(['sephardic', 'ashkenazic'] as const).flatMap((custom) => {
        const { rows: all, conditionRules, factRules } = customTable(custom);
        return [...all, ...conditionRules, ...factRules];
      }),
      ...PART_ROWS,
    ];
    expect(rows.length).toBeGreaterThan(100);
    for (const { id, source, checked } of rows)
      expect([id, checked]).toEqual([id, SOURCES[source]?.checked]);
  });

  // Orach Chaim as printed, Lemberg 1893, and the Mishnah Berurah: read.
  it.each([
    ['sink-metal', '451:5'],
    ['top-stone', '451:5'],
    ['table-pour', '451:20'],
    ['burner-gas', '451:4'],
    ['cold', '451:22'],
  ])('%s stands on %s', (row, place) => {
    const found = customTable('sephardic').rows.find(({ id }) => id === row);
    expect(SOURCES[found?.source ?? '']?.place).toBe(place);
  });

  it('a plan prints place and state of each method', () => {
    const plan = buildPlan(demoKitchen('flat-coils.kitchen.json'));
    const text = describePlan(plan, inEnglish);
    expect(text).toContain('Shulchan Aruch, Orach Chaim 451:5');
    expect(text).toContain('(read in the text)');
    expect(text).not.toContain('from memory, not yet checked');
    for (const method of plan.methods) expect(stateOfMethod(method)).not.toBe('memory');
  });

  it('a plan of an older version says what it knew', () => {
    expect(stateOfMethod({ checked: true })).toBe('read');
    expect(stateOfMethod({ checked: false })).toBe('memory');
  });
});
