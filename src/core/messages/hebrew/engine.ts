import type { TranslationOf } from '../model/translation.ts';
import type { engine as english } from '../english/engine.ts';

/** What the run engine says: why something cannot be, and what to do instead. */
export const engine: TranslationOf<typeof english> = {
  'engine.halted.drafting': 'הביצוע לא התחיל.',
  'engine.halted.held': 'הביצוע מושהה.',
  'engine.halted.suspended': 'הביצוע נעצר בגלל תקלה.',
  'engine.halted.reviewing': 'קודם אמרו מה קרה בזמן שהיישום נעדר.',
  'engine.halted.closing': 'הביצוע נעצר עכשיו.',
  'engine.halted.closed': 'הביצוע סגור.',

  'engine.step.ends-by-itself': 'הקטע הזה נגמר לפי השעון שלו.',
  'engine.step.not-due': 'הזמן עוד לא נגמר.',
  'engine.step.cold-first': 'כאן נשפכו מים רותחים. אשרו קודם את המים הקרים.',
  'engine.step.hot': 'זה חם. עצרו את השלב והביאו אותו למצב בטוח.',
  'engine.step.went-on': ({ step }, f) => `האם "${f.say(step)}" המשיך בלי הפסקה?`,
  'engine.step.make-safe': ({ step }, f) => `הביאו למצב בטוח: "${f.say(step)}".`,
  'engine.step.make-safe-cold': ({ makeSafe, cold }, f) => `${f.say(makeSafe)} ${f.say(cold)}`,
  'engine.step.pour-now': 'שפכו עכשיו: בסוף הזמן המים קרים מדי',
  'engine.step.use-within': ({ step }, f) => `השתמשו בתוך הזמן הזה אחרי "${f.say(step)}"`,

  'engine.because.nothing-heated': 'דבר לא חומם.',
  'engine.because.heated-again': 'מחממים שוב.',
  'engine.because.all-settled': 'כל השלבים הוכרעו.',
  'engine.because.stopped': 'נעצר.',
  'engine.because.paused': 'הושהה.',
  'engine.because.interrupted': 'נקטע ואי אפשר לחזור עליו.',
  'engine.because.broke-off': 'נפסק.',
  'engine.because.nobody-saw': 'איש לא ראה אם נפסק.',
  'engine.because.doubt': 'היה בשימוש או שנגעו בו.',
  'engine.because.answer-withdrawn': 'תשובה על השעון בוטלה.',

  'engine.need.open': ({ step }, f) => `קודם: "${f.say(step).replace(/\.$/, '')}".`,
  'engine.need.undone': ({ step }, f) =>
    `"${f.say(step)}" לא הושלם. חזרו עליו, או דלגו עליו עם נימוק.`,
  'engine.need.left-out': ({ step }, f) => `"${f.say(step)}" הושמט. חזרו עליו, או השמיטו גם את זה.`,
  'engine.need.late': ({ step }, f) => `עבר יותר מדי זמן מאז "${f.say(step)}". חזרו עליו קודם.`,

  'engine.rest-day.inside': ({ day }, f) => `עכשיו ${f.say(day)}. עד שיסתיים לא מתחילים שום עבודה.`,
  'engine.rest-day.reaches': ({ day }, f) =>
    `זה לא ייגמר לפני תחילת ${f.say(day)}. התחילו אחרי סיום ${f.say(day)}.`,

  'engine.deadline.inside': ({ deadline }, f) =>
    `המועד עבר: ${f.say(deadline)}. כבר לא מכשירים דבר.`,
  'engine.deadline.reaches': ({ deadline }, f) => `זה לא ייגמר לפני המועד: ${f.say(deadline)}.`,

  'engine.gate.settling': ({ say, leftMin }, f) =>
    `חכו ${f.number(leftMin)} דק׳ עד שיתייצב: ${f.say(say)}`,
  'engine.gate.answered-no': ({ ask }, f) => `נענה בשלילה: ${f.say(ask)}`,
  'engine.gate.confirm-first': ({ ask }, f) => `אשרו קודם: ${f.say(ask)}`,
  'engine.gate.danger': 'זה שומר מפני מוות או פגיעה קשה. אי אפשר לעקוף.',
  'engine.gate.undescribed': ({ id }) => `התוכנית לא מתארת את שאלת הבטיחות "${id}".`,

  'engine.resource.too-few': ({ name, unit, wanted, capacity }, f) =>
    `דרוש ${f.say(name)}: ${f.shortNumber(wanted)} ${f.say(unit)}; יש ${f.shortNumber(capacity)}.`,
  'engine.resource.hands': ({ steps }, f) =>
    `כל הידיים עסוקות: ${f.list(steps.map((step) => `"${f.say(step)}"`))}.`,
  'engine.resource.burners': ({ lit }, f) =>
    `הגעתם למספר המבערים המרבי: ${f.plural(lit, { one: 'אחד דולק', other: `${f.number(lit)} דולקים` })}.`,
  'engine.resource.place': ({ name, steps }, f) =>
    `ליד עירוי אין דבר חם, ודבר לא פועל על המשטח. ב־${f.say(name)} עדיין יש ${f.list(steps.map((step) => `"${f.say(step)}"`))}.`,
  'engine.resource.watch': ({ steps }, f) =>
    `אין לערות ולהשגיח על מבער בבת אחת. חכו עד סוף ${f.list(steps.map((step) => `"${f.say(step)}"`))}, או שמישהו אחר ישגיח ולא יעשה דבר אחר.`,
  'engine.resource.in-use': ({ name, steps }, f) =>
    `${f.say(name)} בשימוש: ${f.list(steps.map((step) => `"${f.say(step)}"`))}.`,
  'engine.resource.taken': ({ name, unit, used, capacity, steps }, f) =>
    `${f.say(name)}: ${f.shortNumber(used)} מתוך ${f.shortNumber(capacity)} ${f.say(unit)} תפוסים: ${f.list(steps.map((step) => `"${f.say(step)}"`))}.`,

  'engine.fault.undefined': 'משהו השתבש',
  'engine.fault.undefined.off': 'כבו את מה שחם.',
  'engine.fault.undefined.write': 'כתבו מה קרה.',
  'engine.fault.undefined.go-on': 'המשיכו כשתוקן.',
  'engine.storage.down': 'אי אפשר לכתוב דבר עכשיו.',
  'engine.storage.no-progress':
    'אי אפשר לכתוב דבר עכשיו, ולכן דבר לא ממשיך. פנו מקום או ייצאו את היומן.',
};
