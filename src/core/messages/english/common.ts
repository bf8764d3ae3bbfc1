import type { Section } from '../model/message.ts';

/** Words that every place shares. */
export const common = {
  'common.as-written': ({ text }: { text: string }) => text,

  'common.phase.prepare': 'Prepare',
  'common.phase.clean': 'Clean',
  'common.phase.rest': 'Rest',
  'common.phase.purge': 'Purge',
  'common.phase.cool': 'Cool',
  'common.phase.cover': 'Cover',
  'common.phase.mark': 'Mark',

  'common.designation.meat': 'Meat',
  'common.designation.dairy': 'Dairy',
  'common.designation.pareve': 'Pareve (neutral)',
  'common.designation.undecided': 'Not decided',

  /** The hour, with its day where that is not today. */
  'common.when': ({ wallMs, nowMs, zone }: { wallMs: number; nowMs: number; zone: string }, f) =>
    f.day(wallMs, zone) === f.day(nowMs, zone)
      ? f.clock(wallMs, zone)
      : f.shortMoment(wallMs, zone),
  /** What a field of date and time means; of a day alone. */
  'common.moment': ({ wallMs, zone }: { wallMs: number; zone: string }, f) =>
    f.moment(wallMs, zone),
  'common.day': ({ wallMs, zone }: { wallMs: number; zone: string }, f) => f.date(wallMs, zone),
  /** What is left, as a clock shows it: from an hour up, and below. */
  'common.countdown.hours': ({ hours, minutes }: { hours: number; minutes: number }) =>
    `${hours} h ${String(minutes).padStart(2, '0')} min`,
  'common.countdown.minutes': ({ minutes, seconds }: { minutes: number; seconds: number }) =>
    `${minutes}:${String(seconds).padStart(2, '0')}`,
  'common.countdown.unit.hours': 'h',
  'common.countdown.unit.minutes': 'min',

  'common.press.short': 'Press a little longer',
  'common.press.no-fingertip': 'Press with one fingertip',

  'common.signal.DANGER': 'DANGER',
  'common.signal.WARNING': 'WARNING',
  'common.signal.CAUTION': 'CAUTION',
  'common.signal.NOTICE': 'NOTICE',
} satisfies Section;
