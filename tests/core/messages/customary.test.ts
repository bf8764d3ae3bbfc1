import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { customarySizes } from '../../../src/core/messages/customary/index.ts';
import { englishTraits } from '../../../src/core/messages/english/traits.ts';
import { LANGUAGES } from '../../../src/core/messages/languages/index.ts';
import type { Rounding, SizeFormatter, Unit } from '../../../src/core/messages/index.ts';
import {
  BTU_H_W,
  CUBIC_FOOT_L,
  FLUID_OUNCE_L,
  FOOT_M,
  GALLON_L,
  INCH_M,
  POUND_KG,
  QUART_L,
} from '../../../src/core/units/index.ts';
import { inEnglish } from '../../support/english.ts';
import { translatorOf } from '../../support/translators.ts';

const f = customarySizes(inEnglish.format, englishTraits);
const metric: SizeFormatter = inEnglish.format;

describe('US customary units', () => {
  // Reference: NIST SP 811 (2008), appendix B.8, "Factors for units listed alphabetically", and NIST
  // Handbook 44 (2023), appendix C, tables of exact equivalents. Confidence: quoted from memory.
  it.each([
    ['inch, m', INCH_M, 2.54e-2],
    ['foot, m', FOOT_M, 3.048e-1],
    ['gallon (US), L', GALLON_L, 3.785411784],
    ['liquid quart (US), L', QUART_L, 9.463529e-1],
    ['fluid ounce (US), L', FLUID_OUNCE_L, 2.957353e-2],
    ['cubic foot, L', CUBIC_FOOT_L, 2.831685e1],
    ['pound (avoirdupois), kg', POUND_KG, 4.535924e-1],
    ['Btu(IT) per hour, W', BTU_H_W, 2.930711e-1],
    ['cubic foot per minute, L/s', CUBIC_FOOT_L / 60, 4.719474e-1],
  ])('%s', (_, held, published) => {
    expect(Math.abs(held / published - 1)).toBeLessThan(3e-7);
  });

  // Reference: the fixed points of the scale, NIST SP 811, B.8: t/°C = (t/°F − 32)/1.8.
  it.each([
    [100, '212\u00a0°F'],
    [0, '32\u00a0°F'],
    [-40, '−40\u00a0°F'],
    [37, '99\u00a0°F'],
    [60, '140\u00a0°F'],
  ])('%d °C is %s', (tempC, told) => {
    expect(f.measure(tempC, '°C')).toBe(told);
  });

  it('writes each size in what a household reads', () => {
    expect(f.measure(93.1, '°C', 1)).toBe('200\u00a0°F');
    expect(f.measure(5, 'K')).toBe('9\u00a0°F');
    expect(f.measure(2100, 'm')).toBe('6890\u00a0ft');
    expect(f.measure(2.5, 'm', 1)).toBe('8.2\u00a0ft');
    expect(f.measure(50, 'cm')).toBe('20\u00a0in');
    expect(f.shortMeasure(8.8, 'm²')).toBe('95\u00a0sq ft');
    expect(f.shortMeasure(0.5, 'm²')).toBe('5.4\u00a0sq ft');
    expect(f.measure(120, 'cm²')).toBe('19\u00a0sq in');
    expect(f.measure(22, 'm³')).toBe('777\u00a0cu ft');
    expect(f.measure(90, 'L/s')).toBe('191\u00a0cfm');
    expect(f.measure(1.5, 'L', 1)).toBe('1.6\u00a0qt');
    expect(f.measure(0.2, 'L', 1)).toBe('7\u00a0fl oz');
    expect(f.measure(38, 'L')).toBe('10\u00a0gal');
    expect(f.measureRange(38, 44, 'L')).toBe('10–12\u00a0gal');
    expect(f.measureRange(9.1, 12.3, 'L')).toBe('10–13\u00a0qt');
    expect(f.shortMeasure(1.2, 'kg')).toBe('2.6\u00a0lb');
    expect(`${f.first(45, '°C')} to ${f.measure(71, '°C', 0, 'up')}`).toBe('113 to 160\u00a0°F');
  });

  it('writes lengths as a tape shows them', () => {
    expect(f.tape(0.61)).toBe('24\u00a0in');
    expect(f.tape(2.5273)).toBe('8\u00a0ft 3\u00a01/2\u00a0in');
    expect(f.tape(1.8288)).toBe('6\u00a0ft');
    expect(f.tape(1.8288 + 0.0127)).toBe('6\u00a0ft 1/2\u00a0in');
    expect(f.tape(0)).toBe('0\u00a0in');
    expect(f.tape(0.0047625, { decimals: 3 })).toBe('3/16\u00a0in');
  });

  it('asks a shop for what it sells, and never for less', () => {
    const bought = (metres: number) =>
      f.tape(metres, { decimals: 3, isShort: true, isBought: true });
    expect(bought(0.675)).toBe('27\u00a0in');
    expect(bought(0.45)).toBe('18\u00a0in');
    expect(bought(2.44)).toBe('8\u00a0ft');
    expect(bought(15)).toBe('50\u00a0ft');
    expect(metric.tape(2.44, { decimals: 3, isShort: true, isBought: true })).toBe('2.44\u00a0m');
  });

  it('writes how far to fill by both marks, and never more than told', () => {
    expect(f.fill(1.7)).toBe('1\u00a03/4\u00a0qt (1.7\u00a0L)');
    expect(f.fill(2.3)).toBe('2\u00a03/8\u00a0qt (2.3\u00a0L)');
    expect(f.fill(1.7, true)).toBe('1\u00a03/4\u00a0qt');
    expect(f.fill(0.2)).toBe('6\u00a0fl oz (0.2\u00a0L)');
    expect(metric.fill(1.78)).toBe('1.7\u00a0L');
  });

  it('has words of its own in every language that is offered', async () => {
    for (const { tag } of LANGUAGES.filter(({ isOffered }) => isOffered)) {
      const { format } = await translatorOf(tag, 'us-customary');
      const told = [format.tape(2.5273), format.measure(100, '°C'), format.fill(1.7)].join(', ');
      expect(told, tag).toContain('212');
      expect(told, tag).not.toMatch(/undefined|NaN/);
      if (tag !== 'en') expect(told).not.toContain('\u00a0ft ');
    }
  });

  it('keeps a whole and its part in their order in a line from right to left', async () => {
    const { format } = await translatorOf('he', 'us-customary');
    expect(format.tape(2.5273)).toBe('8\u00a0רגל \u20663\u00a01/2\u2069\u00a0אינץ׳');
  });

  it('keeps what follows a degree in its place in a line from right to left', async () => {
    for (const [units, told, alone] of [
      ['us-customary', '212°F\u200f', '\u2066°F\u2069'],
      ['metric', '100°C\u200f', '\u2066°C\u2069'],
    ] as const) {
      const { format } = await translatorOf('he', units);
      expect(format.measure(100, '°C')).toBe(told);
      expect(format.unitName('°C')).toBe(alone);
    }
  });
});

