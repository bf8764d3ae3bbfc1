import { describe, expect, it } from 'vitest';
import appliances from '../../../shared/appliances.json';
import air from '../../../shared/air/dry-air.json';
import burners from '../../../shared/burners.json';
import burns from '../../../shared/burns.json';
import emissions from '../../../shared/air/emissions.json';
import materials from '../../../shared/materials.json';
import specificHeats from '../../../shared/physics/specific-heats.json';
import sources from '../../../shared/sources/physics.json';
import { MATERIALS, type BurnerType, type VesselBody } from '../../../src/core/kitchen/index.ts';
import { hobEfficiency, kettleBody, material } from '../../../src/core/physics/index.ts';

const TABLES = { air, appliances, burners, burns, emissions, materials, specificHeats };

// Keyed by the types of the kitchen file: a new id there does not compile until it is here.
const BURNERS: Readonly<Record<BurnerType, boolean>> = {
  'electric-coil': true,
  'solid-plate': true,
  'radiant-glass': true,
  induction: false,
  'gas-sealed': true,
  'gas-open': true,
  'gas-wok': true,
  'commercial-open': true,
  'portable-plate': true,
};
const BODIES: Readonly<Record<VesselBody, true>> = {
  plastic: true,
  steel: true,
  glass: true,
  'double-wall': true,
  enamel: true,
};

type Json = Readonly<Record<string, unknown>>;

/** Every object inside, with its path. */
function* objects(value: unknown, path: string): Generator<readonly [string, Json]> {
  if (typeof value !== 'object' || value === null) return;
  if (!Array.isArray(value)) yield [path, value as Json];
  for (const [key, inner] of Object.entries(value)) yield* objects(inner, `${path}.${key}`);
}

describe.each(Object.entries(TABLES))('shared/%s.json', (name, table) => {
  it('names sources that exist', () => {
    for (const [path, value] of objects(table, name)) {
      for (const [key, found] of Object.entries(value)) {
        if (!/source$/i.test(key) || found === null) continue;
        expect(Object.keys(sources), `${path}.${key}`).toContain(found);
      }
    }
  });

  it('gives every quantity a unit, and keeps every number within its range', () => {
    const units: Json = table.units;
    const ranges: Readonly<Record<string, readonly number[]>> = table.ranges;
    for (const [path, value] of objects(table, name)) {
      if (path.includes('.units') || path.includes('.ranges')) continue;
      for (const [key, found] of Object.entries(value)) {
        const range = ranges[key];
        const isBand = typeof found === 'object' && found !== null && 'typical' in found;
        if (!range || (typeof found !== 'number' && !isBand)) continue;
        expect(units[key], `${path}.${key}`).toBeDefined();
        const numbers = typeof found === 'number' ? [found] : Object.values(found as object);
        for (const number of numbers) {
          expect(number, `${path}.${key}`).toBeGreaterThanOrEqual(range[0] ?? Number.NaN);
          expect(number, `${path}.${key}`).toBeLessThanOrEqual(range[1] ?? Number.NaN);
        }
      }
    }
  });

  it('keeps its bands in order', () => {
    for (const [path, value] of objects(table, name)) {
      if (!('typical' in value)) continue;
      const { low, typical, high } = value as Readonly<Record<string, number>>;
      expect(low, path).toBeLessThanOrEqual(typical ?? Number.NaN);
      expect(typical, path).toBeLessThanOrEqual(high ?? Number.NaN);
    }
  });
});

describe('what a kitchen file may name', () => {
  it('has a row for each material and no other', () => {
    expect(materials.rows.map(({ id }) => id).toSorted()).toEqual(MATERIALS.toSorted());
    for (const id of MATERIALS) expect(material(id).contactDeg.typical).toBeGreaterThan(0);
  });

  it('has a row for each burner that can glow', () => {
    const able = Object.entries(BURNERS).filter(([, glows]) => glows);
    expect(burners.rows.map(({ type }) => type).toSorted()).toEqual(
      able.map(([id]) => id).toSorted(),
    );
    for (const type of Object.keys(BURNERS)) expect(hobEfficiency(type).typical).toBeGreaterThan(0);
  });

  it('has a row for each body of a vessel', () => {
    for (const body of Object.keys(BODIES)) expect(kettleBody(body).bodyWaterL).toBeGreaterThan(0);
  });

  it('refuses an unknown one by name', () => {
    expect(() => material('velvet')).toThrow(/material is velvet; allowed: stainless-steel/);
    expect(() => kettleBody('paper')).toThrow(/body is paper/);
  });
});
