import { describe, expect, it } from 'vitest';
import { burnerVolts, type Burner } from '../../../src/core/kitchen/index.ts';

const BURNER: Burner = {
  id: 'one',
  name: 'one',
  type: 'electric-coil',
  at: [0, 0],
  diameterM: 0.2,
  ratedW: 2100,
  circuit: 'range',
};
const volts = (mainsV: number, circuitV: number | undefined, change: Partial<Burner> = {}) =>
  burnerVolts(
    {
      supplyV: mainsV,
      circuits:
        circuitV === undefined
          ? []
          : [{ id: 'range', name: 'range', ratingA: 40, voltsV: circuitV }],
    },
    { ...BURNER, ...change },
  );

describe('the volts of a burner', () => {
  it('are 240 on its plate where mains are 120, and 208 in some houses', () => {
    expect(volts(120, 240)).toEqual({ ratedV: 240, supplyV: 240 });
    expect(volts(120, 208)).toEqual({ ratedV: 240, supplyV: 208 });
  });

  it('are those of its plate where it tells', () => {
    expect(volts(120, 208, { ratedV: 208 })).toEqual({ ratedV: 208, supplyV: 208 });
    expect(volts(120, undefined, { ratedV: 240 })).toEqual({ ratedV: 240, supplyV: 240 });
    expect(volts(230, undefined, { ratedV: 240 })).toEqual({ ratedV: 240, supplyV: 230 });
  });

  it('are the mains everywhere else, and between three lines too', () => {
    expect(volts(230, 230)).toEqual({ ratedV: 230, supplyV: 230 });
    expect(volts(230, 400)).toEqual({ ratedV: 230, supplyV: 230 });
    expect(volts(127, 220)).toEqual({ ratedV: 220, supplyV: 220 });
    expect(volts(120, 120)).toEqual({ ratedV: 120, supplyV: 120 });
  });

  it('are not asked of a flame, nor guessed where nothing tells', () => {
    expect(volts(120, 240, { type: 'gas-sealed' })).toBeUndefined();
    expect(volts(120, undefined)).toBeUndefined();
  });
});
