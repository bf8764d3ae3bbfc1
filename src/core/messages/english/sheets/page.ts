import type { Section } from '../../model/message.ts';

/** The part of the Plan that holds the sheets, and how one is chosen. */
export const page = {
  'sheets.choose': 'Sheets to print or to send',
  'sheets.print': 'Print this sheet',
  'sheets.send': 'Send it',
  'sheets.copy': 'Copy it as text',
  'sheets.copied': 'Copied.',
  'sheets.not-copied': 'This browser did not copy it.',
  'sheets.working': 'Working it out…',
  'sheets.failed': ({ why }: { why: string }) => `It could not be worked out: ${why}`,
  'sheets.name.labels': 'Labels',
  'sheets.name.rabbi': 'For the rabbi',
} satisfies Section;
