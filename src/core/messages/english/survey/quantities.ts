import type { Message, Section } from '../../model/message.ts';

/** Numbers with their units, as they are shown and as they may be typed. */
export const quantities = {
  'survey.quantity': ({ value, unit }: { value: number; unit: Message }, f) =>
    `${f.shortNumber(value, 6)} ${f.say(unit)}`,
  'survey.quantity.count': ({ value }: { value: number }, f) => f.shortNumber(value, 6),
  'survey.quantity.tape': ({ metres }: { metres: number }, f) => f.tape(metres, { decimals: 3 }),
  'survey.unit.m': 'm',
  'survey.unit.cm': 'cm',
  'survey.unit.in': 'in',
  'survey.unit.ft': 'ft',
  'survey.unit.L': 'L',
  'survey.unit.W': 'W',
  'survey.unit.A': 'A',
  'survey.unit.V': 'V',
  'survey.unit.min': 'min',
  'survey.unit.L-s': 'L/s',
  'survey.unit.m2': 'm²',
  'survey.unit.C': '°C',
  'survey.unit.qt': 'qt',
  'survey.unit.BTU-h': 'BTU/h',
  'survey.unit.cfm': 'cfm',
  'survey.unit.ft2': 'sq ft',
  'survey.unit.F': '°F',

  /** What else is understood, with commas between. */
  'survey.typed-as.m': 'metre, metres, meter, meters',
  'survey.typed-as.cm': 'centimetre, centimetres, centimeter, centimeters',
  'survey.typed-as.mm': 'millimetre, millimetres, millimeter, millimeters',
  'survey.typed-as.in': 'inch, inches',
  'survey.typed-as.ft': 'foot, feet',
  'survey.typed-as.L': 'litre, litres, liter, liters',
  'survey.typed-as.ml': 'millilitre, millilitres, milliliter, milliliters',
  'survey.typed-as.qt': 'quart, quarts',
  'survey.typed-as.cup': 'cup, cups',
  'survey.typed-as.fl-oz': 'fl oz, fluid ounce, fluid ounces',
  'survey.typed-as.gal': 'gallon, gallons',
  'survey.typed-as.W': 'watt, watts',
  'survey.typed-as.A': 'amp, amps, ampere, amperes',
  'survey.typed-as.V': 'volt, volts',
  'survey.typed-as.min': 'mins, minute, minutes',
  'survey.typed-as.h': 'hr, hrs, hour, hours',
  'survey.typed-as.cfm': 'cubic feet a minute',
  'survey.typed-as.m2': 'sq m, sqm, square metres, square meters',
  'survey.typed-as.ft2': 'sqft, sq. ft., square feet',
  'survey.typed-as.C': 'degrees, celsius',
  'survey.typed-as.F': 'fahrenheit',

  /** Examples of what may be typed, for the line under an error. */
  'survey.example.length': '60 cm or 24 in',
  'survey.example.altitude': '2100 m or 6900 ft',
  'survey.example.volume': '1.7 L or 1.8 qt',
  'survey.example.power': '1500 W or 1.5 kW',
  'survey.example.gas-power': '1500 W or 1.5 kW',
  'survey.example.current': '16 A',
  'survey.example.voltage': '230 V',
  'survey.example.minutes': '240 min or 4 h',
  'survey.example.flow': '90 L/s, 324 m³/h or 190 cfm',
  'survey.example.area': '8.8 m² or 95 sq ft',
  'survey.example.temperature': '12 °C or 54 °F',
  'survey.example.count': '2',

  'survey.typed.nothing': (
    { example, least, most }: { example: Message; least: Message; most: Message },
    f,
  ) =>
    `Nothing was typed. Write it like ${f.say(example)}; allowed: ${f.say(least)} to ${f.say(most)}.`,
  'survey.typed.not-understood': (
    {
      typed,
      example,
      least,
      most,
    }: { typed: string; example: Message; least: Message; most: Message },
    f,
  ) =>
    `“${typed}” is not understood. Write it like ${f.say(example)}; allowed: ${f.say(least)} to ${f.say(most)}.`,
  'survey.typed.outside': (
    { value, least, most }: { value: Message; least: Message; most: Message },
    f,
  ) =>
    `${f.say(value)} is not allowed here: ${f.say(least)} to ${f.say(most)}. Type a value in between.`,
  'survey.typed.not-whole': (
    { typed, least, most }: { typed: string; least: Message; most: Message },
    f,
  ) => `“${typed}” is not whole. Allowed: ${f.say(least)} to ${f.say(most)}.`,
  /** The field is called by what stands over it. */
  'survey.typed.at': ({ field, why }: { field: string; why: Message }, f) =>
    `${field}: ${f.say(why)}`,
  'survey.typed.stays': ({ why, old }: { why: Message; old: Message }, f) =>
    `${f.say(why)} It stays ${f.say(old)}.`,
  'survey.typed.no-words': ({ most }: { most: number }, f) =>
    `Nothing was typed; allowed: 1 to ${f.number(most)} letters.`,
  'survey.typed.too-long': ({ letters, most }: { letters: number; most: number }, f) =>
    `${f.number(letters)} letters are too many; allowed: 1 to ${f.number(most)} letters.`,
} satisfies Section;
