import type { TranslationOf } from '../../model/translation.ts';
import type { quantities as english } from '../../english/survey/quantities.ts';

/** Numbers with their units, as they are shown and as they may be typed. */
export const quantities: TranslationOf<typeof english> = {
  'survey.quantity': ({ value, unit }, f) => `${f.shortNumber(value, 6)} ${f.say(unit)}`,
  'survey.quantity.count': ({ value }, f) => f.shortNumber(value, 6),
  'survey.quantity.tape': ({ metres }, f) => f.tape(metres, { decimals: 3 }),
  'survey.unit.m': 'מ׳',
  'survey.unit.cm': 'ס״מ',
  'survey.unit.in': 'אינץ׳',
  'survey.unit.ft': 'רגל',
  'survey.unit.L': 'ליטר',
  'survey.unit.W': 'ואט',
  'survey.unit.A': 'אמפר',
  'survey.unit.V': 'וולט',
  'survey.unit.min': 'דק׳',
  'survey.unit.L-s': 'ליטר/שנ׳',
  'survey.unit.m2': 'מ״ר',
  'survey.unit.C': 'מעלות',
  'survey.unit.qt': 'קוורט',
  'survey.unit.BTU-h': 'BTU/h',
  'survey.unit.cfm': 'רגל מעוקבת/דקה',
  'survey.unit.ft2': 'רגל רבועה',
  'survey.unit.F': '\u2066°F\u2069',

  /** What else is understood, with commas between. */
  'survey.typed-as.m': 'מטר, מטרים',
  'survey.typed-as.cm': 'סנטימטר, סנטימטרים, סמ',
  'survey.typed-as.mm': 'מ״מ, מילימטר, מילימטרים',
  'survey.typed-as.in': 'אינץ, אינצ׳ים, אינצים',
  'survey.typed-as.ft': 'רגליים',
  'survey.typed-as.L': 'ל׳, ליטרים',
  'survey.typed-as.ml': 'מ״ל, מיליליטר',
  'survey.typed-as.qt': 'קווארט, קוורטים',
  'survey.typed-as.cup': 'כוס, כוסות',
  'survey.typed-as.fl-oz': 'אונקיה, אונקיות, אונקיות נוזל',
  'survey.typed-as.gal': 'גלון, גלונים, גל׳',
  'survey.typed-as.W': 'וט',
  'survey.typed-as.A': 'אמפרים',
  'survey.typed-as.V': 'ו׳',
  'survey.typed-as.min': 'דקה, דקות',
  'survey.typed-as.h': 'שע׳, שעה, שעות',
  'survey.typed-as.cfm': 'רגל מעוקבת לדקה, רגל מעוקב לדקה, רגל מעוקב/דקה',
  'survey.typed-as.m2': 'מטר רבוע, מטרים רבועים',
  'survey.typed-as.ft2': 'רגל רבוע, רגל מרובע, רגל מרובעת',
  'survey.typed-as.C': 'צלזיוס, מעלות צלזיוס',
  'survey.typed-as.F': 'פרנהייט, מעלות פרנהייט',

  'survey.example.length': '60 ס״מ או 24 אינץ׳',
  'survey.example.altitude': '2100 מ׳',
  'survey.example.volume': '1.7 ליטר',
  'survey.example.power': '1500 ואט',
  'survey.example.gas-power': '1500 ואט',
  'survey.example.current': '16 אמפר',
  'survey.example.voltage': '230 וולט',
  'survey.example.minutes': '240 דק׳',
  'survey.example.flow': '90 ליטר/שנ׳',
  'survey.example.area': '8.8 מ״ר',
  'survey.example.temperature': '12 מעלות',
  'survey.example.count': '2',

  'survey.typed.nothing': ({ example, least, most }, f) =>
    `לא הוקלד דבר. כתבו כך: ${f.say(example)}; מותר: ${f.say(least)} עד ${f.say(most)}.`,
  'survey.typed.not-understood': ({ typed, example, least, most }, f) =>
    `"${typed}" לא מובן. כתבו כך: ${f.say(example)}; מותר: ${f.say(least)} עד ${f.say(most)}.`,
  'survey.typed.outside': ({ value, least, most }, f) =>
    `${f.say(value)} לא מותר כאן: ${f.say(least)} עד ${f.say(most)}. הקלידו ערך שביניהם.`,
  'survey.typed.not-whole': ({ typed, least, most }, f) =>
    `"${typed}" אינו מספר שלם. מותר: ${f.say(least)} עד ${f.say(most)}.`,
  'survey.typed.at': ({ field, why }, f) => `${field}: ${f.say(why)}`,
  'survey.typed.stays': ({ why, old }, f) => `${f.say(why)} נשאר ${f.say(old)}.`,
  'survey.typed.no-words': ({ most }, f) => `לא הוקלד דבר; מותר: 1 עד ${f.number(most)} אותיות.`,
  'survey.typed.too-long': ({ letters, most }, f) =>
    `${f.number(letters)} אותיות הן יותר מדי; מותר: 1 עד ${f.number(most)} אותיות.`,
};
