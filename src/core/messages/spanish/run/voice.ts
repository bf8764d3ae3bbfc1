import type { TranslationOf } from '../../model/translation.ts';
import type { voice as english } from '../../english/run/voice.ts';
import { wholeWords, type SpokenSigns } from '../../model/whole-words.ts';

/** Ends what is spoken, so that the voice pauses after it. */
function ended(text: string): string {
  const line = text.trim();
  return /[.!?:]$/u.test(line) ? line : `${line}.`;
}

/** What the screen writes with signs, as it is said. */
const signs: SpokenSigns = {
  units: {
    h: { one: '# hora', other: '# horas' },
    min: { one: '# minuto', other: '# minutos' },
    s: { one: '# segundo', other: '# segundos' },
    L: { one: '# litro', other: '# litros' },
    'L/min': { one: '# litro por minuto', other: '# litros por minuto' },
    mL: { one: '# mililitro', other: '# mililitros' },
    mm: { one: '# milímetro', other: '# milímetros' },
    cm: { one: '# centímetro', other: '# centímetros' },
    m: { one: '# metro', other: '# metros' },
    'm²': { one: '# metro cuadrado', other: '# metros cuadrados' },
    'm³': { one: '# metro cúbico', other: '# metros cúbicos' },
    kg: { one: '# kilogramo', other: '# kilogramos' },
    W: { one: '# vatio', other: '# vatios' },
    kW: { one: '# kilovatio', other: '# kilovatios' },
    kWh: { one: '# kilovatio hora', other: '# kilovatios hora' },
    V: { one: '# voltio', other: '# voltios' },
    A: { one: '# amperio', other: '# amperios' },
    '°C': { one: '# grado Celsius', other: '# grados Celsius' },
    '°F': { one: '# grado Fahrenheit', other: '# grados Fahrenheit' },
    gal: { one: '# galón', other: '# galones' },
    '%': { one: '# por ciento', other: '# por ciento' },
  },
  words: {
    '½': 'medio',
    '¼': 'un cuarto',
    '¾': 'tres cuartos',
    CO: 'monóxido de carbono',
    '×': 'por',
    'aprox.': 'aproximadamente',
  },
  to: 'a',
};

/** What is spoken. */
export const voice: TranslationOf<typeof english> = {
  'run.voice.aloud': ({ text }, f) => wholeWords(text, f, signs),
  'run.voice.sentence': ({ sentence }, f) => ended(f.say(sentence)),
  'run.voice.gate': ({ signal, ask }, f) => `${ended(f.say(signal))} ${ended(f.say(ask))}`,
  'run.voice.water-waited': 'El agua hervida esperó demasiado: hiérvala de nuevo.',
  'run.voice.timer': ({ timer }, f) => ended(f.say(timer)),
  'run.voice.timer-over': ({ timer }, f) => `${f.say(timer)}: el tiempo ha terminado.`,
  'run.voice.fault': ({ fault, doThis }, f) =>
    [fault, ...doThis].map((line) => ended(f.say(line))).join(' '),
  'run.voice.review': 'Aquí se había quedado.',
  'run.voice.closing': 'Deje esto seguro y después dígalo.',
  'run.voice.quiet': 'Ahora no hay nada que hacer.',
};
