import type { TranslationOf } from '../../model/translation.ts';
import type { standing as english } from '../../english/report/standing.ts';

/** What holds whatever was done, and the entries of a calendar. */
export const standing: TranslationOf<typeof english> = {
  'report.standing.customs':
    'המנהגים שונים. התוכנית הולכת לפי המנהג שבחרתם; דברי הרב שלכם באים במקומה.',
  'report.standing.no-ruling':
    'התיעוד מספר מה תוכנן ומה אישרו אנשים. הוא לא פוסק: שאלו את הרב אם די בכך.',
  'report.standing.clock':
    'השעות הן לפי שעון הטאבלט. היכן שהזמן נשען על דברי אדם, התיעוד אומר זאת.',
  'report.standing.manuals': 'הוראות היצרן והתקנות המקומיות קודמות לתוכנית.',
  'report.standing.trades': 'עבודות גז, חשמל ואינסטלציה הן לבעלי רישיון.',
  'report.standing.no-guarantee': 'אין ערבות לבטיחות. בעת הצורך התקשרו למספר החירום המקומי.',

  'report.calibration.burner': ({ burner }) => `מבער ${burner}`,

  'report.event.rest-over': ({ name }, f) => `ההשבתה נגמרה: ${f.say(name)}`,
  'report.event.rest-text':
    'עד אז אין להשתמש בו בחום; ספק מתחיל את ההשבתה מחדש. השעון של הביצוע קובע, לא הרישום הזה.',
  'report.event.purge': 'הכשרה',
  'report.event.purge-of': ({ names }) => `הכשרה: ${names.join(', ')}`,
  'report.event.purge-of-more': ({ names, more }, f) =>
    `הכשרה: ${names.join(', ')} ועוד ${f.number(more)}`,
  'report.event.method': ({ name, method }, f) => `${name}: ${f.say(method)}`,
  'report.event.stay': 'זמנים משוערים. מישהו נשאר לידו כל הזמן.',
};
