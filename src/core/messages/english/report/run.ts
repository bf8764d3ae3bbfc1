import type { Message, Section } from '../../model/message.ts';
import { ended, type At } from './phrases.ts';

/** The head of a record: whose kitchen, how the run stands, what its parts are called. */
export const run = {
  'report.title': ({ kitchen }: { kitchen: string }) => `Record: ${kitchen}`,
  'report.purpose': ({ purpose }: { purpose: Message }, f) => `Purpose: ${f.say(purpose)}`,
  'report.custom': ({ custom }: { custom: Message }, f) => `Custom: ${f.say(custom)}`,
  'report.planned': ({ wallMs, zone }: At, f) =>
    `Planned: ${f.dateTime(wallMs, zone)}. Not started.`,
  'report.started': ({ wallMs, zone }: At, f) => `Started: ${f.dateTime(wallMs, zone)}`,
  'report.stands': ({ wallMs, zone, outcome }: At & { outcome: Message }, f) =>
    `As it stands: ${f.dateTime(wallMs, zone)}, ${f.say(outcome)}.`,
  'report.closed': ({ wallMs, zone, outcome }: At & { outcome: Message }, f) =>
    `Closed: ${f.dateTime(wallMs, zone)}, ${f.say(outcome)}.`,
  'report.reason': ({ reason }: { reason: Message }, f) => `Reason: ${ended(f.say(reason))}`,
  'report.run.completed': 'completed',
  'report.run.failed': 'failed',
  'report.run.stopped': 'stopped before its end',
  'report.run.open': 'still going on',

  'report.section.general': 'Without a place of their own',
  'report.section.not-done': 'Not done',
  'report.section.not-done-yet': 'Not done yet',
  'report.section.overridden': 'Confirmations overridden for the whole run',
  'report.section.faults': 'Faults of no one place',
  'report.section.gaps': 'Gaps',
  'report.section.asked': 'Asked after gaps',
  'report.section.late': 'Told late',
  'report.section.silent': 'Alarms that could not sound',
  'report.section.paused': 'Paused',
  'report.section.storage': 'Nothing could be written down',
  'report.section.notes': 'Notes',
  'report.section.questions': 'Open when the plan was made',
  'report.section.assumed': 'Taken as usual, since nobody told',
  'report.section.standing': 'What stands whatever was done',
} satisfies Section;
