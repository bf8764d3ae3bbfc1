import type { quantities as english } from '../../english/survey/quantities.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Numbers with their units, as they are shown and as they may be typed. */
export const quantities: TranslationOf<typeof english> = {
  'survey.quantity': ({ value, unit }, f) => `${f.shortNumber(value, 6)} ${f.say(unit)}`,
  'survey.quantity.count': ({ value }, f) => f.shortNumber(value, 6),
  'survey.quantity.tape': ({ metres }, f) => f.tape(metres, { decimals: 3 }),
  'survey.unit.m': 'm',
  'survey.unit.cm': 'cm',
  'survey.unit.in': 'po',
  'survey.unit.ft': 'pi',
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
  'survey.unit.cfm': 'pi³/min',
  'survey.unit.ft2': 'pi²',
  'survey.unit.F': '°F',

  /** What else is understood, with commas between. */
  'survey.typed-as.m': 'mètre, mètres, metre, metres',
  'survey.typed-as.cm': 'centimètre, centimètres',
  'survey.typed-as.mm': 'millimètre, millimètres',
  'survey.typed-as.in': 'pouce, pouces',
  'survey.typed-as.ft': 'pied, pieds',
  'survey.typed-as.L': 'litre, litres',
  'survey.typed-as.ml': 'millilitre, millilitres',
  'survey.typed-as.qt': 'quart, quarts, pinte américaine',
  'survey.typed-as.cup': 'tasse, tasses',
  'survey.typed-as.fl-oz': 'fl oz, once liquide, onces liquides',
  'survey.typed-as.gal': 'gallon, gallons',
  'survey.typed-as.W': 'watt, watts',
  'survey.typed-as.A': 'ampère, ampères',
  'survey.typed-as.V': 'volt, volts',
  'survey.typed-as.min': 'minute, minutes',
  'survey.typed-as.h': 'heure, heures',
  'survey.typed-as.cfm': 'pieds cubes par minute',
  'survey.typed-as.m2': 'mètre carré, mètres carrés',
  'survey.typed-as.ft2': 'pied carré, pieds carrés',
  'survey.typed-as.C': 'degrés, celsius',
  'survey.typed-as.F': 'fahrenheit',

  /** Examples of what may be typed, for the line under an error. */
  'survey.example.length': '60 cm ou 24 in',
  'survey.example.altitude': '2100 m ou 6900 pi',
  'survey.example.volume': '1,7 L ou 1,8 qt',
  'survey.example.power': '1500 W ou 1,5 kW',
  'survey.example.gas-power': '1500 W ou 1,5 kW',
  'survey.example.current': '16 A',
  'survey.example.voltage': '230 V',
  'survey.example.minutes': '240 min ou 4 h',
  'survey.example.flow': '90 L/s, 324 m³/h ou 190 pi³/min',
  'survey.example.area': '8,8 m² ou 95 pi²',
  'survey.example.temperature': '12 °C ou 54 °F',
  'survey.example.count': '2',

  'survey.typed.nothing': ({ example, least, most }, f) =>
    `Rien n’a été tapé. Écrivez comme ${f.say(example)} ; admis : de ${f.say(least)} à ${f.say(most)}.`,
  'survey.typed.not-understood': ({ typed, example, least, most }, f) =>
    `« ${typed} » n’est pas compris. Écrivez comme ${f.say(example)} ; admis : de ${f.say(least)} à ${f.say(most)}.`,
  'survey.typed.outside': ({ value, least, most }, f) =>
    `${f.say(value)} n’est pas admis ici : de ${f.say(least)} à ${f.say(most)}. Tapez une valeur entre les deux.`,
  'survey.typed.not-whole': ({ typed, least, most }, f) =>
    `« ${typed} » n’est pas entier. Admis : de ${f.say(least)} à ${f.say(most)}.`,
  'survey.typed.at': ({ field, why }, f) => `${field} : ${f.say(why)}`,
  'survey.typed.stays': ({ why, old }, f) => `${f.say(why)} Valeur gardée : ${f.say(old)}.`,
  'survey.typed.no-words': ({ most }, f) =>
    `Rien n’a été tapé ; admis : 1 à ${f.number(most)} lettres.`,
  'survey.typed.too-long': ({ letters, most }, f) =>
    `${f.number(letters)} lettres, c’est trop ; admis : 1 à ${f.number(most)} lettres.`,
};
