import type { Message, Section } from '../../model/message.ts';

/** The part of the Plan that holds the sheets, and how one is chosen. */
export const page = {
  'sheets.choose': 'Sheets to print or to send',
  'sheets.print': 'Print this sheet',
  'sheets.send': 'Send it',
  'sheets.copy': 'Copy it as text',
  'sheets.copied': 'Copied.',
  'sheets.not-copied': 'This browser did not copy it.',
  'sheets.working': 'Working it out…',
  'sheets.failed': ({ why }: { why: Message }, f) => `It could not be worked out. ${f.say(why)}`,
  'sheets.name.labels': 'Labels',
  'sheets.name.rabbi': 'For the rabbi',
  'sheets.name.covers': 'Covers to cut',
  'sheets.name.utensils': 'Utensils',
  'sheets.name.shopping': 'To buy',
  'sheets.name.door': 'For the door',
} satisfies Section;
