import type { calendar as english } from '../english/calendar.ts';
import type { TranslationOf } from '../model/translation.ts';

/** Days on which no work is done. */
export const calendar: TranslationOf<typeof english> = {
  'calendar.day.sabbath': 'Chabbat',
  'calendar.day.passover': 'Pessah',
  'calendar.day.passover-last': 'Pessah, derniers jours',
  'calendar.day.rosh-hashana': 'Roch Hachana',
  'calendar.day.shavuot': 'Chavouot',
  'calendar.day.shemini-atzeret': 'Chemini Atseret',
  'calendar.day.simchat-torah': 'Simhat Torah',
  'calendar.day.sukkot': 'Souccot',
  'calendar.day.yom-kippur': 'Yom Kippour',
  'calendar.days': ({ days }, f) => f.list(days.map((one) => f.say(one))),
};
