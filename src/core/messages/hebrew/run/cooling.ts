import type { TranslationOf } from '../../model/translation.ts';
import type { cooling as english } from '../../english/run/cooling.ts';

/**
 * Somebody is burned: what to do, one thing a sentence, in order. Sources: ANZCOR
 * Guideline 9.1.3 and others, in shared/sources/safety.json (burn-first-aid).
 */
export const cooling: TranslationOf<typeof english> = {
  'cautions.fault.burned.line-1': 'החזיקו את הכווייה מיד תחת מים קרירים זורמים, 20 דקות.',
  'cautions.fault.burned.line-2': 'הסירו טבעות, שעונים ובגדים רטובים; אל תקלפו מה שנדבק.',
  'cautions.fault.burned.line-3': 'אל תמרחו ואל תניחו עליה דבר: לא קרח, לא חמאה, לא משחה.',
  'cautions.fault.burned.line-4': 'שמרו את שאר הגוף חם ויבש.',
  'cautions.fault.burned.line-5':
    'אחרי 20 דקות הניחו עליה ברפיון ניילון נצמד או בד נקי; אל תכרכו סביב.',

  'run.cooling.title': 'קררו את הכווייה',
  'run.cooling.title-over': 'עכשיו כסו את הכווייה',
  'run.cooling.since': ({ when }, f) => `תחת מים מאז ${f.say(when)}`,
  'run.cooling.call': ({ number }) => `התקשרו עכשיו אל ${number} אם:`,
  'run.cooling.call-local': 'התקשרו עכשיו למספר החירום המקומי אם:',
  'run.cooling.doctor': ({ number }) => `צריך רופא? התקשרו אל ${number} אם:`,
  'run.cooling.doctor-local': 'צריך רופא? התקשרו למספר החירום המקומי אם:',
  'run.cooling.call.where': 'היא בפנים, ביד, במפרק או באיברי המין',
  'run.cooling.call.large': 'היא גדולה מכף היד של הנפגע',
  'run.cooling.call.age': 'הנפגע הוא ילד או קשיש',
  'run.cooling.call.deep': 'העור לבן, שחור או חרוך',
  'run.cooling.call.cause': 'היא נגרמה מחשמל (נתקו אותו קודם) או מחומר כימי',
  'run.cooling.call.breath': 'קשה לנשום, או שנשאף עשן',
  'run.cooling.go-on': 'המשיכו לקרר בזמן השיחה וההמתנה.',
  'run.cooling.may-be-over':
    'הטאבלט לא עקב אחרי כל הזמן הזה. אם עברו 20 דקות תחת מים זורמים, אשרו זאת.',
  'run.cooling.cooled': 'קורר 20 דקות, וכוסה',
  'run.cooling.early': 'לסיים את השעון מוקדם',
  'run.cooling.otherwise': 'הסתיים אחרת',
  'run.cooling.early.why': 'למה השעון מסתיים? זה נכנס לתיעוד.',
  'run.cooling.taken-over': 'רופא או אמבולנס קיבל את הטיפול',
  'run.cooling.mistake': 'הופעל בטעות: איש לא נכווה',
  'run.cooling.keep': 'להמשיך לקרר',
};
