import { describe, expect, it } from 'vitest';
import { english } from '../../../src/core/messages/english/index.ts';
import { createTranslator, entriesOf } from '../../../src/core/messages/index.ts';
import { spanish as sentences } from '../../../src/core/messages/languages/spanish.ts';
import { spanishTraits } from '../../../src/core/messages/spanish/traits.ts';
import { spanish } from '../../../src/core/messages/spanish/index.ts';
import { inEnglish } from '../../support/english.ts';
import { sampleMaker } from '../../support/messages/sample-params.ts';

/** What is the same in both languages, and why. */
const SAME: readonly (readonly [keys: RegExp, why: string])[] = [
  [/^shell\.title$|^calendar\.day\.shavuot$/, 'proper names'],
  [/^survey\.country\.(IL|AT|PT|BG|AU|AR|CL|UY|IN|HK)$/, 'countries that Spanish spells alike'],
  [/^survey\.unit\.(in|ft)$/, 'symbols of units, as the fields read them'],
  [/^run\.keys\.(repeat|escape)$/, 'keys of the keyboard'],
  [/^record-page\.letter\.|^handouts\.labels\.letter\./, 'letters with their key beside them'],
  [/^sources\.moritz-henriques-1947$/, 'a title'],
  [/^custom\.term\.irui$/, 'a word of Hebrew'],
  [/\.burner\.gas-wok$|^survey\.heat\.gas$/, 'words of both languages'],
  [/^shell\.page\.plan$|^report\.assumed\.material$|^survey\.surface\.metal$/, 'the same word'],
  [/^run\.action\.no$|^survey\.no$|^kitchen\.custom\.way\.cover\.no$/, 'no is no'],
];

/** Words that only English has. */
const ENGLISH_WORD =
  /(?<!\p{L})(the|and|of|with|your|you|is|are|was|were|it|to|from|by|at|this|that|be|an|each|after|before|water|kettles?|burners?|steps?|runs?|rests?|rested|clean|purged?)(?!\p{L})/iu;

/** What stays as it was published or as it is written in a file. */
const KEPT =
  /First Aid for Burns|Studies of thermal injury II|American Journal of Pathology|Materials Science and Engineering|First aid|Environmental Science & Technology|"[\w-]+"/gu;

/** A person is spoken to with respect: "usted", never "tú" or "vosotros". */
const FAMILIAR = /(?<!\p{L})(tú|tu|tus|te|ti|contigo|vosotr[oa]s|vuestr[oa]s?|os)(?!\p{L})/iu;

const inSpanish = createTranslator(spanishTraits, entriesOf([spanish]));
const KEYS = Object.keys(spanish);
/** Names as a household may write them, each another one. */
const names = [...'abcdefghijklmnopqrstuvwxyz'].map((letter) => `‹${letter}${letter}›`);
const maker = sampleMaker((index) => names[index % names.length] ?? '‹›');
const filled = new Set(maker.keys);
const VARIANTS = [0, 1, 2, 3, 4];

type Said = { readonly key: string; readonly english: string; readonly spanish: string };

const all: readonly Said[] = KEYS.flatMap((key) =>
  (filled.has(key) ? VARIANTS : [0]).map((variant) => {
    const params = filled.has(key) ? maker.sample(key, variant) : {};
    return {
      key,
      english: inEnglish.say({ key, params }),
      spanish: inSpanish.say({ key, params }),
    };
  }),
);

const found = (text: string, what: RegExp): string =>
  [...new Set(text.match(what) ?? [])].toSorted().join(' ');
/** Numbers as English writes them; a decimal comma stands between two digits. */
const numbers = (text: string): string =>
  found(text.replace(/(\d),(\d)/gu, '$1.$2'), /\d+(?:[.:]\d+)*/gu);
/** Words of a sentence, without what is filled in and without units. */
const words = (text: string): string =>
  text
    .replace(/‹..›/gu, '')
    .replace(/(?<!\p{L})(h|min|s|L|A|W|kWh|V|m|cm|C|mg|T|x|y)(?!\p{L})/gu, '');

describe('Spanish', () => {
  it('has every sentence that a page shows, once', async () => {
    const { first, sections } = sentences;
    const parts = await Promise.all([first(), ...Object.values(sections).map((load) => load())]);
    const shown = Object.keys(english).filter((key) => !key.startsWith('terminal.'));
    expect(parts.flatMap((part) => Object.keys(part)).toSorted()).toEqual(shown.toSorted());
    expect(KEYS.toSorted()).toEqual(shown.toSorted());
  });

  it('writes numbers, times and lists its own way', () => {
    expect(inSpanish.format.duration(5700)).toBe('1 h 35 min');
    expect(inSpanish.format.about(540)).toBe('aprox. 9 min');
    expect(inSpanish.format.number(1.5, 1)).toBe('1,5');
    expect(inSpanish.format.list(['a', 'b', 'c'])).toBe('a, b y c');
    expect(inSpanish.format.moment(Date.UTC(2026, 2, 29, 18, 5), 'UTC')).toBe(
      'domingo, 29 de marzo 18:05',
    );
  });

  it('leaves no sentence as it is in English', () => {
    const same = all.filter(
      (one) => one.english === one.spanish && /\p{L}/u.test(words(one.spanish)),
    );
    const others = same.filter(({ key }) => !SAME.some(([keys]) => keys.test(key)));
    expect([...new Set(others.map(({ key }) => key))]).toEqual([]);
    const idle = SAME.filter(([keys]) => !same.some(({ key }) => keys.test(key)));
    expect(idle).toEqual([]);
  });

  it('has no English word but in titles and words of a file', () => {
    const bare = all.map((one) => ({ ...one, spanish: one.spanish.replace(KEPT, '') }));
    expect(bare.filter((one) => ENGLISH_WORD.test(one.spanish))).toEqual([]);
  });

  it('tells every name and sentence that English tells', () => {
    const NAME = /‹..›/gu;
    expect(all.filter((one) => found(one.english, NAME) !== found(one.spanish, NAME))).toEqual([]);
    expect(all.filter((one) => one.english.includes('‹')).length).toBeGreaterThan(1000);
  });

  it('tells every number that English tells', () => {
    expect(all.filter((one) => numbers(one.english) !== numbers(one.spanish))).toEqual([]);
    expect(all.filter((one) => /\d/u.test(one.spanish)).length).toBeGreaterThan(500);
  });

  it('speaks to the person with respect, and to none by "tú"', () => {
    expect(all.filter((one) => FAMILIAR.test(one.spanish))).toEqual([]);
  });

  it('opens what it asks and what it calls out', () => {
    const marks = (text: string, mark: string): number => text.split(mark).length - 1;
    const odd = all.filter(
      ({ spanish: text }) =>
        marks(text, '¿') !== marks(text, '?') || marks(text, '¡') !== marks(text, '!'),
    );
    expect(odd).toEqual([]);
  });

  it('is tidy', () => {
    const untidy = /undefined|NaN|\[object|\s[.,;:?!)](?!\.)|\( |¿ |(?<!\.)\.\.(?!\.)|[«»’]/u;
    // Nothing is missing where both are told, and the sentence is not said then; a colon shows itself.
    const left = ['plan.notice.days-unknown', 'problems.json.colon'];
    const odd = all.filter(
      ({ key, spanish: text }) => !left.includes(key) && (untidy.test(text) || text.trim() === ''),
    );
    expect(odd).toEqual([]);
  });
});
