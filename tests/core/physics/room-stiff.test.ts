import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { roomHeat } from '../../../src/core/physics/index.ts';

it('stays between the outdoor air and what the heat can do, however much air is drawn through however little room', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 3, max: 200, noNaN: true }),
      fc.double({ min: 0, max: 5, noNaN: true }),
      fc.double({ min: -20, max: 40, noNaN: true }),
      (volumeM3, flowM3S, outdoorC) => {
        const { curve } = roomHeat({
          volumeM3,
          wallAreaM2: Math.max(5, 6 * volumeM3 ** (2 / 3)),
          hood: { capture: { low: 0, typical: 0, high: 0 }, flowM3S },
          window: { areaM2: 0, heightM: 1, open: false },
          outdoorC,
          startC: 20,
          heat: [],
          untilS: 1200,
        });
        for (const { airC } of curve) {
          expect(airC).toBeGreaterThan(Math.min(20, outdoorC) - 0.5);
          expect(airC).toBeLessThan(Math.max(20, outdoorC) + 0.5);
        }
      },
    ),
    { numRuns: 60 },
  );
});
