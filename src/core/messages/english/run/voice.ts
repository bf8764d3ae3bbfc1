import type { Message, Section } from '../../model/message.ts';

/** Ends what is spoken, so that the voice pauses after it. */
function ended(text: string): string {
  const line = text.trim();
  return /[.!?:]$/u.test(line) ? line : `${line}.`;
}

/** What is spoken. */
export const voice = {
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
