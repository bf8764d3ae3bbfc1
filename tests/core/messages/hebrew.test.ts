import { describe, expect, it } from 'vitest';
import { hebrew } from '../../../src/core/messages/hebrew/index.ts';
import { saidBoth } from '../../support/messages/said-both.ts';
import { translatorOf } from '../../support/translators.ts';

/** What is the same in both languages, and why. */
const SAME: Readonly<Record<string, string>> = {
  'shell.title': 'a proper name',
  'run.keys.repeat': 'a key of the keyboard',
  'run.keys.escape': 'a key of the keyboard',
  'sources.moritz-henriques-1947': 'a title',
  'survey.unit.BTU-h': 'a unit, as on the plate',
  'handouts.labels.paper.a4': 'a size of paper (ISO 216)',
  'handouts.labels.paper.letter': 'a size of paper (ANSI)',
};

/** Sentences whose digits differ from the English ones, and why. */
const OTHER_DIGITS: readonly (readonly [pattern: RegExp, why: string])[] = [
  [/^sources\./, 'chapters are cited in Hebrew letters'],
  [/^(plan\.notice\.no-change|custom\.(rest|inside-passover)\.why)$/, 'so are they in a sentence'],
  [/^survey\.example\./, 'inches, pints and feet are understood, not taught'],
  [/^plan\.amount\.set$/, 'one is a word'],
  [/^problems\.pair\.advice$/, 'brackets are named: from right to left they are mirrored'],
];

/** Latin letters that stand in a Hebrew sentence: a name, a unit, a standard, a key, a word of a file. */
const LATIN: readonly RegExp[] = [
  /°[CF]|BTU\/h/g,
  /Glowpour|UTC|JSON|IANA|ISO|SHA-256|kitchen\.json/g,
  /\b(Enter|Escape|Tab|Shift|Delete|Page Down|Page Up|S|R|T)\b/g,
  /"[\w/:.-]+"|(overrides|changedRows|holes)\[/g,
  /\b(true|false|comment|kind|from|to|x|y|a|z)\b|\\[ntu]/gi,
  /\b(cause|byS|sinceWallMs|actualWallMs|startS|format|version)\b/g,
];

const inHebrew = await translatorOf('he');
const KEYS = Object.keys(hebrew);
const LETTERS = 'אבגדהוזחטיכלמנסעפצקרשת';
const all = await saidBoth('he', KEYS, LETTERS);
/** Samples 3 and 4 hold no number below three, which Hebrew says in words. */
const inWholeDigits = await saidBoth('he', KEYS, LETTERS, [3, 4]);
const found = (text: string, what: RegExp): string => (text.match(what) ?? []).toSorted().join(' ');

describe('Hebrew', () => {
  it('is written from right to left', () => {
    expect(inHebrew.direction).toBe('rtl');
    expect(inHebrew.format.duration(5700)).toBe('1\u00a0שע׳ 35\u00a0דק׳');
    expect(inHebrew.format.list(['א', 'ב', 'ג'])).toBe('א, ב וג');
  });

  it('names the clock of a zone in Hebrew letters, and by its own name where there are none', () => {
    const told = (zone: string) => inHebrew.t('plan-page.begin.zone', { zone });
    expect(told('America/New_York')).toBe('לפי שעון ניו יורק');
    expect(told('Asia/Jerusalem')).toBe('לפי שעון ישראל');
    expect(told('UTC')).toBe('לפי שעון UTC');
  });

  it('leaves no sentence as it is in English', () => {
    const same = all.filter((one) => one.english === one.told && /[a-z]/i.test(one.english));
    expect([...new Set(same.map(({ key }) => key))].toSorted()).toEqual(
      Object.keys(SAME).toSorted(),
    );
  });

  it('tells every name and sentence that English tells', () => {
    // A bracket of JSON is no name: it is told in a word.
    const other = all.filter(
      (one) =>
        one.key !== 'problems.json.comma-or-bracket' &&
        found(one.english, /‹..›/gu) !== found(one.told, /‹..›/gu),
    );
    expect(other).toEqual([]);
    expect(all.filter((one) => one.english.includes('‹')).length).toBeGreaterThan(1000);
  });

  it('tells every number that English tells', () => {
    const digits = /\d+(?:[.:]\d+)*/g;
    const inDigits = inWholeDigits.filter(
      ({ key }) => !OTHER_DIGITS.some(([pattern]) => pattern.test(key)),
    );
    const other = inDigits.filter((one) => found(one.english, digits) !== found(one.told, digits));
    expect(other).toEqual([]);
    expect(inDigits.filter((one) => /\d/.test(one.told)).length).toBeGreaterThan(500);
  });

  it('has no word in Latin letters but names, units, standards and words of a file', () => {
    const bare = (text: string): string => LATIN.reduce((left, one) => left.replace(one, ''), text);
    const latin = all.filter(
      ({ key, told: text }) =>
        !key.startsWith('sources.') && !(key in SAME) && /[a-z]/i.test(bare(text)),
    );
    expect(latin).toEqual([]);
  });

  it('is tidy', () => {
    const untidy =
      /undefined|NaN|\[object|\s[.,;:?!)](?!\.)|\( |(?<!\.)\.\.(?!\.)|־־|[\u200E\u200F\u202A-\u202E\u2066-\u2069]/;
    // A negative number brings its own mark of direction, and no sample is negative.
    // After a Latin letter of degrees one mark keeps the line in order, and a sign alone is held together.
    const unmarked = (text: string): string =>
      text.replaceAll(/(°[CF])\u200F/g, '$1').replaceAll(/\u2066(°[CF])\u2069/g, '$1');
    // Nothing is missing where both are told: the sentence is not said then.
    const unsaid = 'plan.notice.days-unknown';
    const odd = all.filter(
      ({ key, told: text }) =>
        key !== unsaid && (untidy.test(unmarked(text)) || text.trim() === ''),
    );
    expect(odd).toEqual([]);
  });
});
