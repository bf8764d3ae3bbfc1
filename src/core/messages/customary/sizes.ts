import {
  CUBIC_FOOT_L,
  FAHRENHEIT_C,
  FAHRENHEIT_ZERO_C,
  FLUID_OUNCE_L,
  FOOT_M,
  GALLON_L,
  INCH_M,
  onTape,
  POUND_KG,
  QUART_L,
} from '../../units/index.ts';
import type { Formatter, Rounding, SizeFormatter, Unit } from '../model/message.ts';
import type { LanguageTraits } from '../model/traits.ts';
import { CUSTOMARY_WORDS, type CustomaryUnit, type CustomaryWords } from './words.ts';

/** One unit a size can be told in. */
type Told = {
  readonly unit: CustomaryUnit;
  /** Metric value = figure × per + zero. */
  readonly per: number;
  readonly zero?: number;
  /** From this figure on, in whole ones; below it with one decimal. */
  readonly wholeFrom: number;
};

const QUARTS: Told = { unit: 'qt', per: QUART_L, wholeFrom: 10 };
const GALLONS: Told = { unit: 'gal', per: GALLON_L, wholeFrom: 10 };
const OUNCES: Told = { unit: 'fl-oz', per: FLUID_OUNCE_L, wholeFrom: 0 };
/** Pots and kettles are sold in quarts up to here, what a job takes is told in gallons, qt. */
const GALLONS_FROM_QT = 24;
/** Less than a cup is told in fluid ounces, qt. */
const OUNCES_BELOW_QT = 1 / 4;

const TOLD: Readonly<Record<Exclude<Unit, 'L'>, Told>> = {
  m: { unit: 'ft', per: FOOT_M, wholeFrom: 10 },
  cm: { unit: 'in', per: INCH_M * 100, wholeFrom: 1 },
  'm²': { unit: 'sq-ft', per: FOOT_M ** 2, wholeFrom: 10 },
  'cm²': { unit: 'sq-in', per: (INCH_M * 100) ** 2, wholeFrom: 1 },
  'm³': { unit: 'cu-ft', per: FOOT_M ** 3, wholeFrom: 0 },
  'L/s': { unit: 'cfm', per: CUBIC_FOOT_L / 60, wholeFrom: 0 },
  '°C': { unit: '°F', per: FAHRENHEIT_C, zero: FAHRENHEIT_ZERO_C, wholeFrom: -Infinity },
  K: { unit: '°F', per: FAHRENHEIT_C, wholeFrom: 5 },
  kg: { unit: 'lb', per: POUND_KG, wholeFrom: 10 },
};

function toldOf(value: number, unit: Unit): Told {
  if (unit !== 'L') return TOLD[unit];
  if (value >= GALLONS_FROM_QT * QUART_L) return GALLONS;
  return value > 0 && value < OUNCES_BELOW_QT * QUART_L ? OUNCES : QUARTS;
}

const figureOf = (value: number, { per, zero = 0 }: Told): number => (value - zero) / per;

const decimalsOf = (figure: number, { wholeFrom }: Told): number =>
  Math.abs(figure) < wholeFrom ? 1 : 0;

/** Parts of an inch to which a length is told by its decimals in metres: cuts, and what is measured. */
const EIGHTHS = 8;
const SIXTEENTHS = 16;
/** Marks of a kettle are told to this part of a quart. */
const QUART_PARTS = 8;
/** Sums of binary fractions end a hair short of the part they mean. */
const HAIR = 1e-6;

/** A whole and eighths in lowest terms, rounded down. */
function eighths(figure: number): readonly [whole: number, parts: number, of: number] {
  const all = Math.floor(figure * QUART_PARTS + HAIR);
  let [parts, of] = [all % QUART_PARTS, QUART_PARTS];
  while (parts > 0 && parts % 2 === 0) [parts, of] = [parts / 2, of / 2];
  return [Math.floor(all / QUART_PARTS), parts, of];
}

