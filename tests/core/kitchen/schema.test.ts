import { Ajv2020 } from 'ajv/dist/2020.js';
import * as fc from 'fast-check';
import { format } from 'prettier';
import { describe, expect, it } from 'vitest';
import {
  COUNTRY_CODES,
  kitchenSchema,
  parseKitchen,
  problemMessage,
  problemWhere,
} from '../../../src/core/kitchen/index.ts';
import { kitchenCodec } from '../../../src/core/kitchen/codec/kitchen-codec.ts';
import { Notes } from '../../../src/core/kitchen/codec/codec.ts';
import published from '../../../shared/kitchen.schema.json';
import { inEnglish } from '../../support/english.ts';
import { BROKEN_SHAPES } from './broken-files.ts';
import { DEMO_TEXTS } from './demos.ts';
import { kitchens } from './arbitrary/kitchen-arbitrary.ts';

/** Reference: ajv, an independent JSON Schema validator. Confidence: computed; equal verdicts. */
const accepts = new Ajv2020({ strict: true, strictRequired: false, allErrors: true }).compile(
  published,
);

function fieldsRead(value: unknown): boolean {
  const notes = new Notes({ supplyV: 0, kettleW: 0, kettleV: 0 });
  const kitchen = kitchenCodec.read(value, '', notes);
  expect(kitchen === undefined).toBe(notes.problems.length > 0);
  return kitchen !== undefined;
}

/** Voltage neither told nor known from the country: the reader's checks refuse it after the fields. */
function lacksVoltage(value: Json): boolean {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
  return value['supplyV'] === undefined && !COUNTRY_CODES.includes(String(value['country']));
}

type Json = null | boolean | number | string | Json[] | { [name: string]: Json };

/** Every object and list inside a value. */
function insides(value: Json): (Json[] | { [name: string]: Json })[] {
  if (typeof value !== 'object' || value === null) return [];
  return [value, ...Object.values(value).flatMap(insides)];
}

const scraps: fc.Arbitrary<Json> = fc.oneof(
  fc.constantFrom<Json>(
    null,
    true,
    false,
    '',
    ' ',
    'granite',
    'kettle',
    'US',
    'a b',
    {},
    [],
    [[0, 0]],
  ),
  fc.constantFrom<Json>(
    0,
    -1,
    1,
    2,
    0.5,
    1.5,
    1e9,
    -1e9,
    230,
    [0, 0],
    [0, 0, 0],
    ['a', 'b'],
    'x'.repeat(90),
  ),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
);

/** A demo with one to three places spoilt: changed, taken out, added or renamed. */
const spoiltDemos = fc
  .tuple(
    fc.constantFrom(...DEMO_TEXTS),
    fc.array(
      fc.tuple(fc.nat(), fc.nat(), fc.constantFrom('set', 'drop', 'add', 'rename'), scraps),
      {
        minLength: 1,
        maxLength: 3,
      },
    ),
  )
  .map(([[, text], spoils]) => {
    const value = JSON.parse(text) as Json;
    for (const [where, which, how, scrap] of spoils) {
      const places = insides(value);
      const place = places[where % places.length];
      if (place === undefined) continue;
      if (Array.isArray(place)) {
        if (how === 'add') place.push(structuredClone(scrap));
        else if (how === 'set' && place.length > 0)
          place[which % place.length] = structuredClone(scrap);
        else place.pop();
        continue;
      }
      const names = Object.keys(place);
      const name = names[which % names.length];
      if (how === 'add') place['extra'] = structuredClone(scrap);
      if (name === undefined) continue;
      if (how === 'set') place[name] = structuredClone(scrap);
      if (how === 'rename') place[`${name}s`] = place[name] ?? null;
      if (how === 'drop' || how === 'rename') delete place[name];
    }
    return value;
  });

describe('the published schema', () => {
  it('is the one the reader is built from (npx vitest run -u writes it)', async () => {
    const text = await format(JSON.stringify(kitchenSchema()), { parser: 'json', printWidth: 100 });
    await expect(text).toMatchFileSnapshot('../../../shared/kitchen.schema.json');
  });

  it.each(DEMO_TEXTS)('accepts %s', (_, text) => {
    expect(accepts(JSON.parse(text))).toBe(true);
  });

  it.each(BROKEN_SHAPES)('refuses a file with $what, as the reader does', ({ spoil }) => {
    const file = spoil();
    expect(accepts(file)).toBe(false);
    expect(parseKitchen(JSON.stringify(file))).toHaveProperty('problems');
  });

  it('accepts random kitchens', () => {
    fc.assert(
      fc.property(kitchens(), (kitchen) => {
        expect(accepts(JSON.parse(JSON.stringify(kitchen)))).toBe(true);
      }),
    );
  });

  it('gives the same verdict as the reader on spoilt demos', () => {
    let refused = 0;
    let runs = 0;
    fc.assert(
      fc.property(spoiltDemos, (value) => {
        runs += 1;
        const verdict = accepts(value);
        if (!verdict) refused += 1;
        expect(fieldsRead(value) && !lacksVoltage(value)).toBe(verdict);
      }),
      { numRuns: 1500 },
    );
    expect(refused).toBeGreaterThan(runs / 4);
    expect(refused).toBeLessThan(runs);
  });
});

describe('the reader on spoilt demos', () => {
  it('never throws, and every problem says where, what, what is allowed and what to do', () => {
    fc.assert(
      fc.property(spoiltDemos, (value) => {
        const outcome = parseKitchen(JSON.stringify(value, null, 1));
        for (const problem of 'problems' in outcome ? outcome.problems : outcome.warnings) {
          const { say } = inEnglish;
          const all = say(problemMessage(problem));
          const { found, allowed, advice } = problem;
          for (const part of [problemWhere(problem), found, allowed, advice].map(say)) {
            expect(part).not.toBe('');
            expect(all).toContain(part);
          }
          expect(problem.line).toBeGreaterThan(0);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('never throws on any text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json(), fc.string({ unit: 'binary' })), (text) => {
        const outcome = parseKitchen(text);
        expect('problems' in outcome && outcome.problems.length > 0).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
