import type { TranslationOf } from '../model/translation.ts';
import type { calendar as english } from '../english/calendar.ts';

/** Days on which no work is done. */
export const calendar: TranslationOf<typeof english> = {
  'calendar.day.sabbath': 'Shabat',
  'calendar.day.passover': 'Pésaj',
  'calendar.day.passover-last': 'Pésaj (últimos días)',
  'calendar.day.rosh-hashana': 'Rosh Hashaná',
  'calendar.day.shavuot': 'Shavuot',
  'calendar.day.shemini-atzeret': 'Sheminí Atzéret',
  'calendar.day.simchat-torah': 'Simjat Torá',
  'calendar.day.sukkot': 'Sucot',
  'calendar.day.yom-kippur': 'Yom Kipur',
  'calendar.days': ({ days }, f) => f.list(days.map((day) => f.say(day))),
};
