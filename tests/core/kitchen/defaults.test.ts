import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  countryOf,
  COUNTRY_CODES,
  emergencyNumber,
  parseKitchen,
} from '../../../src/core/kitchen/index.ts';
import { survey } from '../../../src/core/messages/english/survey/index.ts';
import countries from '../../../shared/countries.json';
import emergencyNumbers from '../../../shared/emergency-numbers.json';
import { inEnglish } from '../../support/english.ts';
import { demoJson } from './demos.ts';

const SHORTEST = {
  format: 'glowpour-kitchen',
  version: 1,
  name: 'Short',
  country: 'GB',
  household: { purpose: 'mix-up', custom: 'ashkenazic' },
  room: { floorAreaM2: 8 },
  circuits: [{ id: 'ring', name: 'Ring', ratingA: 32 }],
  vessels: [
    { id: 'kettle', name: 'Kettle', kind: 'electric-kettle', body: 'steel', maxFillL: 1.7, circuit: 'ring' },
  ],
  fixtures: [
    { kind: 'table', id: 'table', name: 'Table', outline: [[0, 0], [1, 0], [1, 1]] },
    { kind: 'fridge', id: 'fridge', name: 'Fridge' },
  ],
}; // prettier-ignore

describe('fields that may be left out', () => {
  const outcome = parseKitchen(JSON.stringify(SHORTEST));

  it('are filled, from the country where it tells', () => {
    expect(outcome).toMatchObject({
      warnings: [],
      kitchen: {
        altitudeM: 0,
        supplyV: 230,
        tapColdC: 15,
        household: { people: 1, keepsRestDays: true, overrides: [] },
        room: {
          heightM: 2.5,
          hood: { kind: 'unknown', flowLS: 0 },
        },
        circuits: [{ voltsV: 230 }],
        // "220-240 V" on the plate: 3 kW are of 240 V.
        vessels: [{ ratedW: 3000, ratedV: 240, count: 1 }],
        fixtures: [
          { designation: 'undecided', material: 'unknown', condition: 'unknown' },
          { designation: 'undecided', material: 'unknown' },
        ],
      },
    });
    expect('kitchen' in outcome && 'place' in outcome.kitchen).toBe(false);
    // Not told is not "none".
    expect('kitchen' in outcome && 'window' in outcome.kitchen.room).toBe(false);
    expect('kitchen' in outcome && 'comment' in (outcome.kitchen.fixtures[0] ?? {})).toBe(false);
  });

  it('are each reported with the reason', () => {
    const filled = 'filled' in outcome ? outcome.filled : [];
    expect(filled.map(({ path }) => path)).toEqual([
      'altitudeM',
      'supplyV',
      'tapColdC',
      'household.people',
      'household.keepsRestDays',
      'household.overrides',
      'room.heightM',
      'room.hood',
      'circuits[0].voltsV',
      'vessels[0].ratedW',
      'vessels[0].ratedV',
      'vessels[0].count',
      'fixtures[0].designation',
      'fixtures[0].material',
      'fixtures[0].condition',
      'fixtures[1].designation',
      'fixtures[1].material',
    ]);
    for (const { why } of filled) expect(why.key).toMatch(/^problems\.filled\./);
  });

  it('follow the voltage that was told rather than the country', () => {
    const told = parseKitchen(
      JSON.stringify({ ...SHORTEST, country: 'ZZ', supplyV: 110, vessels: [] }),
    );
    expect(told).toMatchObject({ kitchen: { supplyV: 110, circuits: [{ voltsV: 110 }] } });
  });

  it('ask for the power of a kettle in a country without a row', () => {
    const outcome = parseKitchen(JSON.stringify({ ...SHORTEST, country: 'ZZ', supplyV: 110 }));
    expect(outcome).toMatchObject({ problems: [{ path: 'vessels[0].ratedW' }] });
  });
});

