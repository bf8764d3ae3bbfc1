import type { TranslationOf } from '../../model/translation.ts';
import type { quantities as english } from '../../english/survey/quantities.ts';

/** Numbers with their units, as they are shown and as they may be typed. */
export const quantities: TranslationOf<typeof english> = {
  'survey.quantity': ({ value, unit }, f) => `${f.shortNumber(value, 6)} ${f.say(unit)}`,
  'survey.quantity.count': ({ value }, f) => f.shortNumber(value, 6),
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

  'survey.example.length': '60 cm o 24 in',
  'survey.example.altitude': '2100 m o 6900 ft',
  'survey.example.volume': '1,7 L o 1,8 qt',
  'survey.example.power': '1500 W o 1,5 kW',
  'survey.example.current': '16 A',
  'survey.example.voltage': '230 V',
  'survey.example.minutes': '240 min o 4 h',
  'survey.example.flow': '90 L/s, 324 m³/h o 190 cfm',
  'survey.example.area': '8,8 m² o 95 sq ft',
  'survey.example.temperature': '12 °C o 54 °F',
  'survey.example.count': '2',

  'survey.typed.nothing': ({ example, least, most }, f) =>
    `No se escribió nada. Escríbalo como ${f.say(example)}; permitido: de ${f.say(least)} a ${f.say(most)}.`,
  'survey.typed.not-understood': ({ typed, example, least, most }, f) =>
    `No se entiende “${typed}”. Escríbalo como ${f.say(example)}; permitido: de ${f.say(least)} a ${f.say(most)}.`,
  'survey.typed.outside': ({ value, least, most }, f) =>
    `Aquí no se permite ${f.say(value)}: de ${f.say(least)} a ${f.say(most)}.`,
  'survey.typed.not-whole': ({ typed, least, most }, f) =>
    `“${typed}” no es un número entero. Permitido: de ${f.say(least)} a ${f.say(most)}.`,
  'survey.typed.stays': ({ why, old }, f) => `${f.say(why)} Sigue en ${f.say(old)}.`,
  'survey.typed.no-words': ({ most }, f) =>
    `No se escribió nada; permitido: de 1 a ${f.number(most)} letras.`,
  'survey.typed.too-long': ({ letters, most }, f) =>
    `${f.number(letters)} letras son demasiadas; permitido: de 1 a ${f.number(most)} letras.`,
};
