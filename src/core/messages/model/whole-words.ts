import type { Formatter, PluralForms } from './message.ts';

/** How a language says aloud what it writes with signs. */
export type SpokenSigns = {
  /** Forms by the sign of a unit; `#` stands for the number. */
  readonly units: Readonly<Record<string, PluralForms>>;
  /** Abbreviations and signs that stand by themselves. */
  readonly words: Readonly<Record<string, string>>;
  /** Between the ends of a range. */
  readonly to: string;
};

/** Fractions as one sign, that decimals say. */
const FRACTIONS: Readonly<Record<string, number>> = { '¼': 0.25, '½': 0.5, '¾': 0.75 };

const longestFirst = (signs: readonly string[]): string =>
  signs
    .toSorted((a, b) => b.length - a.length)
    .map((sign) => sign.replaceAll(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`))
    .join('|');

/**
 * A sentence as it is said aloud: "9 min" is "9 minutes", "3–4 L" is "3 to 4
 * litres", "1½" is "1.5". A voice would spell the signs, or take them for words.
 */
export function wholeWords(text: string, f: Formatter, { units, words, to }: SpokenSigns): string {
  const unit = new RegExp(
    `(\\d+(?:[.,]\\d+)?)[\\s]?(${longestFirst(Object.keys(units))})(?![\\p{L}\\p{N}²³/׳״])`,
    'gu',
  );
  const word = new RegExp(
    `(?<![\\p{L}\\p{N}])(${longestFirst(Object.keys(words))})(?![\\p{L}\\p{N}])`,
    'gu',
  );
  return text
    .replaceAll(/(\d+)\s?([¼½¾])/g, (_, whole: string, sign: string) =>
      f.shortNumber(Number(whole) + (FRACTIONS[sign] ?? 0), 2),
    )
    .replaceAll(/(?<=\d)\s?[–—]\s?(?=\d)/g, ` ${to} `)
    .replaceAll(unit, (_, number: string, sign: string) => {
      const forms = units[sign] ?? { other: `# ${sign}` };
      return f.plural(Number(number.replace(',', '.')), forms).replace('#', number);
    })
    .replaceAll(word, (sign) => words[sign] ?? sign);
}