/** Metres for the eye of a shop are rounded from its feet: so much is no size less. */
const TRADE_SHARE = 1e-3;

/** As shops tell it, rounded up: in half inches, what is long in whole feet. */
function asBought(metres: number): number {
  const step = metres < FOOT_M * TOLD.m.wholeFrom ? INCH_M / 2 : FOOT_M;
  return Math.ceil((metres * (1 - TRADE_SHARE)) / step) * step;
}

function tapeText(
  metres: number,
  finest: number,
  number: (value: number) => string,
  words: CustomaryWords,
): string {
  const { feet, inches, parts, of } = onTape(Math.abs(metres), finest);
  const part = parts > 0 ? `${parts}/${of}` : undefined;
  const whole = inches > 0 || part === undefined ? number(inches) : undefined;
  const told = [
    ...(feet > 0 ? [words.measure(number(feet), 'ft')] : []),
    ...(feet > 0 && inches === 0 && part === undefined
      ? []
      : [words.measure(part === undefined ? number(inches) : words.fraction(whole, part), 'in')]),
  ].join(' ');
  return metres < 0 ? `−${told}` : told;
}

/**
 * Sizes in US customary units, as a household reads them off its tape, kettle
 * and thermometer: a formatter with these in place of its own.
 */
export function customarySizes(
  { number, shortNumber }: Formatter,
  { language, words: { rangeTo, measure: metric } }: LanguageTraits,
): SizeFormatter {
  const words = CUSTOMARY_WORDS[language] ?? CUSTOMARY_WORDS['en'];
  if (!words) throw new RangeError(`No words for US units in ${language}.`);
  const figureText = (value: number, told: Told, isShort: boolean, toward?: Rounding): string => {
    const figure = figureOf(value, told);
    const decimals = decimalsOf(figure, told);
    return (isShort ? shortNumber : number)(figure, decimals, toward).replace('-', '−');
  };
  const measure = (value: number, unit: Unit, isShort: boolean, toward?: Rounding): string => {
    const told = toldOf(value, unit);
    return words.measure(figureText(value, told, isShort, toward), told.unit);
  };
  /** In eighths, rounded down. */
  const eighthsText = (figure: number): string => {
    const [whole, parts, of] = eighths(figure);
    if (parts === 0) return number(whole);
    return words.fraction(whole > 0 ? number(whole) : undefined, `${parts}/${of}`);
  };
  return {
    measure: (value, unit, _decimals, toward) => measure(value, unit, false, toward),
    shortMeasure: (value, unit, _decimals, toward) => measure(value, unit, true, toward),
    measureRange(low, high, unit) {
      const told = toldOf(high, unit);
      // Both ends as fine as the larger one.
      const decimals = decimalsOf(figureOf(high, told), told);
      const [a, b] = [
        number(figureOf(low, told), decimals),
        number(figureOf(high, told), decimals),
      ];
      return words.measure(a === b ? a : rangeTo(a, b), told.unit);
    },
    first: (value, unit, _decimals, toward) =>
      figureText(value, toldOf(value, unit), false, toward),
    tape: (metres, { decimals = 2, isShort, isBought } = {}) =>
      tapeText(
        isBought ? asBought(metres) : metres,
        decimals > 2 && !isShort ? SIXTEENTHS : EIGHTHS,
        number,
        words,
      ),
    fill(litres, byOneMark = false) {
      const told = toldOf(litres, 'L');
      const own =
        told === QUARTS
          ? words.measure(eighthsText(figureOf(litres, told)), 'qt')
          : measure(litres, 'L', true, 'down');
      return byOneMark ? own : `${own} (${metric(shortNumber(litres, 1, 'down'), 'L')})`;
    },
    figure: (value, unit) => figureOf(value, toldOf(value, unit)),
    unitName: (unit) => words.measure('', toldOf(1, unit).unit),
  };
}
