import type { TranslationOf } from '../../model/translation.ts';
import type { voice as english } from '../../english/run/voice.ts';

/** Ends what is spoken, so that the voice pauses after it. */
function ended(text: string): string {
  const line = text.trim();
  return /[.!?:]$/u.test(line) ? line : `${line}.`;
}

/** What is spoken. */
export const voice: TranslationOf<typeof english> = {
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
