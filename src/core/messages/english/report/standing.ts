import type { Message, Section } from '../../model/message.ts';

/** What holds whatever was done, and the entries of a calendar. */
export const standing = {
  'report.standing.customs':
    'Customs differ. This plan follows the custom you chose; your rabbi’s word replaces it.',
  'report.standing.no-ruling':
    'This record tells what was planned and what people confirmed. It gives no ruling: ask your rabbi whether it suffices.',
  'report.standing.clock':
    'Times are those of the tablet’s clock. Where time rests on a person’s word, the record says so.',
  'report.standing.manuals': 'The maker’s manual and the local codes come before this plan.',
  'report.standing.trades': 'Gas, electrical and plumbing work is for licensed people.',
  'report.standing.no-guarantee':
    'No guarantee of safety is given. In need call the local emergency number.',

  'report.calibration.burner': ({ burner }: { burner: string }, f) => `${f.capital(burner)} burner`,

  'report.event.rest-over': ({ name }: { name: Message }, f) => `Rest over: ${f.say(name)}`,
  'report.event.rest-text':
    'Until then do not use it hot; a doubt begins the rest anew. The clock of the run decides, not this entry.',
  'report.event.purge': 'Purge',
  'report.event.purge-of': ({ names }: { names: readonly string[] }) =>
    `Purge: ${names.join(', ')}`,
  'report.event.purge-of-more': ({ names, more }: { names: readonly string[]; more: number }, f) =>
    `Purge: ${names.join(', ')} and ${f.number(more)} more`,
  'report.event.method': ({ name, method }: { name: string; method: Message }, f) =>
    `${name}: ${f.say(method)}`,
  'report.event.stay': 'Expected times. Somebody stays with it all the time.',
} satisfies Section;
