import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isolated, type Params, sayFenced, unfenced } from '../../../src/core/messages/index.ts';
import { sampleMaker } from '../../support/messages/sample-params.ts';
import { translatorOf } from '../../support/translators.ts';

const CONTROL = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/g;
/** Degrees as Hebrew writes them after a figure, and alone. */
const DEGREES = /°[CF]\u200F|\u2066°[CF]\u2069/g;
const FENCED = /\u2068[^\u2068\u2069]*\u2069/g;

/** Names as people may write them, and as nobody should: letters of both directions, figures, marks, signs. */
const LETTERS = [
  'Z',
  'q',
  'x',
  ' ',
  'ש',
  'ק',
  '3',
  '(',
  '-',
  'م',
  'ж',
  '$&',
  '\u202E',
  '\u2067',
  '\u2069',
  '\u200F',
];
const anyName = fc
  .array(fc.constantFrom(...LETTERS), { minLength: 3, maxLength: 12 })
  .map((parts) => `‹${parts.join('')}›`);

/** The samples tell zones, too; where one is shown it is foreign text like any other. */
const ZONES = ['UTC', 'Europe/London'];
/** English sentences go on with a name in small letters. */
const small = (text: string): string => text.toLowerCase();
const languages = { he: await translatorOf('he'), en: await translatorOf('en') };
let names: readonly string[] = ['‹›'];
const maker = sampleMaker((index) => names[index % names.length] ?? '‹›');

describe('names of another script', () => {
  it('are fenced in, whole, in any sentence, and nothing round them changes', () => {
    let fenced = 0;
    fc.assert(
      fc.property(
        fc.constantFrom('he', 'en'),
        fc.constantFrom(...maker.keys),
        fc.array(anyName, { minLength: 1, maxLength: 4 }),
        fc.nat(4),
        (tag: 'he' | 'en', key, given, variant) => {
          names = given;
          const translator = languages[tag];
          const params = maker.sample(key, variant);
          const shown = sayFenced(translator, { key, params });
          names = given.map(unfenced);
          const said = translator.say({ key, params: maker.sample(key, variant) });
          expect(unfenced(shown)).toBe(unfenced(said));
          const fences = shown.match(FENCED) ?? [];
          fenced += fences.length;
          for (const fence of fences)
            expect([...names, ...ZONES].map(small)).toContain(small(fence.slice(1, -1)));
          // What is left of marks is what the language itself writes: before a minus, and at a sign of degrees.
          const left = shown.replaceAll(DEGREES, '').replaceAll(FENCED, '').match(CONTROL) ?? [];
          expect(left.every((mark) => mark === '\u200E')).toBe(true);
        },
      ),
      { numRuns: 1000 },
    );
    expect(fenced).toBeGreaterThan(200);
  });

  it('are fenced in only where they could turn something round', () => {
    expect(isolated('Oven', 'rtl')).toBe('\u2068Oven\u2069');
    expect(isolated('תנור', 'rtl')).toBe('תנור');
    expect(isolated('תנור', 'ltr')).toBe('\u2068תנור\u2069');
    expect(isolated('Oven 2', 'ltr')).toBe('Oven 2');
    expect(isolated('O\u202Even', 'ltr')).toBe('Oven');
    expect(isolated('a\u2069b\u2068', 'rtl')).toBe('\u2068ab\u2069');
  });

  it('are not looked for inside words, units and figures', () => {
    const shown = (said: string, params: Params) =>
      sayFenced({ say: () => said, direction: 'rtl' }, { key: '', params });
    expect(shown('עד 5 C: 60°C', { name: 'C' })).toBe('עד 5 \u2068C\u2069: 60°C');
    expect(shown('Oven, Oven rack', { a: 'Oven', b: 'Oven rack' })).toBe(
      '\u2068Oven\u2069, \u2068Oven rack\u2069',
    );
  });
});

describe('figures with units in Hebrew', () => {
  const { format, say } = languages.he;
  it('keep their order: no dash stands between two of them', () => {
    expect(format.range(3, 5)).toBe('3 עד 5');
    // The mark before a minus keeps it before its figure.
    expect(format.number(-5)).toBe('\u200E-5');
    for (const key of maker.keys)
      for (const variant of [0, 3]) {
        names = ['א'];
        const told = say({ key, params: maker.sample(key, variant) });
        expect(told, key).not.toMatch(/\d ?[–−] ?\d/);
        expect(told, key).not.toMatch(/(?<!\u200E)(?<=[\s(]|^)-\d/);
      }
  });
});
