import type { TranslationOf } from '../../model/translation.ts';
import type { times as english } from '../../english/report/times.ts';

import { ended } from '../../english/report/phrases.ts';
import { range } from './phrases.ts';

/** Gaps, answers, late alarms, and what was assumed. */
export const times: TranslationOf<typeof english> = {
  'report.gap.not-running': ({ unprovedS, ...times }, f) =>
    `${range(times, f)}: היישום לא פעל, ${f.duration(unprovedS, 'down')}.`,
  'report.gap.torn': ({ count }, f) =>
    f.plural(count, {
      one: 'רשומה אחת שנכתבה בחלקה הושמטה.',
      two: 'שתי רשומות שנכתבו בחלקן הושמטו.',
      other: `${f.number(count)} רשומות שנכתבו בחלקן הושמטו.`,
    }),
  'report.gap.slept-or-set': ({ unprovedS, ...times }, f) =>
    `${range(times, f)}: הטאבלט ישן או ששעונו הוקדם, ${f.duration(unprovedS, 'down')}.`,
  'report.gap.set-back': ({ unprovedS, toWallMs, zone }, f) =>
    `עד ${f.dateTime(toWallMs, zone)}: שעון הטאבלט הוזז לאחור ב־${f.duration(unprovedS, 'down')}.`,
  'report.clock-asked': ({ wallMs, zone, answer }, f) =>
    `האם הטאבלט מראה את השעה הנכונה (${f.dateTime(wallMs, zone)})? ${f.say(answer)}.`,
  'report.review-asked': ({ step, gapS, ask, answer }, f) =>
    `${f.say(step)}, פער של ${f.duration(gapS, 'down')}: ${f.say(ask)} ${f.say(answer)}.`,
  'report.answer.none': 'לא נענה',
  'report.answer': ({ answer, wallMs, zone }, f) =>
    `${f.say(answer)}, נענה ב${f.dateTime(wallMs, zone)}`,
  'report.answer.clock-right': 'כן',
  'report.answer.clock-wrong': 'לא, השעה הנכונה לא ידועה',
  'report.answer.clock-corrected': ({ wallMs, zone }, f) =>
    `לא, השעה הייתה ${f.dateTime(wallMs, zone)}`,
  'report.answer.went-on': 'זה המשיך',
  'report.answer.broke-off': 'זה נפסק',
  'report.answer.unknown': 'איש לא ראה',
  'report.late': ({ step, timer, lateByS, wallMs, zone }, f) =>
    `${f.say(step)}: "${f.say(timer)}" נאמר באיחור של ${f.duration(lateByS, 'down')}, ${f.dateTime(wallMs, zone)}.`,
  'report.silent': ({ step, timer, text, wallMs, zone }, f) =>
    `${f.dateTime(wallMs, zone)}: ${f.say(step)}, "${f.say(timer)}". ${ended(text)}`,
  'report.paused': (times, f) => `${range(times, f)}.`,
  'report.paused-since': ({ wallMs, zone }, f) => `מאז ${f.dateTime(wallMs, zone)}.`,
  'report.storage': ({ text, ...times }, f) => `${range(times, f)}: ${ended(text)}`,
  'report.storage-since': ({ wallMs, zone, text }, f) =>
    `מאז ${f.dateTime(wallMs, zone)}: ${ended(text)}`,
  'report.note': ({ wallMs, zone, text }, f) => `${f.dateTime(wallMs, zone)}: ${ended(text)}`,
  'report.question': ({ fixture, ask, untilThen }, f) =>
    `${fixture}: ${f.say(ask)} עד אז: ${ended(f.say(untilThen))}`,

  'report.assumed': ({ what, taken }, f) => `${f.say(what)}: ${ended(f.say(taken))}`,
  'report.assumed.filled': ({ value, why }, f) => `${value} (${f.say(why)})`,
  'report.assumed.place': 'מקום',
  'report.assumed.no-place': 'לא נמסר: ימי המנוחה לא חושבו',
  'report.assumed.material': ({ fixture }) => `${fixture}: חומר`,
  'report.assumed.condition': ({ fixture }) => `${fixture}: מצב`,
  'report.assumed.stricter': 'לא נמסר: תוכננה השיטה המחמירה',
  'report.assumed.cycle': ({ fixture }) => `${fixture}: אורך מחזור הניקוי העצמי`,
  'report.assumed.usual-cycle': 'לא נמסר: תוכנן האורך המקובל',
};
