import {
  BTU_H_W,
  CUBIC_FOOT_L,
  FAHRENHEIT_C,
  FAHRENHEIT_ZERO_C,
  FLUID_OUNCE_L,
  FOOT_M,
  GALLON_L,
  INCH_M,
  QUART_L,
  type UnitSystem,
} from '../../../../../core/units/index.ts';
import { message, type Message } from '../../../../../core/messages/index.ts';

/** What is typed and shown; each has the unit the kitchen file counts in, and those a tape, a rating plate or a manual may give. */
export type QuantityId =
  | 'length'
  | 'altitude'
  | 'volume'
  | 'power'
  | 'gas-power'
  | 'current'
  | 'voltage'
  | 'minutes'
  | 'flow'
  | 'area'
  | 'temperature'
  | 'count';

/** Units that are shown; each is called in the language of the page. */
export type ShownUnit =
  | 'm'
  | 'cm'
  | 'in'
  | 'ft'
  | 'L'
  | 'qt'
  | 'W'
  | 'BTU-h'
  | 'A'
  | 'V'
  | 'min'
  | 'L-s'
  | 'cfm'
  | 'm2'
  | 'ft2'
  | 'C'
  | 'F';

/** Units that have words of their own in a language, besides their sign. */
type WordedUnit =
  | 'm'
  | 'cm'
  | 'mm'
  | 'in'
  | 'ft'
  | 'L'
  | 'ml'
  | 'qt'
  | 'cup'
  | 'fl-oz'
  | 'gal'
  | 'W'
  | 'A'
  | 'V'
  | 'min'
  | 'h'
  | 'cfm'
  | 'm2'
  | 'ft2'
  | 'C'
  | 'F';

export type Unit = {
  /** Its signs in any language, in small letters. */
  readonly signs: readonly string[];
  readonly worded?: WordedUnit;
  readonly shown?: ShownUnit;
  /** SI value = typed × per + zero. */
  readonly per: number;
  readonly zero?: number;
};

const METRE: Unit = { signs: ['m'], worded: 'm', shown: 'm', per: 1 };
const INCH: Unit = { signs: ['in', '"'], worded: 'in', shown: 'in', per: INCH_M };
const FOOT: Unit = { signs: ['ft', "'"], worded: 'ft', shown: 'ft', per: FOOT_M };
const WATT: Unit = { signs: ['w'], worded: 'W', shown: 'W', per: 1 };
const BTU: Unit = { signs: ['btu/h', 'btu', 'btuh'], shown: 'BTU-h', per: BTU_H_W };
const KILOWATT: Unit = { signs: ['kw'], per: 1000 };
const QUART: Unit = { signs: ['qt'], worded: 'qt', shown: 'qt', per: QUART_L };
const SQUARE_FOOT: Unit = { signs: ['ft2'], worded: 'ft2', shown: 'ft2', per: FOOT_M ** 2 };
const CFM: Unit = { signs: ['cfm'], worded: 'cfm', shown: 'cfm', per: CUBIC_FOOT_L / 60 };
const FAHRENHEIT: Unit = {
  signs: ['°f', 'f'],
  worded: 'F',
  shown: 'F',
  per: FAHRENHEIT_C,
  zero: FAHRENHEIT_ZERO_C,
};

/** Imperial pint, L: UK Weights and Measures Act 1985. */
const PINT_UK_L = 0.568_261_25;

/** The first unit of each is the one of the kitchen file. */
export const UNITS: Readonly<Record<QuantityId, readonly Unit[]>> = {
  length: [
    METRE,
    { signs: ['cm'], worded: 'cm', shown: 'cm', per: 0.01 },
    { signs: ['mm'], worded: 'mm', per: 0.001 },
    INCH,
    FOOT,
  ],
  altitude: [METRE, FOOT],
  volume: [
    { signs: ['l'], worded: 'L', shown: 'L', per: 1 },
    { signs: ['ml'], worded: 'ml', per: 0.001 },
    QUART,
    { signs: [], worded: 'cup', per: QUART_L / 4 },
    { signs: ['oz'], worded: 'fl-oz', per: FLUID_OUNCE_L },
    { signs: ['gal'], worded: 'gal', per: GALLON_L },
    { signs: ['pt'], per: PINT_UK_L },
  ],
  power: [WATT, KILOWATT, BTU],
  'gas-power': [WATT, KILOWATT, BTU],
  current: [{ signs: ['a'], worded: 'A', shown: 'A', per: 1 }],
  voltage: [{ signs: ['v'], worded: 'V', shown: 'V', per: 1 }],
  minutes: [
    { signs: ['min'], worded: 'min', shown: 'min', per: 1 },
    { signs: ['h'], worded: 'h', per: 60 },
  ],
  flow: [{ signs: ['l/s'], shown: 'L-s', per: 1 }, { signs: ['m3/h'], per: 1000 / 3600 }, CFM],
  area: [{ signs: ['m2'], worded: 'm2', shown: 'm2', per: 1 }, SQUARE_FOOT],
  temperature: [{ signs: ['°c', 'c'], worded: 'C', shown: 'C', per: 1 }, FAHRENHEIT],
  count: [],
};

/** What a US household reads instead of the unit of the kitchen file, and so types bare. */
const CUSTOMARY: Readonly<Partial<Record<QuantityId, Unit>>> = {
  length: INCH,
  altitude: FOOT,
  volume: QUART,
  'gas-power': BTU,
  flow: CFM,
  area: SQUARE_FOOT,
  temperature: FAHRENHEIT,
};

/** The unit in which a household reads a quantity; none where it is only counted. */
export function unitRead(id: QuantityId, system: UnitSystem): Unit | undefined {
  return (system === 'us-customary' ? CUSTOMARY[id] : undefined) ?? UNITS[id][0];
}

export function unitName(unit: ShownUnit): Message {
  return message(`survey.unit.${unit}`);
}

/** What else a language calls a unit, in small letters with commas between. */
export function unitWords(unit: WordedUnit): Message {
  return message(`survey.typed-as.${unit}`);
}
