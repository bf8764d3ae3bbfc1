import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { followUnits } from '../../../../../src/app/context/units.ts';
import {
  quantity,
  readQuantity,
} from '../../../../../src/app/pages/kitchen/survey/inputs/quantities.ts';
import type { QuantityId } from '../../../../../src/app/pages/kitchen/survey/inputs/unit-table.ts';
import type { UnitSystem } from '../../../../../src/core/units/index.ts';
import { translatorOf } from '../../../../support/translators.ts';

/** What a kitchen may hold of each, and how far what is shown may be off: so much, or that share of it. */
const SIZES: readonly (readonly [
  QuantityId,
  least: number,
  most: number,
  off: number,
  share: number,
])[] = [
  // Half a sixteenth of an inch, and half a millimetre; from 3 m on, four figures.
  ['length', 0.01, 20, 0.0008, 0.0005],
  ['altitude', -430, 5100, 0.2, 0.005],
  ['volume', 0.1, 60, 0, 0.005],
  ['power', 0, 40_000, 0, 0.0005],
  ['gas-power', 500, 40_000, 0, 0.005],
  ['flow', 0, 1000, 0.01, 0.005],
  ['area', 0.05, 400, 0, 0.005],
  ['temperature', -40, 50, 0.3, 0],
  ['minutes', 1, 600, 0.05, 0],
  ['current', 1, 125, 0.01, 0.0005],
  ['count', 1, 500, 0, 0],
];
const SYSTEMS: readonly UnitSystem[] = ['metric', 'us-customary'];
const LANGUAGES = ['en', 'he', 'fr', 'es'];

// Reference: the value that was shown. Confidence: computed.
describe.each(LANGUAGES.flatMap((tag) => SYSTEMS.map((units) => ({ tag, units }))))(
  'in $tag, $units',
  async ({ tag, units }) => {
    const speech = await translatorOf(tag, units);

    it.each(SIZES)(
      '%s that is shown and typed again is the same',
      (id, least, most, off, share) => {
        const back = followUnits(() => units);
        try {
          const values =
            id === 'count'
              ? fc.integer({ min: least, max: most })
              : fc.double({ min: least, max: most, noNaN: true });
          fc.assert(
            fc.property(values, (value) => {
              const text = speech.say(quantity(id, value));
              const typed = readQuantity(id, text, { least: least - 1, most: most * 1.01 }, speech);
              expect('value' in typed ? typed.value : speech.say(typed.problem), text).toSatisfy(
                (again) =>
                  typeof again === 'number' &&
                  Math.abs(again - value) <= Math.max(off, share * Math.abs(value)) + 0.0006,
              );
            }),
            { numRuns: 200 },
          );
        } finally {
          back();
        }
      },
    );
  },
);
