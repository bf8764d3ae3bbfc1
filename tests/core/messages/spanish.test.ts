import { describe, expect, it } from 'vitest';
import { spanish } from '../../../src/core/messages/spanish/index.ts';
import { saidBoth } from '../../support/messages/said-both.ts';
import { translatorOf } from '../../support/translators.ts';

/** What is the same in both languages, and why. */
const SAME: readonly (readonly [keys: RegExp, why: string])[] = [
  [/note-signs$/, 'the letters of notes'],
  [/^shell\.title$|^calendar\.day\.shavuot$/, 'proper names'],
  [/^survey\.country\.(IL|AT|PT|BG|AU|AR|CL|UY|IN|HK)$/, 'countries that Spanish spells alike'],
  [/^survey\.(unit\.(qt|BTU-h|F)|typed-as\.F)$/, 'units that Spanish calls alike'],
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

const inSpanish = await translatorOf('es');
const KEYS = Object.keys(spanish);
const all = await saidBoth('es', KEYS, 'abcdefghijklmnopqrstuvwxyz');

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
    const same = all.filter((one) => one.english === one.told && /\p{L}/u.test(words(one.told)));
    const others = same.filter(({ key }) => !SAME.some(([keys]) => keys.test(key)));
    expect([...new Set(others.map(({ key }) => key))]).toEqual([]);
    const idle = SAME.filter(([keys]) => !same.some(({ key }) => keys.test(key)));
    expect(idle).toEqual([]);
  });

  it('has no English word but in titles and words of a file', () => {
    const bare = all.map((one) => ({ ...one, told: one.told.replace(KEPT, '') }));
    expect(bare.filter((one) => ENGLISH_WORD.test(one.told))).toEqual([]);
  });

  it('tells every name and sentence that English tells', () => {
    const NAME = /‹..›/gu;
    expect(all.filter((one) => found(one.english, NAME) !== found(one.told, NAME))).toEqual([]);
    expect(all.filter((one) => one.english.includes('‹')).length).toBeGreaterThan(1000);
  });

  it('tells every number that English tells', () => {
    expect(all.filter((one) => numbers(one.english) !== numbers(one.told))).toEqual([]);
    expect(all.filter((one) => /\d/u.test(one.told)).length).toBeGreaterThan(500);
  });

  it('speaks to the person with respect, and to none by "tú"', () => {
    expect(all.filter((one) => FAMILIAR.test(one.told))).toEqual([]);
  });

  it('opens what it asks and what it calls out', () => {
    const marks = (text: string, mark: string): number => text.split(mark).length - 1;
    const odd = all.filter(
      ({ told: text }) =>
        marks(text, '¿') !== marks(text, '?') || marks(text, '¡') !== marks(text, '!'),
    );
    expect(odd).toEqual([]);
  });

  it('is tidy', () => {
    const untidy = /undefined|NaN|\[object|\s[.,;:?!)](?!\.)|\( |¿ |(?<!\.)\.\.(?!\.)|[«»’]/u;
    // Nothing is missing where both are told, and the sentence is not said then; a colon shows itself.
    const left = ['plan.notice.days-unknown', 'problems.json.colon'];
    const odd = all.filter(
      ({ key, told: text }) => !left.includes(key) && (untidy.test(text) || text.trim() === ''),
    );
    expect(odd).toEqual([]);
  });
});
