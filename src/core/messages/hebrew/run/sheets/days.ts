import type { TranslationOf } from '../../../model/translation.ts';
import type { days as english } from '../../../english/run/sheets/days.ts';

/** When hands are free, what runs until when, and the sheet of one clock. */
export const days: TranslationOf<typeof english> = {
  'run.days.free': ({ from, until }, f) => `הידיים פנויות: ${f.say(from)} עד ${f.say(until)}.`,
  'run.days.free-now': ({ until }, f) => `הידיים פנויות עכשיו, עד ${f.say(until)}.`,
  'run.days.all-over': ({ at }, f) => `סיום משוער: ${f.say(at)}.`,
  'run.days.at.today': ({ wallMs, zone }, f) => `היום ${f.clock(wallMs, zone)}`,
  'run.days.at.tonight': ({ wallMs, zone }, f) => `הלילה ${f.clock(wallMs, zone)}`,
  'run.days.at.tomorrow': ({ wallMs, zone }, f) => `מחר ${f.clock(wallMs, zone)}`,
  'run.days.at.weekday': ({ wallMs, zone }, f) => f.moment(wallMs, zone),
  'run.days.by-itself': 'מה פועל בעצמו',
  'run.days.until': 'עד מתי',
  'run.days.wait': ({ label, names }, f) =>
    names.length === 0
      ? f.say(label)
      : `${f.say(label)}: ${names.map((name) => f.say(name)).join(', ')}`,
  'run.days.waits': ({ waits }, f) => waits.map((wait) => f.say(wait)).join('; '),
  'run.meanwhile': 'בינתיים: לאכול, לשטוף, לחמם',
  'run.meanwhile.need.eat': 'לאכול',
  'run.meanwhile.need.wash': 'לשטוף',
  'run.meanwhile.need.heat': 'להרתיח ולחמם',
  'run.meanwhile.free': ({ names }, f) => `הוכשר או כוסה: ${f.list(names)}.`,
  'run.meanwhile.before': ({ names }, f) => `כמו קודם, עד הניקוי: ${f.list(names)}.`,
  'run.meanwhile.cold': ({ names }, f) =>
    `קר בלבד; שימוש חם אחד וההשבתה מתחילה שוב: ${f.list(names)}.`,
  'run.meanwhile.not-now': ({ names }, f) => `לא עכשיו, חם או בעבודה: ${f.list(names)}.`,
  'run.meanwhile.elsewhere': 'כאן אסור לחמם דבר: הרתיחו מים ובשלו במקום אחר.',
  'run.meanwhile.leaven': 'מה שהוכשר או כוסה הוא לפסח: בלי חמץ עליו.',
  'run.meanwhile.ask': 'זה נאמר לפי מצבו של כל מקום. איזה אוכל יכול להיות שם, אומר המנהג שלכם.',
  'run.days.in': ({ leftS }, f) => `בעוד ${f.duration(leftS)}`,
  'run.days.rest-day': ({ day, from, to }, f) =>
    `${f.say(day)}, ${f.say(from)} עד ${f.say(to)}: אז דבר לא נדרש מכם, ודבר לא נשמע.`,
  'run.days.deadline': ({ name, when }, f) => `${f.say(name)}: ${f.say(when)}`,
  'run.days.deadline-passed': ({ name, when }, f) => `${f.say(name)}: ${f.say(when)}. כבר עבר.`,
  'run.days.work.region': 'מה הידיים יכולות לעשות',
  'run.days.work': 'מה אפשר לעשות ומתי',
  'run.days.work.about':
    'הזמנים המוקדמים ביותר, לפי מה שכל שלב ממתין לו; לידיים ייתכן שיידרש יותר.',
  'run.days.work.line': ({ work, steps }, f) =>
    steps === 1
      ? f.say(work)
      : `${f.say(work)}, ${f.plural(steps, { two: 'שני שלבים', other: `${f.number(steps)} שלבים` })}`,
  'run.days.work.at': ({ phase, name }, f) => `${f.say(phase)}: ${name}`,
  'run.days.work.from': ({ wallMs, zone }, f) => `מ־${f.clock(wallMs, zone)}`,
  'run.days.work.more': ({ count }, f) => `ועוד ${f.number(count)}`,
  'run.days.now': 'עכשיו',
  'run.days.next': 'אחרי מה שבידיים',
  'run.days.today': 'היום',
  'run.days.tonight': 'הלילה',
  'run.days.tomorrow': 'מחר',
  'run.days.weekday': ({ wallMs, zone }, f) => f.day(wallMs, zone),

  'run.timer.over-at': ({ label, when }, f) => `${f.say(label)}: עד ${f.say(when)}`,
  'run.timer.over': ({ when, leftS }, f) => `עד ${f.say(when)}, עוד ${f.duration(leftS)}.`,
  'run.timer.was-earlier': 'היה חם לאחרונה מוקדם יותר',
  'run.timer.was-used': 'היה בשימוש',
  'run.timer.last-hot': 'היה חם לאחרונה בשעה',
  'run.timer.last-hot.why': 'איך אתם יודעים? זה נכנס לתיעוד.',
  'run.timer.last-hot.about':
    'רק אם אתם בטוחים. ניקוי חם נחשב לשימוש חם. בספק השאירו את ההשבתה כמות שהיא.',
  'run.timer.last-hot.press': 'לספור מאז',
  'run.timer.used.about': 'השבתת 24 השעות מתחילה שוב, ומה שבא אחריה נעשה שוב.',
  'run.timer.used.press': 'להתחיל שוב את ההשבתה',
};
