import { describe, expect, it } from 'vitest';
import {
  drawingHolds,
  FIXTURE_KINDS,
  isElectric,
  isGas,
  BURNER_TYPES,
  LIMITS,
  mayBeUndrawn,
  outlineHolds,
  readKitchen,
  VESSEL_KINDS,
  type Fixture,
} from '../../../src/core/kitchen/index.ts';
import published from '../../../shared/kitchen.schema.json';
import { demoKitchen } from './demos.ts';

const hall = demoKitchen('hall.kitchen.json');
const flat = demoKitchen('flat-coils.kitchen.json');

/** Whether the reader takes a kitchen. */
function reads(kitchen: unknown): boolean {
  return !('problems' in readKitchen(kitchen));
}

describe('limits', () => {
  it('are those that the schema publishes', () => {
    const { kitchen, sink } = { kitchen: published.properties, sink: published.$defs.sink };
    expect(kitchen.altitudeM).toMatchObject({
      minimum: LIMITS.altitudeM.least,
      maximum: LIMITS.altitudeM.most,
    });
    expect(kitchen.fixtures).toMatchObject({ maxItems: LIMITS.fixtures.most });
    expect(sink.properties.bowls).toMatchObject({
      minItems: LIMITS.bowls.least,
      maxItems: LIMITS.bowls.most,
    });
  });

  it('have their ends in order', () => {
    for (const [name, { least, most }] of Object.entries(LIMITS))
      expect(least, name).toBeLessThan(most);
  });
});

describe('what need not be drawn', () => {
  it.each(FIXTURE_KINDS)('%s: the reader and the list agree', (kind) => {
    const known = [...hall.fixtures, ...flat.fixtures].find((one) => one.kind === kind);
    const bare = { designation: 'undecided', material: 'unknown' };
    const {
      outline: _outline,
      wallPlace: _wall,
      ...undrawn
    } = {
      outline: undefined,
      wallPlace: undefined,
      ...(known ?? { ...bare, kind, id: 'one', name: 'One' }),
    };
    const kitchen = {
      ...flat,
      vessels: [],
      household: { ...flat.household, overrides: [] },
      circuits: [...flat.circuits, ...hall.circuits],
      fixtures: [{ ...undrawn, sharesRangeWith: undefined }].map((one) =>
        Object.fromEntries(Object.entries(one).filter(([, value]) => value !== undefined)),
      ),
    };
    expect(reads(kitchen)).toBe(mayBeUndrawn(kind));
  });
});

describe('the drawing of one fixture', () => {
  it('holds where the reader takes the kitchen, whatever its words', () => {
    for (const fixture of [...hall.fixtures, ...flat.fixtures]) {
      expect(drawingHolds(fixture)).toBe(true);
      expect(drawingHolds({ ...fixture, name: '' })).toBe(true);
    }
  });

  it('does not hold where a corner, a cut-out, a bowl or a burner is off', () => {
    const one = <K extends Fixture['kind']>(kind: K) =>
      flat.fixtures.find((f): f is Extract<Fixture, { kind: K }> => f.kind === kind);
    const [counter, sink, cooktop] = [one('counter'), one('sink'), one('cooktop')];
    if (!counter || !sink || !cooktop) throw new Error('The demo has all three.');
    const [first, second = [0, 0]] = counter.outline;
    expect(drawingHolds({ ...counter, outline: [second, ...counter.outline.slice(1)] })).toBe(
      false,
    );
    expect(
      drawingHolds({
        ...counter,
        holes: [[...counter.outline]].map((o) => o.map(([x, y]) => [x + 9, y] as const)),
      }),
    ).toBe(false);
    expect(drawingHolds({ ...sink, bowls: [{ lengthM: 3, widthM: 1.5, depthM: 0.2 }] })).toBe(
      false,
    );
    expect(
      drawingHolds({
        ...cooktop,
        burners: cooktop.burners.map((b) => ({ ...b, at: [9, 9] as const })),
      }),
    ).toBe(false);
    expect(drawingHolds({ ...counter, backEdges: [[0, 2]] })).toBe(false);
    expect(first && outlineHolds([first, second])).toBe(false);
  });
});

describe('queries', () => {
  it('tell flames from elements, plugs from pots', () => {
    expect(BURNER_TYPES.filter(isGas)).toEqual([
      'gas-sealed',
      'gas-open',
      'gas-wok',
      'commercial-open',
    ]);
    expect(VESSEL_KINDS.filter((kind) => isElectric({ kind }))).toEqual(['electric-kettle', 'urn']);
  });
});
