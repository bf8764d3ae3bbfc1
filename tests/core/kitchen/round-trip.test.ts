import * as fc from 'fast-check';
import { format } from 'prettier';
import { describe, expect, it } from 'vitest';
import { formatKitchen, parseKitchen } from '../../../src/core/kitchen/index.ts';
import { DEMO_TEXTS } from './demos.ts';
import { kitchens } from './arbitrary/kitchen-arbitrary.ts';

describe('writing and reading a kitchen', () => {
  it('gives the same kitchen, and the same text again', () => {
    fc.assert(
      fc.property(kitchens(), (kitchen) => {
        const text = formatKitchen(kitchen);
        const outcome = parseKitchen(text);
        expect(outcome).toMatchObject({ filled: [] });
        if ('problems' in outcome) return;
        expect(outcome.kitchen).toEqual(kitchen);
        expect(formatKitchen(outcome.kitchen)).toBe(text);
      }),
      { numRuns: 200 },
    );
  });

  it('does not mind the order of fields, line ends, spaces or a byte-order mark', () => {
    fc.assert(
      fc.property(kitchens(), (kitchen) => {
        const turned = JSON.stringify(kitchen, (_, value: unknown) =>
          typeof value === 'object' && value !== null && !Array.isArray(value)
            ? Object.fromEntries(Object.entries(value).toReversed())
            : value,
        );
        const windows = `\uFEFF${formatKitchen(kitchen).replaceAll('\n', '\r\n')}`;
        const expected = parseKitchen(formatKitchen(kitchen));
        expect(parseKitchen(turned)).toMatchObject({ ...expected, warnings: expect.any(Array) });
        expect(parseKitchen(windows)).toEqual(expected);
      }),
      { numRuns: 60 },
    );
  });

  // Reference: prettier's JSON printer. Confidence: computed; the texts are equal.
  it.each(DEMO_TEXTS)('lays %s out as a common formatter does', async (_, text) => {
    expect(await format(text, { parser: 'json', printWidth: 100 })).toBe(text);
  });
});
