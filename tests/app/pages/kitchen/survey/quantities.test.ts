import { describe, expect, it } from 'vitest';
import { followUnits } from '../../../../../src/app/context/units.ts';
import {
  quantity,
  readQuantity,
} from '../../../../../src/app/pages/kitchen/survey/inputs/quantities.ts';
import { customarySizes } from '../../../../../src/core/messages/customary/index.ts';
import { englishTraits } from '../../../../../src/core/messages/english/traits.ts';
import { inEnglish, inEnglishWith } from '../../../../support/english.ts';
import { translatorOf } from '../../../../support/translators.ts';

const { say } = inEnglish;
const inFeet = inEnglishWith(customarySizes(inEnglish.format, englishTraits));

const SIDE = { least: 0.05, most: 20 };

followUnits(() => 'metric');

/** What is done while the household reads US units. */
function inUS<T>(work: () => T): T {
  const back = followUnits(() => 'us-customary');
  try {
    return work();
  } finally {
    back();
  }
}

function metres(text: string, allowed = SIDE, speech = inEnglish): number | string {
  const typed = readQuantity('length', text, allowed, speech);
  return 'value' in typed ? typed.value : say(typed.problem);
}

describe('a household that reads US units', () => {
  it('is shown lengths as on a tape, and a bare number is inches', () => {
    inUS(() => {
      expect(inFeet.say(quantity('length', 0.762))).toBe('30\u00a0in');
      expect(inFeet.say(quantity('length', 0.64))).toBe('25\u00a03/16\u00a0in');
      expect(inFeet.say(quantity('length', 2.5273))).toBe('8\u00a0ft 3\u00a01/2\u00a0in');
      expect(inFeet.say(quantity('length', 1.8288))).toBe('6\u00a0ft');
      expect(metres('30')).toBeCloseTo(0.762, 6);
      expect(metres('60 cm')).toBe(0.6);
    });
    expect(say(quantity('length', 0.762))).toBe('76.2 cm');
  });

  it('reads bare numbers in the unit that is shown', () => {
    inUS(() => {
      const value = (id: Parameters<typeof readQuantity>[0], text: string) => {
        const typed = readQuantity(id, text, { least: -500, most: 100_000 }, inFeet);
        return 'value' in typed ? typed.value : Number.NaN;
      };
      expect(inFeet.say(quantity('altitude', 2100))).toBe('6890 ft');
      expect(value('altitude', '6,890')).toBeCloseTo(2100, 0);
      expect(inFeet.say(quantity('temperature', 15))).toBe('59 °F');
      expect(value('temperature', '59')).toBeCloseTo(15, 6);
      expect(value('volume', '1.8')).toBeCloseTo(1.703, 3);
      expect(value('area', '95')).toBeCloseTo(8.826, 3);
      expect(inFeet.say(quantity('gas-power', 2637.639))).toBe('9000 BTU/h');
      expect(value('power', '1500')).toBe(1500);
    });
  });

  it('may type every limit that it is shown', () => {
    inUS(() => {
      const [, least = '', most = ''] =
        /allowed: (.*) to (.*)\.$/.exec(inFeet.say(problemOf('x'))) ?? [];
      expect([least, most]).toEqual(['2\u00a0in', '65\u00a0ft 7\u00a03/8\u00a0in']);
      for (const end of [least, most])
        expect(metres(end, SIDE, inFeet), end).toEqual(expect.any(Number));
    });
  });
});

function problemOf(text: string) {
  const typed = readQuantity('length', text, SIDE, inFeet);
  if (!('problem' in typed)) throw new Error(`${text} was taken.`);
  return typed.problem;
}

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
    [`5' 3½"`, 1.6129],
    [`5' 3 1/2"`, 1.6129],
    [`5'-3-1/2"`, 1.6129],
    ['5 ft 3 1/2 in', 1.6129],
    ['5 feet, 3.5 inches', 1.6129],
    ['5′ 3½″', 1.6129],
    [`5’ 3½”`, 1.6129],
    ['5/8 ft', 0.1905],
    ['3 7/8"', 0.0984],
    ['1 m 20 cm', 1.2],
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
    expect(metres('30 m')).toBe('30 m is not allowed here: 5 cm to 20 m. Type a value in between.');
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
    const typed = readQuantity(q, text, { least: -500, most: 100_000 }, inEnglish);
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
    const typed = readQuantity('count', '1.5', { least: 1, most: 8 }, inEnglish);
    expect('problem' in typed && say(typed.problem)).toBe('“1.5” is not whole. Allowed: 1 to 8.');
  });
});

describe('a length in another language', () => {
  it.each([
    ['he', '60 ס״מ', 0.6],
    ['he', '60 ס"מ', 0.6],
    ['he', "2.4 מ'", 2.4],
    ['he', '2.4 מטר', 2.4],
    ['he', '60 cm', 0.6],
    ['he', "3 רגל 5 אינץ'", 1.0414],
    ['he', '3 רגל ‏\u20665\u00a01/2\u2069 אינץ׳', 1.0541],
    ['fr', '3 pi 5 po', 1.0414],
    ['fr', '3 pieds 5,5 pouces', 1.0541],
    ['fr', '0,6 m', 0.6],
    ['fr', '1,20 mètre', 1.2],
    ['es', '3 pies 5 pulg', 1.0414],
    ['es', '1 pie 5 pulgadas', 0.4318],
    ['es', '60 centímetros', 0.6],
  ] as const)('%s: %s', async (tag, text, expected) => {
    expect(metres(text, SIDE, await translatorOf(tag))).toBeCloseTo(expected, 6);
  });
});
