import type { Translator } from '../../../../../core/messages/index.ts';

/** The language of the page: what it calls units, and what stands before decimals in it. */
export type Speech = Pick<Translator, 'say' | 'format'>;

/** A number with what is written after it: a unit, or nothing. */
export type NumberAndUnit = { readonly value: number; readonly unit: string };

/** Marks of direction, which come with numbers copied out of a text from right to left. */
const DIRECTION_MARKS = /[\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu;
const ONE_SIGN_FRACTION = /[\u00BC-\u00BE\u2150-\u215E]/gu;

/** Small letters, plain quotes for primes and marks of abbreviation (geresh, gershayim), "3 1/2" for "3½", "m2" for "m²". */
export function plainTyped(text: string): string {
  return text
    .replace(DIRECTION_MARKS, '')
    .replace(ONE_SIGN_FRACTION, (sign) => ` ${sign.normalize('NFKC').replace('\u2044', '/')}`)
    .replace(/[׳′’‘`]/gu, "'")
    .replace(/[״″”“]|''/gu, '"')
    .replace(/[\s\u00A0\u202F]+/gu, ' ')
    .replace(/²/gu, '2')
    .replace(/³/gu, '3')
    .replace(/−/gu, '-')
    .trim()
    .toLowerCase();
}

/** A comma before decimals as a point. In a language that writes a point, "6,900" is six thousand nine hundred. */
function withPoints(text: string, { format }: Speech): string {
  const grouped = format.number(0.5, 1).includes(',')
    ? text
    : text.replace(/\b[1-9]\d{0,2}(?:,\d{3})+(?![\d,.])/gu, (whole) => whole.replaceAll(',', ''));
  return grouped.replace(/(\d),(\d)/gu, '$1.$2');
}

const NUMBER = String.raw`\d+[ -]\d+\/\d+|\d+\/\d+|\d*\.?\d+`;
const ONE = new RegExp(String.raw`^([+-]?)(${NUMBER}) ?(.*)$`, 'u');
// not shown: a pattern
const TWO = new RegExp(String.raw`^(${NUMBER}) ?(\D+?)[ ,-]*(${NUMBER}) ?(\D*)$`, 'u');

/** "3", "3.5", "7/8", "3 7/8", "3-7/8". */
function numberOf(text: string): number {
  const [, whole = '0', above, below] = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/u.exec(text) ?? [];
  return above === undefined || below === undefined
    ? Number(text)
    : Number(whole) + Number(above) / Number(below);
}

/** One number and its unit; undefined where no number stands first. */
export function oneNumber(plain: string, speech: Speech): NumberAndUnit | undefined {
  const [, sign, number, unit = ''] = ONE.exec(withPoints(plain, speech)) ?? [];
  if (number === undefined) return undefined;
  return { value: numberOf(number) * (sign === '-' ? -1 : 1), unit };
}

/** Two numbers, each with its unit: "5 ft 3 1/2 in"; the second may be bare. */
export function twoNumbers(
  plain: string,
  speech: Speech,
): readonly [NumberAndUnit, NumberAndUnit] | undefined {
  const found = TWO.exec(withPoints(plain, speech));
  if (!found) return undefined;
  const [, first = '', unit = '', second = '', last = ''] = found;
  return [
    { value: numberOf(first), unit: unit.trim() },
    { value: numberOf(second), unit: last.trim() },
  ];
}
