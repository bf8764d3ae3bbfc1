import type { Message, Section } from '../../model/message.ts';

/** The part of the Plan that holds the handouts, and how one is chosen. */
export const page = {
  'handouts.choose': 'Handouts to print or to send',
  'handouts.print': 'Print this sheet',
  'handouts.send': 'Send it',
  'handouts.copy': 'Copy it as text',
  'handouts.copied': 'Copied.',
  'handouts.not-copied': 'This browser did not copy it.',
  'handouts.working': 'Working it out…',
  'handouts.failed': ({ why }: { why: Message }, f) => `It could not be worked out. ${f.say(why)}`,
  'handouts.name.labels': 'Labels',
  'handouts.name.rabbi': 'For the rabbi',
  'handouts.name.covers': 'Covers to cut',
  'handouts.name.utensils': 'Utensils',
  'handouts.name.shopping': 'To buy',
  'handouts.name.door': 'For the door',
} satisfies Section;
