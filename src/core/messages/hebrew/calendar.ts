import type { TranslationOf } from '../model/translation.ts';
import type { calendar as english } from '../english/calendar.ts';

/** Days on which no work is done. */
export const calendar: TranslationOf<typeof english> = {
  'calendar.day.sabbath': 'שבת',
  'calendar.day.passover': 'פסח',
  'calendar.day.passover-last': 'פסח, ימים אחרונים',
  'calendar.day.rosh-hashana': 'ראש השנה',
  'calendar.day.shavuot': 'שבועות',
  'calendar.day.shemini-atzeret': 'שמיני עצרת',
  'calendar.day.simchat-torah': 'שמחת תורה',
  'calendar.day.sukkot': 'סוכות',
  'calendar.day.yom-kippur': 'יום כיפור',
  'calendar.days': ({ days }, f) => f.list(days.map((day) => f.say(day))),
};
