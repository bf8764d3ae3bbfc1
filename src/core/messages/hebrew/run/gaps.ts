import type { TranslationOf } from '../../model/translation.ts';
import type { gaps as english } from '../../english/run/gaps.ts';

/** After an interruption, on a rest day, and when there is nothing to do: each comes with its screen. */
export const gaps: TranslationOf<typeof english> = {
  'run.clock': 'השעון',
  'run.clock.ask': ({ wallMs, zone }, f) => `האם עכשיו ${f.moment(wallMs, zone)}?`,
  'run.clock.yes': ({ wallMs, zone }, f) => `כן, עכשיו ${f.moment(wallMs, zone)}`,
  'run.clock.yes-passed': ({ missingS }, f) => `כן, ו־${f.duration(missingS)} אלה עברו`,
  'run.clock.yes-set': 'כן, אבל השעון כוון מחדש',
  'run.clock.no': 'לא',
  'run.clock.unknown': 'איש לא יודע',
  'run.clock.about': 'הטאבלט ישן או שהשעון שלו שונה. הזמן החסר נספר רק אחרי שתאשרו.',
  'run.last-hot.ask': ({ name, wallMs, zone }, f) =>
    `${f.say(name)}: השימוש החם האחרון היה ב${f.moment(wallMs, zone)}, או לפני כן?`,
  'run.last-hot.about':
    'מים חמים, אוכל חם וניקוי חם – הכול נחשב. רק אם אתם בטוחים: ההשבתה תיספר מאז.',
  'run.last-hot.yes': ({ wallMs, zone }, f) => `כן, ועכשיו ${f.moment(wallMs, zone)}`,
  'run.last-hot.no': 'לא, או שאיש לא יודע: ההשבתה מתחילה עכשיו',
  'run.last-hot.reason': 'נאמר לפני הביצוע, ושוב כשהיה נקי.',
  'run.last-hot.no-reason': 'השימוש החם האחרון היה מאוחר ממה שנאמר, או שאיש לא יודע.',
  'run.clock.really': 'מה השעה באמת?',
  'run.clock.right': 'זאת השעה הנכונה',
  'run.clock.right-passed': ({ missingS }, f) => `זה נכון, ועברו ${f.duration(missingS)}`,
  'run.clock.right-set': 'זה נכון, אבל השעון כוון מחדש',

  'run.review': 'מה קרה בינתיים',
  'run.review.title': 'כאן עצרתם',
  'run.review.away': ({ step, gapS }, f) => {
    const title = f.say(step);
    return `${title.endsWith('.') ? title : `${title}.`} הטאבלט נעדר ${f.duration(gapS)}.`;
  },
  'run.review.away-only': ({ gapS }, f) => `הטאבלט נעדר ${f.duration(gapS)}.`,
  'run.review.went-on': 'כן, ראיתי',
  'run.review.broke-off': 'לא, זה נפסק',
  'run.review.unknown': 'איש לא ראה',

  'run.quiet': 'אין מה לעשות כרגע',
  'run.quiet.none': 'אף שלב לא יכול להתחיל.',
  'run.quiet.about':
    'אל תשתמשו בחום במה שמושבת. צאו, ישנו, חזרו: השעונים ממשיכים, ומה שהגיע זמנו בינתיים נאמר מיד.',

  'run.rest-day': 'יום מנוחה',
  'run.rest-day.title': 'נוחו. דבר לא נדרש מכם.',
  'run.rest-day.until': ({ when }, f) =>
    `הביצוע ממתין, ודבר לא נשמע, עד ${f.say(when)}. מה שיגיע זמנו בינתיים ייאמר אחר כך.`,
  'run.rest-day.wait': ({ waits, when }, f) => `${f.say(waits)}, עד ${f.say(when)}`,
  'run.rest-day.hot': 'עדיין חם:',
  'run.rest-day.danger': 'סכנת חיים קודמת לכול: התקשרו למספר החירום המקומי.',
  'common.other-zone': ({ wallMs, zone, tabletZone }, f) =>
    `כל השעות הן של המטבח, ושם עכשיו ${f.shortMoment(wallMs, zone)}. הטאבלט מכוון לאזור זמן אחר ומראה ${f.shortMoment(wallMs, tabletZone)}.`,
};
