import type { TranslationOf } from '../../model/translation.ts';
import type { page as english } from '../../english/run/page.ts';

/** Round the step: what the device promises, and what else can be pressed. */
export const page: TranslationOf<typeof english> = {
  'run.light.sound.armed': 'הצליל מוכן',
  'run.light.sound.touch-to-arm': 'געו כדי להפעיל את הצליל',
  'run.light.sound.blocked': 'הצליל חסום',
  'run.light.sound.unknown': 'מצב הצליל לא ידוע',
  'run.light.sound.elsewhere': 'הצליל בא מהדף האחר',
  'run.light.wake.held': 'המסך נשאר דולק',
  'run.light.wake.lost': 'המסך עלול להיכבות',
  'run.light.wake.not-supported': 'בטלו את הנעילה האוטומטית בזמן העבודה',
  'run.light.other-lead': 'דף אחר מוביל את הביצוע',
  'run.arm': 'געו כדי להפעיל את הצליל',
  'run.arm.region': 'צליל',
  'run.arm.about': 'אחרי הפעלה מחדש הטאבלט שותק עד שנוגעים בו פעם אחת.',
  'run.arm.calling': ({ timer, state }, f) => `${f.say(timer)}, ${f.say(state)}`,

  'run.side': 'לצד השלב',
  'run.pause': 'השהיה',
  'run.resume': 'להמשיך',
  'run.ran-out': 'נגמרו המים כאן',
  'run.happened': 'קרה משהו',
  'run.steps': ({ done, of }) => `שלבים ${done}/${of}`,
  'run.settings': 'הגדרות',
  'run.until-when': 'עד מתי',
  'run.back': 'חזרה',
  'run.alarm-failed': ({ timer }, f) => `ההתראה של "${f.say(timer)}" לא הושמעה: עקבו אחר המסך.`,

  'run.alarm-failed.no-audio': 'לדפדפן הזה אין שעון שמע.',
  'run.alarm-failed.no-gesture': 'איש לא נגע בדף מאז שנפתח, ולכן הדפדפן לא מרשה צליל.',
  'run.alarm-failed.no-sounds': 'אי אפשר היה לטעון את קובצי הצליל.',
  'run.alarm-failed.interrupted': 'שיחה או יישום אחר תופסים את הרמקול.',
  'run.alarm-failed.suspended': 'המכשיר עצר את הצליל.',
  'run.alarm-failed.stuck': 'שעון השמע עומד.',
  'run.alarm-failed.other': 'אי אפשר היה להשמיע את הצליל.',
  'run.written-anew':
    'היומן השמור נמחק מבחוץ בזמן הביצוע. הדף כתב אותו שוב, בשלמותו, ממה שהיה בזיכרונו.',
};
