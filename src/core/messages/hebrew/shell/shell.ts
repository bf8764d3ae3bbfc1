import type { TranslationOf } from '../../model/translation.ts';
import type { shell as english } from '../../english/shell/shell.ts';

/** The frame of the app: pages, banners, what the device refuses, files. */
export const shell: TranslationOf<typeof english> = {
  'shell.title': 'Glowpour',
  'shell.pages': 'מקומות',
  'shell.page.kitchen': 'מטבח',
  'shell.page.plan': 'תוכנית',
  'shell.page.run': 'ביצוע',
  'shell.page.record': 'תיעוד',
  'shell.theme.night': 'צבעי לילה',
  'shell.theme.day': 'צבעי יום',

  'shell.reading': 'קוראים את השמור כאן …',
  'shell.save-run': 'לשמור את הביצוע בקובץ',

  'shell.other-lead': 'דף אחר בטאבלט הזה מוביל את הביצוע.',
  'shell.other-lead.took-over': 'דף אחר לקח את הביצוע לידיו.',
  'shell.other-lead.beating': 'הוא מוביל, כותב ומשמיע; הדף הזה רק מראה את הביצוע.',
  'shell.other-lead.unsure':
    'לא נשמע ממנו דבר ברגע זה; הדף הזה רק מראה את הביצוע, ומשמיע את מה שהגיע זמנו.',
  'shell.other-lead.silent': 'הוא כבר לא עונה. הדף הזה משמיע את מה שהגיע זמנו; אפשר להוביל מכאן.',
  'shell.other-lead.arm': 'געו כדי להפעיל את הצליל',
  'shell.other-lead.lead': 'להוביל מכאן',
  'shell.other-lead.only-shows':
    'דף אחר מוביל את הביצוע; הדף הזה רק מראה. קודם קחו את ההובלה לכאן.',

  'shell.trouble.storage': 'לא נשמר.',
  'shell.trouble.read-only': 'תצוגה בלבד.',
  'shell.trouble.taken-over': 'תצוגה בלבד.',
  'shell.trouble.unreadable': 'אי אפשר לקרוא כעת את מה ששמור. היישום לא מחק דבר.',
  'shell.broken': 'חלק זה של המסך נכשל. השעונים וההתראות ממשיכים.',
  'shell.broken.note': ({ part, why }) => `המסך לא הצליח להציג חלק שלו (${part}): ${why}`,
  'shell.failed.note': ({ why }) => `משהו ביישום נכשל: ${why}`,
  'shell.broken.again': 'להציג שוב',
  'shell.trouble.failed': 'משהו ביישום נכשל.',
  'shell.taken-over': 'דף אחר לקח את הביצוע לידיו. הדף הזה רק מראה אותו.',

  'shell.storage.full': 'אין מקום פנוי במכשיר: פנו מקום, או שמרו את הביצוע בקובץ.',
  'shell.storage.refused': 'הדפדפן לא מרשה לדף לשמור דבר: צאו ממצב פרטי, או עדכנו אותו.',
  'shell.storage.blocked': 'לשונית אחרת מחזיקה מסד נתונים ישן: סגרו אותה וטענו מחדש.',
  'shell.storage.held':
    'דף אחר של היישום נתקע באמצע כתיבה, ואי אפשר לקרוא או לכתוב לצידו: סגרו אותו, או את כל הדפדפן, ונסו שוב.',
  'shell.storage.timeout': 'המכשיר לא ענה בזמן: נסו שוב, או טענו את הדף מחדש.',
  'shell.storage.lost': 'מסד הנתונים נסגר מבחוץ: נסו שוב, או טענו את הדף מחדש.',
  'shell.storage.gone': 'הביצוע השמור נעלם: נתוני הדפדפן נמחקו. שמרו עכשיו את הביצוע בקובץ.',
  'shell.storage.fenced': 'דף אחר כותב עכשיו את הביצוע. הדף הזה רק מראה אותו.',
  'shell.storage.out-of-order': 'מה שהיה אמור להיכתב אינו המשך של מה ששמור: טענו את הדף מחדש.',
  'shell.storage.unknown': ({ why }) =>
    `המכשיר לא הצליח לכתוב או לקרוא: נסו שוב, או שמרו את הביצוע בקובץ. (${why})`,
  'shell.failed': ({ why }) => `היישום נכשל בפעולה הזאת: נסו שוב, או טענו את הדף מחדש. (${why})`,
  'shell.choice-not-kept': ({ why }, f) =>
    `הבחירה תקפה עד שהדף ייסגר; אי אפשר היה לשמור אותה. ${f.say(why)}`,
};
