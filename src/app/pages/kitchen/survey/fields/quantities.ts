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

type Unit = {
  /** How it may be written, in small letters, the first one shown. */
  readonly written: readonly string[];
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

const UNITS: Readonly<Record<QuantityId, readonly Unit[]>> = {
  length: [
    { written: ['m', 'metre', 'metres', 'meter', 'meters'], per: 1 },
    { written: ['cm'], per: 0.01 },
    { written: ['mm'], per: 0.001 },
    { written: ['in', 'inch', 'inches', '"', '″', '”'], per: INCH_M },
    { written: ['ft', 'foot', 'feet', "'", '′', '’'], per: FOOT_M },
  ],
  altitude: [
    { written: ['m', 'metres', 'meters'], per: 1 },
    { written: ['ft', 'feet'], per: FOOT_M },
  ],
  volume: [
    { written: ['L', 'l', 'litre', 'litres', 'liter', 'liters'], per: 1 },
    { written: ['ml'], per: 0.001 },
    { written: ['qt', 'quart', 'quarts'], per: QUART_L },
    { written: ['fl oz', 'oz'], per: QUART_L / 32 },
    { written: ['pt', 'pint', 'pints'], per: PINT_UK_L },
  ],
  power: [
    { written: ['W', 'w', 'watt', 'watts'], per: 1 },
    { written: ['kW', 'kw'], per: 1000 },
    { written: ['btu/h', 'btu', 'btuh'], per: BTU_H_W },
  ],
  current: [{ written: ['A', 'a', 'amp', 'amps'], per: 1 }],
  voltage: [{ written: ['V', 'v', 'volt', 'volts'], per: 1 }],
  minutes: [
    { written: ['min', 'minutes', 'mins'], per: 1 },
    { written: ['h', 'hours', 'hour', 'hr', 'hrs'], per: 60 },
  ],
  flow: [
    { written: ['L/s', 'l/s'], per: 1 },
    { written: ['m³/h', 'm3/h'], per: 1000 / 3600 },
    { written: ['cfm'], per: CUBIC_FOOT_L / 60 },
  ],
  area: [
    { written: ['m²', 'm2', 'sqm', 'sq m'], per: 1 },
    { written: ['ft²', 'ft2', 'sq ft', 'sqft'], per: FOOT_M ** 2 },
  ],
  temperature: [
    { written: ['°C', '°c', 'c'], per: 1 },
    { written: ['°f', 'f'], per: 1 / 1.8, zero: FAHRENHEIT_ZERO_C },
  ],
  count: [{ written: [''], per: 1 }],
};

/** Examples of what may be typed, for the line under an error. */
const EXAMPLES: Readonly<Record<QuantityId, string>> = {
  length: '60 cm, 24 in or 0.6',
  altitude: '2100 m or 6900 ft',
  volume: '1.7 L or 1.8 qt',
  power: '1500 W or 1.5 kW',
  current: '16 A',
  voltage: '230 V',
  minutes: '240 min or 4 h',
  flow: '90 L/s, 324 m³/h or 190 cfm',
  area: '8.8 m² or 95 sq ft',
  temperature: '12 °C or 54 °F',
  count: '2',
};

export type Allowed = { readonly least: number; readonly most: number };
export type Typed = { readonly value: number } | { readonly problem: string };

function tidy(value: number): string {
  return String(Number(value.toPrecision(4)));
}

/** The value in the unit people read best: lengths below 3 m in centimetres. */
export function quantityText(quantity: QuantityId, value: number): string {
  if (quantity === 'length')
    return Math.abs(value) < 3 ? `${Math.round(value * 1000) / 10} cm` : `${tidy(value)} m`;
  const unit = UNITS[quantity][0]?.written[0] ?? '';
  return unit === '' ? tidy(value) : `${tidy(value)} ${unit}`;
}

function unitOf(quantity: QuantityId, word: string): Unit | undefined {
  return UNITS[quantity].find(({ written }) =>
    written.some((one) => one.toLowerCase() === word.trim().toLowerCase()),
  );
}

/** A length typed bare is metres where that is allowed, else centimetres: "0.6" and "60" are one. */
function bare(quantity: QuantityId, typed: number, allowed: Allowed): number {
  if (quantity !== 'length' || (typed >= allowed.least && typed <= allowed.most)) return typed;
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

function read(quantity: QuantityId, text: string, allowed: Allowed): number | undefined {
  const both = quantity === 'length' ? feetAndInches(text) : undefined;
  if (both !== undefined) return both;
  const [, number, word = ''] = /^([+-]?\d*\.?\d+)\s*(.*)$/.exec(text) ?? [];
  if (number === undefined) return undefined;
  if (word.trim() === '') return bare(quantity, Number(number), allowed);
  const unit = unitOf(quantity, word);
  return unit && Number(number) * unit.per + (unit.zero ?? 0);
}

/**
 * What a person typed, in the unit of the kitchen file; or what is wrong with
 * it and what is allowed.
 * @param allowed in the unit of the file, both ends included
 */
export function readQuantity(quantity: QuantityId, typed: string, allowed: Allowed): Typed {
  const text = typed.trim().replace(/(\d),(\d)/g, '$1.$2');
  const range = `${quantityText(quantity, allowed.least)} to ${quantityText(quantity, allowed.most)}`;
  const value = read(quantity, text, allowed);
  if (value === undefined || !Number.isFinite(value)) {
    const found = text === '' ? 'Nothing was typed' : `“${typed.trim()}” is not understood`;
    return { problem: `${found}. Write it like ${EXAMPLES[quantity]}; allowed: ${range}.` };
  }
  // A hair beyond an end is rounding of another unit, not a mistake.
  const slack = 1e-9 * Math.max(1, Math.abs(value));
  if (value < allowed.least - slack || value > allowed.most + slack)
    return { problem: `${quantityText(quantity, value)} is not allowed here: ${range}.` };
  if (quantity === 'count' && !Number.isInteger(value))
    return { problem: `“${typed.trim()}” is not whole. Allowed: ${range}.` };
  return { value: Number(value.toFixed(quantity === 'length' ? 4 : 3)) };
}
