import type { TranslationOf } from '../../model/translation.ts';
import type { frame as english } from '../../english/shell/frame.ts';

/** Round the pages, where no run is open: what is told above them, and what stands in their place. */
export const frame: TranslationOf<typeof english> = {
  'shell.open-run': 'יש ביצוע פתוח; השעונים שלו ממשיכים.',
  'shell.open-run.back': 'חזרה לביצוע',
  'shell.update': 'גרסה חדשה מוכנה.',
  'shell.update.take': 'להשתמש בה עכשיו',
  'shell.update.run-open': 'יש ביצוע פתוח בטאבלט הזה. אפשר יהיה להשתמש בגרסה החדשה אחרי שייסגר.',
  'shell.lost-run': ({ name, when }, f) => `הביצוע "${name}" (${f.say(when)}) נעלם מהדפדפן הזה.`,
  'shell.lost-run.about':
    'הדפדפן מחק את מה ששמר עבור היישום. אם הביצוע נשמר בקובץ, הביאו אותו דרך "תיעוד". אם לא, רשמו עכשיו מה נעשה ומתי התחילה כל השבתה.',
  'shell.lost-run.dismiss': 'קראתי',
  'shell.put-aside.about':
    'אי אפשר להמשיך כאן את הביצוע הזה. שמרו אותו קודם בקובץ. אם תניחו אותו בצד, הוא ייחשב כמי שהסתיים בתקלה: מה שנרשם בו יישאר כפי שהוא, תחת "תיעוד", ואפשר יהיה להתחיל ביצוע חדש.',
  'shell.put-aside.hot':
    'כבו ביד כל מה שחם: מבערים, תנור, קומקומים. שום לחיצה לא נקלטת כאן, גם לא "עצירה"; אחרי שהביצוע יונח בצד שום דבר לא יאמר מה חם, ושום שעון לא יקרא.',
  'shell.put-aside': 'להניח את הביצוע הזה בצד',
  'shell.put-aside.sure': 'להניח את הביצוע הזה בצד? הוא לא יובל מכאן יותר.',
  'shell.put-aside.keep': 'להשאיר פתוח',
  'shell.put-aside.do': 'להניח בצד',
  'shell.working': 'התוכנית מחושבת …',
  'shell.working.here': 'ייתכן שהדף יעמוד לרגע.',
  'shell.no-page.kitchen': 'עוד אין מטבח',
  'shell.no-page.kitchen.about': 'בחרו קודם מטבח; התוכנית שלו תחושב מיד.',
  'shell.no-page.kitchen.go': 'אל המטבח',
  'shell.no-page.run': 'עוד אין ביצוע',
  'shell.no-page.run.about': 'ביצוע מתחיל מתוכנית של מטבח.',
  'shell.no-page.run.go': 'אל התוכנית',
};
