import type { Message, Section } from '../../model/message.ts';
import { wholeWords, type SpokenSigns } from '../../model/whole-words.ts';

/** Ends what is spoken, so that the voice pauses after it. */
function ended(text: string): string {
  const line = text.trim();
  return /[.!?:]$/u.test(line) ? line : `${line}.`;
}

/** What the screen writes with signs, as it is said. */
const signs: SpokenSigns = {
  units: {
    h: { one: '# hour', other: '# hours' },
    min: { one: '# minute', other: '# minutes' },
    s: { one: '# second', other: '# seconds' },
    L: { one: '# litre', other: '# litres' },
    'L/min': { one: '# litre a minute', other: '# litres a minute' },
    mL: { one: '# millilitre', other: '# millilitres' },
    mm: { one: '# millimetre', other: '# millimetres' },
    cm: { one: '# centimetre', other: '# centimetres' },
    m: { one: '# metre', other: '# metres' },
    'm²': { one: '# square metre', other: '# square metres' },
    'm³': { one: '# cubic metre', other: '# cubic metres' },
    kg: { one: '# kilogram', other: '# kilograms' },
    W: { one: '# watt', other: '# watts' },
    kW: { one: '# kilowatt', other: '# kilowatts' },
    kWh: { one: '# kilowatt hour', other: '# kilowatt hours' },
    V: { one: '# volt', other: '# volts' },
    A: { one: '# ampere', other: '# amperes' },
    '°C': { one: '# degree Celsius', other: '# degrees Celsius' },
    '°F': { one: '# degree Fahrenheit', other: '# degrees Fahrenheit' },
    qt: { one: '# quart', other: '# quarts' },
    gal: { one: '# gallon', other: '# gallons' },
    '%': { one: '# percent', other: '# percent' },
  },
  words: {
    '½': 'half',
    '¼': 'a quarter',
    '¾': 'three quarters',
    CO: 'carbon monoxide',
    '×': 'times',
  },
  to: 'to',
};

/** What is spoken. */
export const voice = {
  'run.voice.aloud': ({ text }: { text: string }, f) => wholeWords(text, f, signs),
  'run.voice.sentence': ({ sentence }: { sentence: Message }, f) => ended(f.say(sentence)),
  'run.voice.gate': ({ signal, ask }: { signal: Message; ask: Message }, f) =>
    `${ended(f.say(signal))} ${ended(f.say(ask))}`,
  'run.voice.water-waited': 'The boiled water has waited too long: boil it again.',
  'run.voice.timer': ({ timer }: { timer: Message }, f) => ended(f.say(timer)),
  'run.voice.timer-over': ({ timer }: { timer: Message }, f) =>
    `${f.say(timer)}: the time is over.`,
  'run.voice.fault': ({ fault, doThis }: { fault: Message; doThis: readonly Message[] }, f) =>
    [fault, ...doThis].map((line) => ended(f.say(line))).join(' '),
  'run.voice.review': 'Here is where you were.',
  'run.voice.closing': 'Make these safe, then say so.',
  'run.voice.quiet': 'Nothing to do just now.',
} satisfies Section;
