import type { Range } from '../../../../../core/kitchen/index.ts';
import { message, type Message, type Rounding } from '../../../../../core/messages/index.ts';
import { INCH_M } from '../../../../../core/units/index.ts';
import { unitsHere } from '../../../../context/units.ts';
import { oneNumber, plainTyped, twoNumbers, type Speech } from './typed-number.ts';
import {
  UNITS,
  unitName,
  unitRead,
  unitWords,
  type QuantityId,
  type ShownUnit,
  type Unit,
} from './unit-table.ts';

/**
 * Numbers as people type them: "60 cm", "24 in", "2 ft 6", "5' 3½"", "0,6",
 * in the units of their household or in any other that is written beside them.
 */
export type Typed = { readonly value: number } | { readonly problem: Message };

/** Lengths below this are read best in centimetres, m. */
const CENTIMETRES_BELOW_M = 3;
const SIGNIFICANT_DIGITS = 4;
/** Signs of another unit than the file's: about as fine as what was told. */
const CUSTOMARY_DIGITS = 3;
/** A tape is read to this part of an inch. */
const TAPE_PARTS = 16;
const LEAST = 1e-6;
/** Sums of binary fractions end a hair beside the number they mean. */
const HAIR = 1e-9;

const TOWARD: Readonly<Record<Rounding, (value: number) => number>> = {
  nearest: Math.round,
  down: (value) => Math.floor(value + HAIR * Math.abs(value)),
  up: (value) => Math.ceil(value - HAIR * Math.abs(value)),
};

/** To so many figures that count. */
function significant(value: number, digits: number, toward: Rounding): number {
  // What is less is noughts in any unit; the file keeps no more either.
  if (Math.abs(value) < LEAST) return 0;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) + 1 - digits);
  return Number((TOWARD[toward](value / step) * step).toPrecision(12));
}

function withUnit(value: number, unit: ShownUnit): Message {
  return message('survey.quantity', { value, unit: unitName(unit) });
}

function length(metres: number, toward: Rounding): Message {
  if (unitsHere() === 'us-customary') {
    const part = INCH_M / TAPE_PARTS;
    return message('survey.quantity.tape', {
      metres: TOWARD[toward](metres / part) * part,
    });
  }
  return Math.abs(metres) < CENTIMETRES_BELOW_M
    ? withUnit(TOWARD[toward](metres * 1000) / 10, 'cm')
    : withUnit(significant(metres, SIGNIFICANT_DIGITS, toward), 'm');
}

/**
 * The value in the unit people read best.
 * @param value in the unit of the kitchen file
 * @param toward a limit is rounded so that what is shown may be typed
 */
export function quantity(id: QuantityId, value: number, toward: Rounding = 'nearest'): Message {
  if (id === 'length') return length(value, toward);
  const unit = unitRead(id, unitsHere());
  const { per = 1, zero = 0 } = unit ?? {};
  const digits =
    unit === UNITS[id][0] || Math.abs(value) >= 1000 ? SIGNIFICANT_DIGITS : CUSTOMARY_DIGITS;
  const figure = significant((value - zero) / per, digits, toward);
  return unit?.shown === undefined
    ? message('survey.quantity.count', { value: figure })
    : withUnit(figure, unit.shown);
}

function isCalled(unit: Unit, word: string, { say }: Speech): boolean {
  const names = unit.shown === undefined ? [] : [say(unitName(unit.shown))];
  const words = unit.worded === undefined ? [] : say(unitWords(unit.worded)).split(',');
  return unit.signs.includes(word) || [...names, ...words].map(plainTyped).includes(word);
}

const unitOf = (id: QuantityId, word: string, speech: Speech): Unit | undefined =>
  UNITS[id].find((unit) => isCalled(unit, word.trim(), speech));

/**
 * A length typed bare is metres where that is allowed, else centimetres: "0.6"
 * and "60" are one. A US household means what it reads: inches, feet, quarts.
 */
function bare(id: QuantityId, typed: number, allowed: Range): number {
  if (unitsHere() === 'us-customary') {
    const { per = 1, zero = 0 } = unitRead(id, 'us-customary') ?? {};
    return typed * per + zero;
  }
  if (id !== 'length' || (typed >= allowed.least && typed <= allowed.most)) return typed;
  return typed / 100;
}

/** "2 ft 6 in", "2 ft 6", "5' 3 1/2\"", "1 m 20 cm": the larger unit, then the smaller; bare after feet is inches. */
function lengthOfTwo(plain: string, speech: Speech): number | undefined {
  const [large, small] = twoNumbers(plain, speech) ?? [];
  if (!large || !small) return undefined;
  const first = unitOf('length', large.unit, speech);
  const [, , , INCH, FOOT] = UNITS.length;
  const second = small.unit === '' && first === FOOT ? INCH : unitOf('length', small.unit, speech);
  if (!first || !second || second.per >= first.per) return undefined;
  return large.value * first.per + small.value * second.per;
}

function read(id: QuantityId, text: string, allowed: Range, speech: Speech): number | undefined {
  const plain = plainTyped(text);
  const one = oneNumber(plain, speech);
  if (one === undefined) return undefined;
  if (one.unit === '') return bare(id, one.value, allowed);
  const unit = unitOf(id, one.unit, speech);
  if (unit) return one.value * unit.per + (unit.zero ?? 0);
  return id === 'length' ? lengthOfTwo(plain, speech) : undefined;
}

/** What an example is made of where the household reads US units, in the unit of the file. */
const EXAMPLES: Readonly<Partial<Record<QuantityId, number>>> = {
  length: 2.5273,
  altitude: 2103,
  volume: 1.7,
  'gas-power': 2637.6,
  flow: 90,
  area: 8.8,
  temperature: 12,
};

function example(id: QuantityId): Message {
  const value = EXAMPLES[id];
  return value !== undefined && unitsHere() === 'us-customary'
    ? quantity(id, value)
    : message(`survey.example.${id}`);
}

/**
 * What a person typed, in the unit of the kitchen file; or what is wrong with
 * it and what is allowed.
 * @param allowed in the unit of the file, both ends included
 * @param speech the language of the page, whose units may be typed
 */
export function readQuantity(id: QuantityId, typed: string, allowed: Range, speech: Speech): Typed {
  const words = typed.trim();
  const value = read(id, words, allowed, speech);
  const ends = {
    least: quantity(id, allowed.least, 'up'),
    most: quantity(id, allowed.most, 'down'),
  };
  if (value === undefined || !Number.isFinite(value)) {
    const how = { example: example(id), ...ends };
    const problem =
      words === ''
        ? message('survey.typed.nothing', how)
        : message('survey.typed.not-understood', { typed: words, ...how });
    return { problem };
  }
  // A hair beyond an end is rounding of another unit, not a mistake.
  const slack = HAIR * Math.max(1, Math.abs(value));
  if (value < allowed.least - slack || value > allowed.most + slack)
    return { problem: message('survey.typed.outside', { value: quantity(id, value), ...ends }) };
  if (id === 'count' && !Number.isInteger(value))
    return { problem: message('survey.typed.not-whole', { typed: words, ...ends }) };
  return { value: Number(value.toFixed(id === 'length' ? 4 : 3)) };
}
