import type { TranslationOf } from '../../model/translation.ts';
import type { run as english } from '../../english/report/run.ts';

import { ended } from '../../english/report/phrases.ts';

/** The head of a record: whose kitchen, how the run stands, what its parts are called. */
export const run: TranslationOf<typeof english> = {
  'report.title': ({ kitchen }) => `תיעוד: ${kitchen}`,
  'report.purpose': ({ purpose }, f) => `מטרה: ${f.say(purpose)}`,
  'report.custom': ({ custom }, f) => `מנהג: ${f.say(custom)}`,
  'report.planned': ({ wallMs, zone }, f) => `תוכנן: ${f.dateTime(wallMs, zone)}. לא התחיל.`,
  'report.started': ({ wallMs, zone }, f) => `התחיל: ${f.dateTime(wallMs, zone)}`,
  'report.stands': ({ wallMs, zone, outcome }, f) =>
    `המצב כעת: ${f.dateTime(wallMs, zone)}, ${f.say(outcome)}.`,
  'report.closed': ({ wallMs, zone, outcome }, f) =>
    `נסגר: ${f.dateTime(wallMs, zone)}, ${f.say(outcome)}.`,
  'report.reason': ({ reason }, f) => `נימוק: ${ended(f.say(reason))}`,
  'report.run.completed': 'הושלם',
  'report.run.failed': 'נכשל',
  'report.run.stopped': 'נעצר לפני סופו',
  'report.run.open': 'עדיין מתנהל',

  'report.section.general': 'בלי מקום משלו',
  'report.section.not-done': 'לא בוצע',
  'report.section.not-done-yet': 'עוד לא בוצע',
  'report.section.overridden': 'אישורים שנעקפו לכל הביצוע',
  'report.section.faults': 'תקלות בלי מקום מסוים',
  'report.section.gaps': 'פערים',
  'report.section.asked': 'נשאל אחרי פערים',
  'report.section.late': 'נאמר באיחור',
  'report.section.silent': 'התראות שלא יכלו להישמע',
  'report.section.paused': 'הושהה',
  'report.section.storage': 'אי אפשר היה לכתוב דבר',
  'report.section.notes': 'הערות',
  'report.section.questions': 'פתוח כשהתוכנית הוכנה',
  'report.section.assumed': 'נלקח כמקובל, כי לא נמסר',
  'report.section.standing': 'מה שתקף בכל מקרה',
};
