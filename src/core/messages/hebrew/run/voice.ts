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
    'שע׳': { one: 'שעה אחת', two: 'שעתיים', other: '# שעות' },
    'דק׳': { one: 'דקה אחת', two: 'שתי דקות', other: '# דקות' },
    'שנ׳': { one: 'שנייה אחת', two: 'שתי שניות', other: '# שניות' },
    ליטר: { one: 'ליטר אחד', two: 'שני ליטר', other: '# ליטר' },
    'מ״ל': { one: 'מיליליטר אחד', other: '# מיליליטר' },
    'מ״מ': { one: 'מילימטר אחד', other: '# מילימטר' },
    'ס״מ': { one: 'סנטימטר אחד', other: '# סנטימטר' },
    'מ׳': { one: 'מטר אחד', two: 'שני מטר', other: '# מטר' },
    'מ״ר': { one: 'מטר רבוע אחד', other: '# מטר רבוע' },
    'מ״ק': { one: 'מטר מעוקב אחד', other: '# מטר מעוקב' },
    'ק״ג': { one: 'קילוגרם אחד', other: '# קילוגרם' },
    'קו״ט': { one: 'קילוואט אחד', other: '# קילוואט' },
    'קוט״ש': { one: 'קילוואט שעה אחת', other: '# קילוואט שעה' },
    '°C': { one: 'מעלת צלזיוס אחת', two: 'שתי מעלות צלזיוס', other: '# מעלות צלזיוס' },
    '°F': { one: 'מעלת פרנהייט אחת', two: 'שתי מעלות פרנהייט', other: '# מעלות פרנהייט' },
    'אינץ׳': { one: 'אינץ אחד', other: '# אינץ' },
    '%': { one: 'אחוז אחד', two: 'שני אחוזים', other: '# אחוזים' },
  },
  words: {
    '½': 'חצי',
    '¼': 'רבע',
    '¾': 'שלושה רבעים',
    CO: 'פחמן חד־חמצני',
    '×': 'כפול',
  },
  to: 'עד',
};

/** What is spoken. */
export const voice: TranslationOf<typeof english> = {
  'run.voice.aloud': ({ text }, f) => wholeWords(text, f, signs),
  'run.voice.sentence': ({ sentence }, f) => ended(f.say(sentence)),
  'run.voice.gate': ({ signal, ask }, f) => `${ended(f.say(signal))} ${ended(f.say(ask))}`,
  'run.voice.water-waited': 'המים הרותחים המתינו יותר מדי: הרתיחו שוב.',
  'run.voice.timer': ({ timer }, f) => ended(f.say(timer)),
  'run.voice.timer-over': ({ timer }, f) => `${f.say(timer)}: הזמן נגמר.`,
  'run.voice.fault': ({ fault, doThis }, f) =>
    [fault, ...doThis].map((line) => ended(f.say(line))).join(' '),
  'run.voice.review': 'כאן עצרתם.',
  'run.voice.closing': 'הביאו את אלה למצב בטוח, ואשרו.',
  'run.voice.quiet': 'אין מה לעשות כרגע.',
};
