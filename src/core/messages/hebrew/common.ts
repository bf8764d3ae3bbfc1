import type { TranslationOf } from '../model/translation.ts';
import type { common as english } from '../english/common.ts';

/** Words that every place shares. */
export const common: TranslationOf<typeof english> = {
  'common.as-written': ({ text }) => text,

  'common.phase.prepare': 'הכנה',
  'common.phase.clean': 'ניקוי',
  'common.phase.rest': 'השבתה',
  'common.phase.purge': 'הכשרה',
  'common.phase.cool': 'קירור',
  'common.phase.cover': 'כיסוי',
  'common.phase.mark': 'סימון',

  'common.designation.meat': 'בשרי',
  'common.designation.dairy': 'חלבי',
  'common.designation.pareve': 'פרווה',
  'common.designation.undecided': 'עוד לא הוחלט',

  'common.when': ({ wallMs, nowMs, zone }, f) =>
    f.day(wallMs, zone) === f.day(nowMs, zone)
      ? f.clock(wallMs, zone)
      : f.shortMoment(wallMs, zone),
  'common.moment': ({ wallMs, zone }, f) => f.moment(wallMs, zone),
  'common.day': ({ wallMs, zone }, f) => f.date(wallMs, zone),
  'common.countdown.hours': ({ hours, minutes }) =>
    `${hours} שע׳ ${String(minutes).padStart(2, '0')} דק׳`,
  'common.countdown.minutes': ({ minutes, seconds }) =>
    `${minutes}:${String(seconds).padStart(2, '0')}`,
  'common.countdown.unit.hours': 'שע׳',
  'common.countdown.unit.minutes': 'דק׳',

  'common.press.short': 'לחצו מעט יותר זמן',
  'common.press.no-fingertip': 'לחצו בקצה אצבע אחת',

  'common.signal.DANGER': 'סכנה',
  'common.signal.WARNING': 'אזהרה',
  'common.signal.CAUTION': 'זהירות',
  'common.signal.NOTICE': 'לתשומת לב',
};
