import type { Section } from '../model/message.ts';

/** Words that every place shares. */
export const common = {
  'common.as-written': ({ text }: { text: string }) => text,

  'common.method.glow': 'Heat to glow',
  'common.method.light-heat': 'Heat at the highest setting',
  'common.method.self-clean': 'Full self-clean cycle',
  'common.method.pour': 'Pour boiling water',
  'common.method.immerse': 'Immerse in boiling water',
  'common.method.steam': 'Boil water inside',
  'common.method.boil-over': 'Boil over the rim',
  'common.method.clean': 'Clean thoroughly',
  'common.method.line': 'Clean and line',
  'common.method.cover': 'Cover',
  'common.method.not-purged': 'Not purged: keep it out of use',
  'common.method.replace': 'Replace',

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
  'common.other-zone': (
    { wallMs, zone, tabletZone }: { wallMs: number; zone: string; tabletZone: string },
    f,
  ) =>
    `All times are those of the kitchen, where it is ${f.shortMoment(wallMs, zone)}. This tablet is set to another zone and would show ${f.shortMoment(wallMs, tabletZone)}.`,
  'common.when': ({ wallMs, nowMs, zone }: { wallMs: number; nowMs: number; zone: string }, f) =>
    f.day(wallMs, zone) === f.day(nowMs, zone)
      ? f.clock(wallMs, zone)
      : f.shortMoment(wallMs, zone),
  /** What is left, as a clock shows it: from an hour up, and below. */
  'common.countdown.hours': ({ hours, minutes }: { hours: number; minutes: number }) =>
    `${hours} h ${String(minutes).padStart(2, '0')} min`,
  'common.countdown.minutes': ({ minutes, seconds }: { minutes: number; seconds: number }) =>
    `${minutes}:${String(seconds).padStart(2, '0')}`,
  'common.countdown.unit.hours': 'h',
  'common.countdown.unit.minutes': 'min',

  'common.press.short': 'Press a little longer',
  'common.press.no-fingertip': 'Press with one fingertip',

  'common.resource.hands': 'Hands',
  'common.resource.burners-lit': 'Burners lit',
  'common.resource.watch': 'Eyes',
  'common.resource.unit.shares': 'shares',
  'common.resource.unit.people': 'people',
  'common.resource.unit.burners': 'burners',
  'common.resource.unit.kettles': 'kettles',
  'common.resource.unit.amperes': 'A',

  'common.signal.DANGER': 'DANGER',
  'common.signal.WARNING': 'WARNING',
  'common.signal.CAUTION': 'CAUTION',
  'common.signal.NOTICE': 'NOTICE',
} satisfies Section;
