import { createSignal } from 'solid-js';
import type { Range } from '../../../../../core/kitchen/index.ts';
import { message, type Message } from '../../../../../core/messages/index.ts';

/**
 * Numbers as people type them: "60 cm", "24 in", "2 ft 6", "0,6". Each
 * quantity has the unit the kitchen file counts in, and the units a tape, a
 * rating plate or a manual may give.
 */
export type QuantityId =
  | 'length'
  | 'altitude'
  | 'volume'
  | 'power'
  | 'current'
  | 'voltage'
  | 'minutes'
  | 'flow'
  | 'area'
  | 'temperature'
  | 'count';

/** Units that are shown; each is called in the language of the page. */
type ShownUnit = 'm' | 'cm' | 'in' | 'ft' | 'L' | 'W' | 'A' | 'V' | 'min' | 'L-s' | 'm2' | 'C';

type Unit = {
  /** How it may be written besides what the language of the page calls it, in small letters. */
  readonly written: readonly string[];
  readonly shown?: ShownUnit;
  /** SI value = typed × per + zero. */
  readonly per: number;
  readonly zero?: number;
};

// Inch, foot: 25.4 mm exactly (ISO 80000-3). US quart 0.946352946 L, fluid ounce 1/32 of it;
// imperial pint 0.56826125 L (UK Weights and Measures Act). Btu(IT) 1055.05585262 J (ISO 80000-5).
const INCH_M = 0.0254;
const FOOT_M = 12 * INCH_M;
const QUART_L = 0.946352946;
const PINT_UK_L = 0.56826125;
const BTU_H_W = 1055.05585262 / 3600;
const CUBIC_FOOT_L = FOOT_M ** 3 * 1000;
const FAHRENHEIT_ZERO_C = -32 / 1.8;

/** The first unit of each is the one of the kitchen file. */
const UNITS: Readonly<Record<QuantityId, readonly Unit[]>> = {
  length: [
    { written: ['m', 'metre', 'metres', 'meter', 'meters'], shown: 'm', per: 1 },
    { written: ['cm'], shown: 'cm', per: 0.01 },
    { written: ['mm'], per: 0.001 },
    { written: ['in', 'inch', 'inches', '"', '″', '”'], shown: 'in', per: INCH_M },
    { written: ['ft', 'foot', 'feet', "'", '′', '’'], shown: 'ft', per: FOOT_M },
  ],
  altitude: [
    { written: ['m', 'metres', 'meters'], shown: 'm', per: 1 },
    { written: ['ft', 'feet'], per: FOOT_M },
  ],
  volume: [
    { written: ['l', 'litre', 'litres', 'liter', 'liters'], shown: 'L', per: 1 },
    { written: ['ml'], per: 0.001 },
    { written: ['qt', 'quart', 'quarts'], per: QUART_L },
    // not shown: read, never written
    { written: ['fl oz', 'oz'], per: QUART_L / 32 },
    { written: ['pt', 'pint', 'pints'], per: PINT_UK_L },
  ],
  power: [
    { written: ['w', 'watt', 'watts'], shown: 'W', per: 1 },
    { written: ['kw'], per: 1000 },
    { written: ['btu/h', 'btu', 'btuh'], per: BTU_H_W },
  ],
  current: [{ written: ['a', 'amp', 'amps'], shown: 'A', per: 1 }],
  voltage: [{ written: ['v', 'volt', 'volts'], shown: 'V', per: 1 }],
  minutes: [
    { written: ['min', 'minutes', 'mins'], shown: 'min', per: 1 },
    { written: ['h', 'hours', 'hour', 'hr', 'hrs'], per: 60 },
  ],
  flow: [
    { written: ['l/s'], shown: 'L-s', per: 1 },
    { written: ['m³/h', 'm3/h'], per: 1000 / 3600 },
    { written: ['cfm'], per: CUBIC_FOOT_L / 60 },
  ],
  area: [
    // not shown: read, never written
    { written: ['m²', 'm2', 'sqm', 'sq m'], shown: 'm2', per: 1 },
    // not shown: read, never written
    { written: ['ft²', 'ft2', 'sq ft', 'sqft'], per: FOOT_M ** 2 },
  ],
  temperature: [
    { written: ['°c', 'c'], shown: 'C', per: 1 },
    { written: ['°f', 'f'], per: 1 / 1.8, zero: FAHRENHEIT_ZERO_C },
  ],
  count: [],
};

/** Lengths below this are read best in centimetres, m. */
const CENTIMETRES_BELOW_M = 3;
/** And below this in inches, m: as far as cabinets are told so. */
const INCHES_BELOW_M = 144 * INCH_M;
const SIGNIFICANT_DIGITS = 4;

