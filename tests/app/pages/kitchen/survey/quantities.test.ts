import { describe, expect, it } from 'vitest';
import {
  createTranslator,
  entriesOf,
  type Message,
} from '../../../../../src/core/messages/index.ts';
import {
  quantity,
  readQuantity,
  setTape,
} from '../../../../../src/app/pages/kitchen/survey/inputs/quantities.ts';
import { survey } from '../../../../../src/core/messages/hebrew/survey/index.ts';
import { hebrewTraits } from '../../../../../src/core/messages/hebrew/traits.ts';
import { inEnglish } from '../../../../support/english.ts';

const { say } = inEnglish;

const SIDE = { least: 0.05, most: 20 };

function metres(text: string, allowed = SIDE): number | string {
  const typed = readQuantity('length', text, allowed, say);
  return 'value' in typed ? typed.value : say(typed.problem);
}

describe('a tape with inches', () => {
  it('shows lengths in inches, long ones in feet, and takes a bare number as inches', () => {
    setTape('inch');
    expect(say(quantity('length', 0.762))).toBe('30 in');
    expect(say(quantity('length', 0.64))).toBe('25.2 in');
    expect(say(quantity('length', 8))).toBe('26.2 ft');
    expect(metres('30')).toBeCloseTo(0.762, 6);
    expect(metres('60 cm')).toBe(0.6);
    setTape('metric');
    expect(say(quantity('length', 0.762))).toBe('76.2 cm');
  });
});

describe('a length as people type it', () => {
  // 1 in = 25.4 mm exactly, 1 ft = 12 in (ISO 80000-3; from memory).
  it.each([
    ['60 cm', 0.6],
    ['60cm', 0.6],
    ['24 in', 0.6096],
    ['24"', 0.6096],
    ['0.6', 0.6],
    ['0,6', 0.6],
    ['.6', 0.6],
    ['60', 0.6],
    ['600 mm', 0.6],
    ['2.4 m', 2.4],
    ['2 ft', 0.6096],
    ['2 ft 6 in', 0.762],
    ['2 ft 6', 0.762],
    [`2' 6"`, 0.762],
  ])('takes %s', (text, expected) => {
    expect(metres(text)).toBeCloseTo(expected, 6);
  });

  it('takes a bare number as metres only where metres are allowed', () => {
    expect(metres('3', { least: 0, most: 0.3 })).toBe(0.03);
    expect(metres('3')).toBe(3);
  });

  it.each(['', 'wide', '60 kg', '1.2.3', '5 cm cm'])(
    'says how to write instead of “%s”',
    (text) => {
      expect(metres(text)).toMatch(/Write it like 60 cm or 24 in; allowed: 5 cm to 20 m/);
    },
  );

  it('says what is allowed when it is out of range', () => {
    expect(metres('30 m')).toBe('30 m is not allowed here: 5 cm to 20 m.');
    expect(metres('-1 m')).toMatch(/not allowed/);
  });

  it('reads back what it shows', () => {
    for (const value of [0.05, 0.6, 0.6096, 1.38, 2.999, 3.66, 12.5]) {
      const back = metres(say(quantity('length', value)));
      expect(back, say(quantity('length', value))).toBeCloseTo(value, 3);
    }
  });
});

describe('other quantities', () => {
  const value = (q: Parameters<typeof readQuantity>[0], text: string) => {
    const typed = readQuantity(q, text, { least: -500, most: 100_000 }, say);
    return 'value' in typed ? typed.value : Number.NaN;
  };
  it('knows the units of plates and manuals', () => {
    expect(value('power', '1.5 kW')).toBe(1500);
    // 1 Btu(IT)/h = 0.29307107 W (NIST SP 811, from memory).
    expect(value('power', '10000 BTU/h')).toBeCloseTo(2930.7107, 2);
    expect(value('minutes', '4 h')).toBe(240);
    expect(value('temperature', '54 °F')).toBeCloseTo(12.222, 3);
    // 1 US liquid quart = 0.946352946 L (NIST SP 811, from memory).
    expect(value('volume', '2 qt')).toBeCloseTo(1.893, 3);
    // 1 cfm = 0.4719474 L/s (NIST SP 811, from memory).
    expect(value('flow', '190 cfm')).toBeCloseTo(89.67, 2);
    expect(value('altitude', '6900 ft')).toBeCloseTo(2103.12, 2);
    expect(value('area', '95 sq ft')).toBeCloseTo(8.826, 3);
  });
  it('counts in whole numbers', () => {
    const typed = readQuantity('count', '1.5', { least: 1, most: 8 }, say);
    expect('problem' in typed && say(typed.problem)).toBe('“1.5” is not whole. Allowed: 1 to 8.');
  });
  it('are understood as the language of the page calls them', () => {
    const hebrew = ({ key }: Message) => (key === 'survey.unit.cm' ? 'ס״מ' : key);
    expect(readQuantity('length', '60 ס״מ', SIDE, hebrew)).toEqual({ value: 0.6 });
    expect(readQuantity('length', '60 ס״מ', SIDE, say)).toHaveProperty('problem');
  });
});

describe('a quantity in another language', () => {
  const { say: inHebrew } = createTranslator(hebrewTraits, entriesOf([survey]));

  it.each([
    ['length', '60 ס״מ', 0.6],
    ['length', '60 ס"מ', 0.6],
    ['length', "2.4 מ'", 2.4],
    ['area', '8.8 מ"ר', 8.8],
    ['length', '60 cm', 0.6],
  ] as const)('is taken by its own units: %s %s', (id, text, expected) => {
    expect(readQuantity(id, text, SIDE, inHebrew)).toEqual({ value: expected });
  });
});
