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
  'run.voice.water-waited': 'El agua hervida esperó demasiado: hiérvala de nuevo.',
  'run.voice.timer': ({ timer }, f) => ended(f.say(timer)),
  'run.voice.timer-over': ({ timer }, f) => `${f.say(timer)}: el tiempo ha terminado.`,
  'run.voice.fault': ({ fault, doThis }, f) =>
    [fault, ...doThis].map((line) => ended(f.say(line))).join(' '),
  'run.voice.review': 'Aquí se había quedado.',
  'run.voice.closing': 'Deje esto seguro y después dígalo.',
  'run.voice.quiet': 'Ahora no hay nada que hacer.',
};
