import type { Message, Section } from '../model/message.ts';

/** Days on which no work is done. */
export const calendar = {
  'calendar.day.sabbath': 'Sabbath',
  'calendar.day.passover': 'Passover',
  'calendar.day.passover-last': 'Passover, last days',
  'calendar.day.rosh-hashana': 'Rosh Hashana',
  'calendar.day.shavuot': 'Shavuot',
  'calendar.day.shemini-atzeret': 'Shemini Atzeret',
  'calendar.day.simchat-torah': 'Simchat Torah',
  'calendar.day.sukkot': 'Sukkot',
  'calendar.day.yom-kippur': 'Yom Kippur',
  'calendar.days': ({ days }: { days: readonly Message[] }, f) =>
    f.list(days.map((day) => f.say(day))),
} satisfies Section;
