import { describe, expect, it } from 'vitest';
import { customTable, findRow, type Looked } from '../../../src/core/custom/index.ts';
import type { MethodId } from '../../../src/core/kitchen/index.ts';

/**
 * The usual default of each fixture in the two customs. Source: common
 * practice, no published source; the differences rest on Orach Chaim 451 (as
 * cited in shared/sources). "ask": a question stands beside it.
 */
type Expected = {
  readonly method: MethodId;
  readonly cover?: true;
  readonly ask?: true;
  readonly minutes?: number;
};
type Case = readonly [
  fixture: string,
  looked: Omit<Looked, 'purpose'> & { readonly purpose?: Looked['purpose'] },
  sephardic: Expected,
  ashkenazic: Expected,
];

const POUR: Expected = { method: 'pour' };
const COVER: Expected = { method: 'cover', cover: true };
const CLEAN: Expected = { method: 'clean' };
const GLOW: Expected = { method: 'glow', minutes: 30 };

const TABLE: readonly Case[] = [
  ['stainless sink', { kind: 'sink', material: 'stainless-steel' }, POUR, POUR],
  [
    'stainless sink for Passover',
    { kind: 'sink', material: 'stainless-steel', purpose: 'passover' },
    POUR,
    { method: 'pour', cover: true, ask: true },
  ],
  [
    'porcelain sink',
    { kind: 'sink', material: 'porcelain' },
    { method: 'pour', cover: true, ask: true },
    COVER,
  ],
  [
    'enamel sink',
    { kind: 'sink', material: 'enamelled-steel' },
    { method: 'pour', cover: true, ask: true },
    COVER,
  ],
  [
    'ceramic sink',
    { kind: 'sink', material: 'ceramic' },
    { method: 'pour', cover: true, ask: true },
    COVER,
  ],
  ['granite counter', { kind: 'counter', material: 'granite', condition: 'smooth' }, POUR, POUR],
  [
    'granite counter for Passover',
    { kind: 'counter', material: 'granite', condition: 'smooth', purpose: 'passover' },
    POUR,
    { method: 'pour', cover: true, ask: true },
  ],
  [
    'quartz counter',
    { kind: 'counter', material: 'quartz-composite' },
    { method: 'pour', cover: true, ask: true },
    COVER,
  ],
  [
    'acrylic counter',
    { kind: 'counter', material: 'acrylic' },
    { method: 'pour', cover: true, ask: true },
    COVER,
  ],
  [
    'laminate counter',
    { kind: 'counter', material: 'laminate' },
    { method: 'pour', cover: true, ask: true },
    COVER,
  ],
  ['tile counter', { kind: 'counter', material: 'tile' }, COVER, COVER],
  [
    'smooth wooden counter',
    { kind: 'counter', material: 'wood', condition: 'smooth' },
    POUR,
    { method: 'pour', cover: true },
  ],
  ['gas burner', { kind: 'cooktop', burner: 'gas-sealed' }, GLOW, GLOW],
  [
    'electric coil',
    { kind: 'cooktop', burner: 'electric-coil' },
    { ...GLOW, ask: true },
    { ...GLOW, ask: true },
  ],
  ['radiant glass', { kind: 'cooktop', burner: 'radiant-glass' }, GLOW, GLOW],
  [
    'induction',
    { kind: 'cooktop', burner: 'induction' },
    { method: 'not-purged', ask: true },
    { method: 'not-purged', ask: true },
  ],
  [
    'solid plate',
    { kind: 'cooktop', burner: 'solid-plate' },
    { ...GLOW, ask: true },
    { ...GLOW, ask: true },
  ],
  [
    'self-clean oven',
    { kind: 'oven', cleaning: 'pyrolytic' },
    { method: 'self-clean' },
    { method: 'self-clean' },
  ],
  [
    'steam-clean oven',
    { kind: 'oven', cleaning: 'steam' },
    { method: 'light-heat', minutes: 120, cover: true, ask: true },
    { method: 'light-heat', minutes: 120, cover: true, ask: true },
  ],
  [
    'catalytic oven',
    { kind: 'oven', cleaning: 'catalytic' },
    { method: 'light-heat', minutes: 120, cover: true, ask: true },
    { method: 'light-heat', minutes: 120, cover: true, ask: true },
  ],
  [
    'oven without self-clean',
    { kind: 'oven', cleaning: 'none' },
    { method: 'light-heat', minutes: 120, cover: true, ask: true },
    { method: 'light-heat', minutes: 120, cover: true, ask: true },
  ],
  [
    'warming drawer',
    { kind: 'warming-drawer', material: 'stainless-steel' },
    { method: 'line', cover: true, ask: true },
    { method: 'line', cover: true, ask: true },
  ],
  ['hood', { kind: 'hood', material: 'stainless-steel' }, CLEAN, CLEAN],
  ['fridge', { kind: 'fridge', material: 'plastic' }, CLEAN, CLEAN],
  [
    'fridge for Passover',
    { kind: 'fridge', material: 'plastic', purpose: 'passover' },
    CLEAN,
    { method: 'line', cover: true },
  ],
  [
    'microwave',
    { kind: 'microwave', material: 'enamelled-steel' },
    { method: 'steam', minutes: 20, ask: true },
    { method: 'steam', minutes: 20, ask: true },
  ],
  [
    'dishwasher',
    { kind: 'dishwasher', material: 'stainless-steel' },
    { method: 'not-purged', ask: true },
    { method: 'not-purged', ask: true },
  ],
  ['cupboard', { kind: 'cupboard', material: 'laminate', condition: 'smooth' }, CLEAN, CLEAN],
  [
    'cupboard of raw wood',
    { kind: 'cupboard', material: 'raw-wood' },
    { method: 'line', cover: true },
    { method: 'line', cover: true },
  ],
  [
    'drawer of raw wood',
    { kind: 'drawer', material: 'raw-wood' },
    { method: 'line', cover: true },
    { method: 'line', cover: true },
  ],
  [
    'smooth wooden table',
    { kind: 'table', material: 'wood', condition: 'smooth' },
    POUR,
    { method: 'pour', cover: true },
  ],
  ['metal table', { kind: 'table', material: 'stainless-steel' }, POUR, POUR],
  ['laminate table', { kind: 'table', material: 'laminate' }, COVER, COVER],
  ['glass sink', { kind: 'sink', material: 'glass' }, CLEAN, COVER],
];

describe.each(TABLE)('%s', (_, looked, sephardic, ashkenazic) => {
  it.each([
    ['sephardic', sephardic],
    ['ashkenazic', ashkenazic],
  ] as const)('by the %s custom', (custom, expected) => {
    const row = findRow(customTable(custom), { purpose: 'new-kitchen', ...looked });
    expect({
      method: row.method,
      cover: row.cover,
      ask: row.question !== undefined,
      minutes: row.minutes,
    }).toEqual({
      method: expected.method,
      cover: expected.cover === true,
      ask: expected.ask === true,
      minutes: expected.minutes,
    });
  });
});
