import type { TranslationOf } from '../../model/translation.ts';
import type { files as english } from '../../english/problems/files.ts';

/** Files, imports and kept kitchens that cannot be read: told on the pages beside the run. */
export const files: TranslationOf<typeof english> = {
  'shell.calibration-not-read': ({ why }, f) =>
    `אי אפשר היה לקרוא את מה שלימדו ביצועים קודמים, ולכן התוכנית בלעדיו. ${f.say(why)}`,
  'shell.kitchens-not-read': ({ why }, f) =>
    `אי אפשר היה לקרוא את המטבחים השמורים כאן. ${f.say(why)}`,

  'shell.unread': 'עוד לא ידוע',
  'shell.unread.about':
    'ייתכן שביצוע שמור כאן: הוא יימשך מעצמו ברגע שאפשר יהיה לקרוא אותו. אם זה נמשך, סגרו דפים אחרים של היישום, ואחר כך הפעילו מחדש את הדפדפן ואת הטאבלט. בינתיים אפשר לתכנן מטבח, אבל דבר ממנו לא יישמר.',

  'shell.file.too-large': ({ name, bytes, mostBytes }) =>
    `בקובץ ${name} יש ${bytes} בתים; מותר: עד ${mostBytes}. בחרו קובץ קטן יותר.`,
  'shell.file.unreadable': ({ name, why }) => `אי אפשר לקרוא את ${name} (${why}). בחרו אותו שוב.`,
  'shell.import.not-whole': ({ seq, problem }, f) =>
    `דבר לא הובא: הקובץ לא שלם ברשומה ${seq}. ${f.say(problem)} שמרו שוב את הביצוע בטאבלט השני, ובחרו את הקובץ ההוא.`,
  'shell.import.no-plan': 'הקובץ לא מתחיל בתוכנית. בחרו אחר.',
  'shell.import.plan': ({ problem }) =>
    `לא בטוח ללכת לפי התוכנית שבקובץ: ${problem}. הכינו את התוכנית מחדש.`,
  'shell.import.amendment': 'אי אפשר לקרוא שינוי בתוכנית שבקובץ. הכינו את התוכנית מחדש.',
  'shell.import.records': ({ found, most }, f) =>
    `בקובץ ${f.number(found)} רשומות; מותר: עד ${f.number(most)}. בחרו קובץ שהיישום הזה שמר.`,
  'shell.import.steps': ({ found, most }, f) =>
    `בתוכנית שבקובץ ${f.number(found)} שלבים; מותר: עד ${f.number(most)}. הכינו את התוכנית מחדש.`,
  'shell.import.more': ({ more }, f) => `בתוכנית שבקובץ עוד ${f.number(more)} תקלות כאלה.`,
  'shell.import.stranger': ({ seq, name }) =>
    `רשומה ${seq} בקובץ מספרת על "${name}", שאין בביצוע שלה. שמרו שוב את הביצוע בטאבלט השני, ובחרו את הקובץ ההוא.`,
  'shell.import.open-run': ({ open }) =>
    `הביצוע שבקובץ לא סגור, וכאן פתוח הביצוע "${open}"; מותר: ביצוע פתוח אחד. סגרו אותו קודם, ואז הביאו את הקובץ.`,
  'shell.kitchen.both-kept': ({ name, copy }) =>
    `"${name}" השתנה בינתיים בדף אחר, וזה נשאר כך. מה ששונה כאן נשמר בשם "${copy}".`,
  'shell.recheck.run-open': 'ביצוע פתוח. אמרו זאת שם, דרך "קרה משהו", או סגרו אותו קודם.',
  'shell.plan.beyond-models': ({ why }) => `אי אפשר להכין תוכנית: ${why}`,
};
