import { describe, expect, it } from 'vitest';
import { french } from '../../../src/core/messages/french/index.ts';
import { saidBoth } from '../../support/messages/said-both.ts';
import { translatorOf } from '../../support/translators.ts';

/** What is the same in both languages, and why. */
const SAME: readonly (readonly [keys: RegExp, why: string])[] = [
  [/note-signs$/, 'the letters of notes'],
  [/^shell\.title$/, 'a proper name'],
  [/^survey\.country\.(CA|PA|FR|LU|PT|UA|UY|HK)$/, 'countries that French spells alike'],
  [/^run\.keys\.repeat$/, 'a key of the keyboard'],
  [
    /^(record-page|handouts\.labels)\.?.*\b(letter|mark)\./,
    'single letters with a key beside them',
  ],
  [/^plan-page\.curve$|^common\.signal\.DANGER$|^plan\.chart\.room\.danger$/, 'danger is danger'],
  [/^shell\.page\.plan$|^(run|rehearse)\.pause$|^report\.section\.notes$/, 'the same word'],
  [/(table|silicone|aluminium|induction)(\.name)?$/, 'the same word'],
  [/^custom\.way\.burner-fire\.answer-\d$|\.way\.minutes$/, 'minutes'],
  [/^survey\.(unit\.(qt|BTU-h|F)|typed-as\.(gal|W|V|F))$/, 'units that French calls alike'],
  [/^survey\.opening\.passage$/, 'the same word'],
  [/(altitude|circuits?|cycle|questions\.region|utensil\.condition)$/, 'the same word'],
];

/** Words that only English has. */
const ENGLISH_WORD =
  /(?<!\p{L})(the|and|of|with|your|you|is|are|was|were|it|to|from|by|at|this|that|be|an|has|have|each|after|before|water|kettles?|burners?|steps?|runs?|rests?|rested|clean|purged?)(?!\p{L})/iu;

/** What stays as it was published or as it is written in a file. */
const KEPT =
  /First Aid for Burns|Studies of thermal injury II|American Journal of Pathology|Materials Science and Engineering|First aid|"[\w-]+"|\[from, to\]/gu;

const inFrench = await translatorOf('fr');
const KEYS = Object.keys(french);
const all = await saidBoth('fr', KEYS, 'abcdefghijklmnopqrstuvwxyz');

const found = (text: string, what: RegExp): string =>
  [...new Set(text.match(what) ?? [])].toSorted().join(' ');
/** Numbers as English writes them; a decimal comma stands between two digits. */
const numbers = (text: string): string =>
  found(text.replace(/(\d),(\d)/gu, '$1.$2'), /\d+(?:[.:]\d+)*/gu);
/** Words of a sentence, without what is filled in and without units. */
const words = (text: string): string =>
  text.replace(/‹..›/gu, '').replace(/(?<!\p{L})(h|min|s|L|A|W|V|m|cm|C|mg)(?!\p{L})/gu, '');

describe('French', () => {
  it('writes numbers, times and lists its own way', () => {
    expect(inFrench.format.duration(5700)).toBe('1\u00A0h 35\u00A0min');
    expect(inFrench.format.number(1.5, 1)).toBe('1,5');
    expect(inFrench.format.list(['a', 'b', 'c'])).toBe('a, b et c');
    expect(inFrench.format.moment(Date.UTC(2026, 2, 29, 18, 5), 'UTC')).toBe(
      'dimanche 29 mars 18:05',
    );
  });

  it('leaves no sentence as it is in English', () => {
    const same = all.filter((one) => one.english === one.told && /\p{L}/u.test(words(one.told)));
    const others = same.filter(({ key }) => !SAME.some(([keys]) => keys.test(key)));
    expect(others.map(({ key }) => key)).toEqual([]);
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
    const other = all.filter((one) => numbers(one.english) !== numbers(one.told));
    expect(other).toEqual([]);
    expect(all.filter((one) => /\d/u.test(one.told)).length).toBeGreaterThan(500);
  });

  it('keeps the spaces of French typography', () => {
    const narrow =
      /[^\u202F][;»]|[^\u202F!?][!?]|«(?!\u202F)|[^\u202F\d\p{L}"]:(?=\s|$)|[ \u00A0][;:!?»]| %/u;
    const unit = /\d (?:L|h|min|s|A|V|W|kW|kWh|cm|mm|m|m²|m³|kg|°C|K)(?![\p{L}/])/u;
    const letter = /\p{L}:(?=\s|$)/u;
    const odd = all.filter(({ told: text }) =>
      [narrow, unit, letter, /['“”]/u].some((one) => one.test(text)),
    );
    expect(odd).toEqual([]);
  });

  it('is tidy', () => {
    // The face of the pages draws a capital c with cedilla as a bare C.
    const untidy = /undefined|NaN|\[object|\s[.,)](?!\.)|\( |(?<!\.)\.\.(?!\.)|Ç/u;
    // Nothing is missing where both are told: the sentence is not said then.
    const unsaid = 'plan.notice.days-unknown';
    const odd = all.filter(
      ({ key, told: text }) => key !== unsaid && (untidy.test(text) || text.trim() === ''),
    );
    expect(odd).toEqual([]);
  });
});
