import type { voice as english } from '../../english/run/voice.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Ends what is spoken, so that the voice pauses after it. */
function ended(text: string): string {
  const line = text.trim();
  return /[.!?:]$/u.test(line) ? line : `${line}.`;
}

/** What is spoken. */
export const voice: TranslationOf<typeof english> = {
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
