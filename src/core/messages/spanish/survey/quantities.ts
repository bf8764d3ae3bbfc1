import type { TranslationOf } from '../../model/translation.ts';
import type { quantities as english } from '../../english/survey/quantities.ts';

/** Numbers with their units, as they are shown and as they may be typed. */
export const quantities: TranslationOf<typeof english> = {
  'survey.quantity': ({ value, unit }, f) => `${f.shortNumber(value, 6)} ${f.say(unit)}`,
  'survey.quantity.count': ({ value }, f) => f.shortNumber(value, 6),
  'survey.quantity.tape': ({ metres }, f) => f.tape(metres, { decimals: 3 }),
  'survey.unit.m': 'm',
  'survey.unit.cm': 'cm',
  'survey.unit.in': 'pulg',
  'survey.unit.ft': 'pies',
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
  'survey.unit.cfm': 'pies³/min',
  'survey.unit.ft2': 'pies²',
  'survey.unit.F': '°F',

  /** What else is understood, with commas between. */
  'survey.typed-as.m': 'metro, metros',
  'survey.typed-as.cm': 'centímetro, centímetros',
  'survey.typed-as.mm': 'milímetro, milímetros',
  'survey.typed-as.in': 'pulgada, pulgadas',
  'survey.typed-as.ft': 'pie',
  'survey.typed-as.L': 'litro, litros',
  'survey.typed-as.ml': 'mililitro, mililitros',
  'survey.typed-as.qt': 'cuarto, cuartos',
  'survey.typed-as.cup': 'taza, tazas',
  'survey.typed-as.fl-oz': 'fl oz, onza líquida, onzas líquidas',
  'survey.typed-as.gal': 'galón, galones',
  'survey.typed-as.W': 'vatio, vatios',
  'survey.typed-as.A': 'amperio, amperios, amperes',
  'survey.typed-as.V': 'voltio, voltios',
  'survey.typed-as.min': 'minuto, minutos',
  'survey.typed-as.h': 'hora, horas',
  'survey.typed-as.cfm': 'pies cúbicos por minuto',
  'survey.typed-as.m2': 'metro cuadrado, metros cuadrados',
  'survey.typed-as.ft2': 'pie², pie cuadrado, pies cuadrados',
  'survey.typed-as.C': 'grados, celsius',
  'survey.typed-as.F': 'fahrenheit',

  'survey.example.length': '60 cm o 24 pulg',
  'survey.example.altitude': '2100 m o 6900 pies',
  'survey.example.volume': '1,7 L o 1,8 qt',
  'survey.example.power': '1500 W o 1,5 kW',
  'survey.example.gas-power': '1500 W o 1,5 kW',
  'survey.example.current': '16 A',
  'survey.example.voltage': '230 V',
  'survey.example.minutes': '240 min o 4 h',
  'survey.example.flow': '90 L/s, 324 m³/h o 190 pies³/min',
  'survey.example.area': '8,8 m² o 95 pies²',
  'survey.example.temperature': '12 °C o 54 °F',
  'survey.example.count': '2',

  'survey.typed.nothing': ({ example, least, most }, f) =>
    `No se escribió nada. Escríbalo como ${f.say(example)}; permitido: de ${f.say(least)} a ${f.say(most)}.`,
  'survey.typed.not-understood': ({ typed, example, least, most }, f) =>
    `No se entiende “${typed}”. Escríbalo como ${f.say(example)}; permitido: de ${f.say(least)} a ${f.say(most)}.`,
  'survey.typed.outside': ({ value, least, most }, f) =>
    `Aquí no se permite ${f.say(value)}: de ${f.say(least)} a ${f.say(most)}. Escriba un valor intermedio.`,
  'survey.typed.not-whole': ({ typed, least, most }, f) =>
    `“${typed}” no es un número entero. Permitido: de ${f.say(least)} a ${f.say(most)}.`,
  'survey.typed.at': ({ field, why }, f) => `${field}: ${f.say(why)}`,
  'survey.typed.stays': ({ why, old }, f) => `${f.say(why)} Sigue en ${f.say(old)}.`,
  'survey.typed.no-words': ({ most }, f) =>
    `No se escribió nada; permitido: de 1 a ${f.number(most)} letras.`,
  'survey.typed.too-long': ({ letters, most }, f) =>
    `${f.number(letters)} letras son demasiadas; permitido: de 1 a ${f.number(most)} letras.`,
};