describe('warnings', () => {
  // Reckoned by hand: 1500 W / 120 V = 12.5 A; 2200 W / 230 V = 9.57 A.
  const cases: readonly (readonly [string, string, (k: ReturnType<typeof demoJson>) => void, string, string])[] = [
    ['a kettle too strong for its circuit', 'flat-coils', (k) => (k.circuits[1].ratingA = 10), 'vessels[0].circuit', '12.5 A'],
    ['two kettles on one circuit', 'hall', (k) => (k.vessels[2].circuit = 'left-b'), 'circuits[1]', '19.1 A together'],
    ['one sort of kettle twice on one circuit', 'flat-coils', (k) => (k.vessels[0].count = 2), 'circuits[1]', '25.0 A together'],
    ['a kettle of another voltage', 'flat-coils', (k) => (k.vessels[0].ratedV = 230), 'vessels[0].ratedV', '230 V on a circuit of 120 V'],
    ['no fixture yet', 'flat-coils', (k) => (k.fixtures = []), 'fixtures', 'none'],
    ['no kettle', 'flat-coils', (k) => (k.vessels = []), 'vessels', 'none'],
    ['a kettle with no socket', 'flat-coils', (k) => delete k.vessels[0].circuit, 'vessels[0].circuit', 'nothing'],
    ['a vented hood without a flow', 'hall', (k) => (k.room.hood.flowLS = 0), 'room.hood.flowLS', '0'],
    ['a flow without a hood', 'hall', (k) => (k.room.hood.kind = 'none'), 'room.hood.kind', '600\u00a0L/s'],
    ['a room too small to reckon', 'hall', (k) => (k.room = { ...k.room, floorAreaM2: 1, heightM: 2 }), 'room.floorAreaM2', '2\u00a0m³'],
    ['a last hot use in a kitchen of no place', 'flat-coils', (k) => { delete k.place; k.household.lastHotAt = '2026-03-29T20:00'; }, 'household.lastHotAt', '2026-03-29T20:00'],
    ['a cycle of an oven that has none', 'mountain-gas', (k) => (k.fixtures[5].cycleMin = 120), 'fixtures[5].cycleMin', '120'],
  ]; // prettier-ignore

  it.each(cases)('%s', (_, file, change, path, found) => {
    const kitchen = demoJson(`${file}.kitchen.json`);
    change(kitchen);
    const outcome = parseKitchen(JSON.stringify(kitchen));
    expect(outcome).toMatchObject({ warnings: [{ path }] });
    const [warning] = 'warnings' in outcome ? outcome.warnings : [];
    expect(warning && inEnglish.say(warning.found)).toContain(found);
  });
});

describe('the table of countries', () => {
  const folder = join(import.meta.dirname, '../../../shared/sources');
  const sources = new Set(
    readdirSync(folder).flatMap((file) =>
      Object.keys(JSON.parse(readFileSync(join(folder, file), 'utf8')) as object),
    ),
  );

  it.each(countries.rows)('$code has a source and values in range', (row) => {
    const { supplyV, socketA, kettleW } = countries.ranges;
    const inside = (value: number, range: readonly number[]) =>
      value >= (range[0] ?? Infinity) && value <= (range[1] ?? -Infinity);
    expect(sources.has(row.source) && sources.has(row.kettleSource)).toBe(true);
    expect(row.code).toMatch(/^[A-Z]{2}$/);
    expect(inside(row.supplyV, supplyV) && inside(row.kettleW, kettleW)).toBe(true);
    expect(row.socketA.every((a) => inside(a, socketA))).toBe(true);
    // The usual kettle runs on the usual socket.
    expect(row.kettleW / row.supplyV).toBeLessThanOrEqual(Math.max(...row.socketA) * 1.01);
  });

  // Reference: the engine's own table of ISO 3166-1 (Unicode CLDR). Confidence: computed.
  it.each(COUNTRY_CODES)('%s is what it is called', (code) => {
    const name = survey[`survey.country.${code}` as keyof typeof survey];
    expect(new Intl.DisplayNames('en', { type: 'region' }).of(code)?.split(' SAR')[0]).toBe(name);
  });

  it('is read by code', () => {
    expect(countryOf('IL')?.supplyV).toBe(230);
    expect(countryOf('XX')).toBeUndefined();
    expect(new Set(COUNTRY_CODES).size).toBe(countries.rows.length);
  });

  it('have a number to call only where one was read, and none is made up', () => {
    for (const { code, number, source, checked } of emergencyNumbers.rows) {
      expect(COUNTRY_CODES, code).toContain(code);
      expect(number, code).toMatch(/^\d{3}$/);
      expect([sources.has(source), checked], code).toEqual([true, true]);
    }
    expect(emergencyNumber('IL')).toBe('101');
    expect(emergencyNumber('DE')).toBe('112');
    expect(emergencyNumber('XX')).toBeUndefined();
  });
});