type Say = (message: Message) => string;
export type Typed = { readonly value: number } | { readonly problem: Message };

function unitName(unit: ShownUnit): Message {
  return message(`survey.unit.${unit}`);
}

function withUnit(value: number, unit: ShownUnit): Message {
  return message('survey.quantity', { value, unit: unitName(unit) });
}

const [tape, setTape] = createSignal<'inch' | 'metric'>('metric');

/** By which tape the household measures: lengths are shown in its units from now on; typed they may be in any. */
export { setTape };

function length(metres: number): Message {
  const tenth = (value: number) => Math.round(value * 10) / 10;
  if (tape() === 'inch')
    return Math.abs(metres) < INCHES_BELOW_M
      ? withUnit(tenth(metres / INCH_M), 'in')
      : withUnit(tenth(metres / FOOT_M), 'ft');
  return Math.abs(metres) < CENTIMETRES_BELOW_M
    ? withUnit(tenth(metres * 100), 'cm')
    : withUnit(Number(metres.toPrecision(SIGNIFICANT_DIGITS)), 'm');
}

/** The value in the unit people read best. */
export function quantity(id: QuantityId, value: number): Message {
  if (id === 'length') return length(value);
  const rounded = Number(value.toPrecision(SIGNIFICANT_DIGITS));
  const unit = UNITS[id][0]?.shown;
  return unit === undefined
    ? message('survey.quantity.count', { value: rounded })
    : withUnit(rounded, unit);
}

/** The marks of abbreviation that few keyboards have (geresh, gershayim) as the quotes that stand for them. */
function asTyped(word: string): string {
  return word.trim().toLowerCase().replaceAll('׳', "'").replaceAll('״', '"');
}

function unitOf(id: QuantityId, word: string, say: Say): Unit | undefined {
  const asked = asTyped(word);
  return UNITS[id].find(
    ({ written, shown }) =>
      written.includes(asked) || (shown !== undefined && asTyped(say(unitName(shown))) === asked),
  );
}

/**
 * A length typed bare is metres where that is allowed, else centimetres: "0.6"
 * and "60" are one. Where tapes have inches it is inches.
 */
function bare(id: QuantityId, typed: number, allowed: Range): number {
  if (id === 'length' && tape() === 'inch') return typed * INCH_M;
  if (id !== 'length' || (typed >= allowed.least && typed <= allowed.most)) return typed;
  return typed / 100;
}

/** "2 ft 6 in", "2 ft 6", "5' 3\"": feet, then inches. */
function feetAndInches(text: string): number | undefined {
  const [, feet, inches] =
    /^(\d+(?:\.\d+)?)\s*(?:ft|feet|foot|['′’])\s*(\d+(?:\.\d+)?)\s*(?:in|inch|inches|["″”])?$/i.exec(
      text,
    ) ?? [];
  return feet && inches ? Number(feet) * FOOT_M + Number(inches) * INCH_M : undefined;
}

function read(id: QuantityId, text: string, allowed: Range, say: Say): number | undefined {
  const both = id === 'length' ? feetAndInches(text) : undefined;
  if (both !== undefined) return both;
  const [, number, word = ''] = /^([+-]?\d*\.?\d+)\s*(.*)$/.exec(text) ?? [];
  if (number === undefined) return undefined;
  if (word.trim() === '') return bare(id, Number(number), allowed);
  const unit = unitOf(id, word, say);
  return unit && Number(number) * unit.per + (unit.zero ?? 0);
}

/**
 * What a person typed, in the unit of the kitchen file; or what is wrong with
 * it and what is allowed.
 * @param allowed in the unit of the file, both ends included
 * @param say the language of the page, whose units may be typed
 */
export function readQuantity(id: QuantityId, typed: string, allowed: Range, say: Say): Typed {
  const words = typed.trim();
  const value = read(id, words.replace(/(\d),(\d)/g, '$1.$2'), allowed, say);
  const ends = { least: quantity(id, allowed.least), most: quantity(id, allowed.most) };
  if (value === undefined || !Number.isFinite(value)) {
    const how = { example: message(`survey.example.${id}`), ...ends };
    const problem =
      words === ''
        ? message('survey.typed.nothing', how)
        : message('survey.typed.not-understood', { typed: words, ...how });
    return { problem };
  }
  // A hair beyond an end is rounding of another unit, not a mistake.
  const slack = 1e-9 * Math.max(1, Math.abs(value));
  if (value < allowed.least - slack || value > allowed.most + slack)
    return { problem: message('survey.typed.outside', { value: quantity(id, value), ...ends }) };
  if (id === 'count' && !Number.isInteger(value))
    return { problem: message('survey.typed.not-whole', { typed: words, ...ends }) };
  return { value: Number(value.toFixed(id === 'length' ? 4 : 3)) };
}
