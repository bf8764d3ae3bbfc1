import type { voice as english } from '../../english/run/voice.ts';
import type { TranslationOf } from '../../model/translation.ts';
import { wholeWords, type SpokenSigns } from '../../model/whole-words.ts';

/** Ends what is spoken, so that the voice pauses after it. */
function ended(text: string): string {
  const line = text.trim();
  return /[.!?:]$/u.test(line) ? line : `${line}.`;
}

/** What the screen writes with signs, as it is said. */
const signs: SpokenSigns = {
  units: {
    h: { one: '# heure', other: '# heures' },
    min: { one: '# minute', other: '# minutes' },
    s: { one: '# seconde', other: '# secondes' },
    L: { one: '# litre', other: '# litres' },
    'L/min': { one: '# litre par minute', other: '# litres par minute' },
    mL: { one: '# millilitre', other: '# millilitres' },
    mm: { one: '# millimètre', other: '# millimètres' },
    cm: { one: '# centimètre', other: '# centimètres' },
    m: { one: '# mètre', other: '# mètres' },
    'm²': { one: '# mètre carré', other: '# mètres carrés' },
    'm³': { one: '# mètre cube', other: '# mètres cubes' },
    kg: { one: '# kilogramme', other: '# kilogrammes' },
    W: { one: '# watt', other: '# watts' },
    kW: { one: '# kilowatt', other: '# kilowatts' },
    kWh: { one: '# kilowattheure', other: '# kilowattheures' },
    V: { one: '# volt', other: '# volts' },
    A: { one: '# ampère', other: '# ampères' },
    '°C': { one: '# degré Celsius', other: '# degrés Celsius' },
    '°F': { one: '# degré Fahrenheit', other: '# degrés Fahrenheit' },
    gal: { one: '# gallon', other: '# gallons' },
    '%': { one: '# pour cent', other: '# pour cent' },
  },
  words: {
    '½': 'un demi',
    '¼': 'un quart',
    '¾': 'trois quarts',
    CO: 'monoxyde de carbone',
    '×': 'fois',
  },
  to: 'à',
};

/** What is spoken. */
export const voice: TranslationOf<typeof english> = {
  'run.voice.aloud': ({ text }, f) => wholeWords(text, f, signs),
  'run.voice.sentence': ({ sentence }, f) => ended(f.say(sentence)),
  'run.voice.gate': ({ signal, ask }, f) => `${ended(f.say(signal))} ${ended(f.say(ask))}`,
  'run.voice.water-waited': 'L’eau bouillie a trop attendu : refaites-la bouillir.',
  'run.voice.timer': ({ timer }, f) => ended(f.say(timer)),
  'run.voice.timer-over': ({ timer }, f) => `${f.say(timer)} : le temps est écoulé.`,
  'run.voice.fault': ({ fault, doThis }, f) =>
    [fault, ...doThis].map((line) => ended(f.say(line))).join(' '),
  'run.voice.review': 'Voici où vous en étiez.',
  'run.voice.closing': 'Mettez ceci en sécurité, puis dites-le.',
  'run.voice.quiet': 'Rien à faire pour l’instant.',
};