/** The number in front of a text, as it reads. */
function figureIn(text: string): number {
  const [, sign, whole = '0', above, below, plain] =
    /^([−-]?)(?:(?:(\d+)\u00a0)?(\d+)\/(\d+)|(\d+(?:\.\d+)?))/u.exec(text) ?? [];
  const value = above === undefined ? Number(plain) : Number(whole) + Number(above) / Number(below);
  return sign ? -value : value;
}

const PER: Readonly<Record<string, readonly [per: number, zero: number]>> = {
  '°F': [1 / 1.8, -32 / 1.8],
  ft: [0.3048, 0],
  'sq ft': [0.09290304, 0],
  'cu ft': [0.028316846592, 0],
  qt: [0.946352946, 0],
  'fl oz': [0.0295735295625, 0],
  gal: [3.785411784, 0],
  lb: [0.45359237, 0],
  cfm: [0.4719474432, 0],
};

/** What a text tells, in the metric unit that stood in the sentence. */
function metricIn(text: string): number {
  const unit = Object.keys(PER).find((one) => new RegExp(`\\d\\u00a0${one}( \\(|$)`).test(text));
  const [per, zero] = PER[unit ?? ''] ?? [1, 0];
  return figureIn(text) * per + zero;
}

describe('a limit', () => {
  const LIMITED: readonly Unit[] = ['°C', 'L', 'm²', 'm³', 'kg', 'm', 'L/s'];
  const cases = fc.tuple(
    fc.constantFrom(...LIMITED),
    fc.double({ min: 0.05, max: 300, noNaN: true }),
    fc.integer({ min: 0, max: 2 }),
  );
  const slack = (value: number): number => 1e-6 * (60 + Math.abs(value));

  it.each([
    ['US', f],
    ['metric', metric],
  ] as const)('is rounded to its safe side: %s', (_, format) => {
    const told = (value: number, unit: Unit, decimals: number, toward: Rounding): number =>
      metricIn(format.measure(value, unit, decimals, toward));
    fc.assert(
      fc.property(cases, ([unit, value, decimals]) => {
        expect(told(value, unit, decimals, 'down')).toBeLessThanOrEqual(value + slack(value));
        expect(told(value, unit, decimals, 'up')).toBeGreaterThanOrEqual(value - slack(value));
      }),
      { numRuns: 1000 },
    );
  });

  it('of a fill is never passed, by either mark', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 25, noNaN: true }), (litres) => {
        const [, inLitres = ''] = /\((.*)\u00a0L\)/u.exec(f.fill(litres)) ?? [];
        expect(Number(inLitres)).toBeLessThanOrEqual(litres + slack(litres));
        expect(metricIn(f.fill(litres))).toBeLessThanOrEqual(litres + slack(litres));
        expect(Number.parseFloat(metric.fill(litres))).toBeLessThanOrEqual(litres + slack(litres));
      }),
    );
  });
});
