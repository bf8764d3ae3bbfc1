import type { TranslationOf } from '../model/translation.ts';
import type { planCourse as english } from '../english/plan-course.ts';

import type { Formatter } from '../model/message.ts';

const S_DAY = 86_400;
const S_HOUR = 3600;
const S_MINUTE = 60;

type Moment = { wallMs: number; zone: string };

/** Day, part of the day and hour. */
function when({ wallMs, zone }: Moment, f: Formatter): string {
  const clock = f.clock(wallMs, zone);
  const hour = Number(clock.slice(0, 2));
  const weekday = f.weekday(wallMs, zone);
  if (hour < 5) return `${weekday} לפנות בוקר ${clock}`;
  const part = hour < 12 ? 'בבוקר' : hour < 18 ? 'אחר הצהריים' : hour < 23 ? 'בערב' : 'בלילה';
  return `${weekday} ${part} ${clock}`;
}

/** A second moment without its day where that is the same. */
function until(wallMs: number, { wallMs: fromWallMs, zone }: Moment, f: Formatter): string {
  const isSame = f.day(wallMs, zone) === f.day(fromWallMs, zone);
  return isSame ? f.clock(wallMs, zone) : when({ wallMs, zone }, f);
}

/** The longer, the rounder. */
function lengthText(lengthS: number, f: Formatter): string {
  const days = Math.floor(lengthS / S_DAY);
  if (days >= 4) return `${f.number(days)} ימים`;
  return f.duration(lengthS - (lengthS % (lengthS < S_DAY ? S_MINUTE : S_HOUR)), 'down');
}

/** The course of a plan: its picture, its head, and the step that is pressed. */
export const planCourse: TranslationOf<typeof english> = {
  'plan-page.course.about':
    'מהלך התוכנית: מי עושה מה, ומה מושבת, מתחמם ומתקרר. מקשי החיצים עוברים מפס לפס, Enter פותח אחד. רשימת השלבים שלמטה אומרת אותו דבר.',
  'plan-page.course.day': ({ wallMs, zone }, f) => f.day(wallMs, zone),
  'plan-page.course.weekday': ({ wallMs, zone }, f) => f.weekday(wallMs, zone),
  'plan-page.course.short-weekday': ({ wallMs, zone }, f) => f.shortWeekday(wallMs, zone),
  'plan-page.course.hour': ({ wallMs, zone }, f) => f.clock(wallMs, zone),
  'plan-page.course.part.morning': 'בוקר',
  'plan-page.course.part.afternoon': 'אחר הצהריים',
  'plan-page.course.part.evening': 'ערב',
  'plan-page.course.part.night': 'לילה',
  'plan-page.course.does.prepare': 'מתכוננים',
  'plan-page.course.does.clean': 'מנקים',
  'plan-page.course.does.water': 'מערים',
  'plan-page.course.does.heat': 'מחממים',
  'plan-page.course.does.finish': 'מסיימים',
  'plan-page.course.until': (at, f) => `עד ${when(at, f)}`,
  'plan-page.course.until.weekday': ({ wallMs, zone }, f) =>
    `עד ${f.weekday(wallMs, zone)} ${f.clock(wallMs, zone)}`,
  'plan-page.course.until.short': ({ wallMs, zone }, f) => `עד ${f.shortMoment(wallMs, zone)}`,
  'plan-page.course.until.rest': (at, f) => `מושבת עד ${when(at, f)}`,
  'plan-page.course.until.thaw': (at, f) => `מפשיר עד ${f.clock(at.wallMs, at.zone)}`,
  'plan-page.course.until.heat': (at, f) => `חם עד ${f.clock(at.wallMs, at.zone)}`,
  'plan-page.course.until.cool': (at, f) => `מתקרר עד ${f.clock(at.wallMs, at.zone)}`,
  'plan-page.course.until.water': ({ wallMs, fromWallMs, zone }, f) =>
    `מים ${f.clock(fromWallMs, zone)} עד ${f.clock(wallMs, zone)}`,
  'plan-page.course.bar': ({ who, what, more, toWallMs, ...from }, f) =>
    `${who === '' ? '' : `${who}: `}${f.say(what)}${more > 0 ? ` ועוד ${f.number(more)}` : ''}, ${when(from, f)} עד ${until(toWallMs, from, f)}`,
  'plan-page.course.steps': ({ many }, f) => `${f.number(many)} שלבים של עבודה אחת`,
  'plan-page.course.at': ({ toWallMs, who, ...from }, f) =>
    `${when(from, f)} עד ${until(toWallMs, from, f)}${who === '' ? '' : `, ${who}`}.`,
  'plan-page.course.slack': (at, f) => `דבר לא ממתין לזה לפני ${when(at, f)}.`,
  'plan-page.course.ends': (at, f) => `מסתיים ב${when(at, f)}`,
  'plan-page.course.ends-sure': ({ sureWallMs, ...at }, f) =>
    `מסתיים ב${when(at, f)}; בתשעה מקרים מעשרה, לא אחרי ${until(sureWallMs, at, f)}`,
  'plan-page.course.due': (at, f) => `הסיום עד ${when(at, f)}`,
  'plan-page.course.due-purged': (at, f) => `ההכשרה עד ${when(at, f)}`,
  'plan-page.course.late': ({ lateS }, f) => `מאוחר מדי ב־${lengthText(lateS, f)}`,
  'plan-page.course.key.hands': 'ידיים בעבודה',
  'plan-page.course.key.rest': 'מושבת',
  'plan-page.course.key.heat': 'מתחמם',
  'plan-page.course.key.cool': 'מתקרר',
  'plan-page.course.key.water': 'מים רותחים',
  'plan-page.course.key.thaw': 'מפשיר',
  'plan-page.course.key.watch': 'משגיחים על מה שלוהט',
  'plan-page.course.key.chain': 'קובע את הסוף',
  'plan-page.course.key.slack': 'יכול להימשך יותר',
  'plan-page.course.cut': ({ name, ...at }, f) => `${f.say(name)}, ${when(at, f)}`,
  'plan-page.course.gone': 'כבר אי אפשר',
  'plan-page.course.key.due': 'השעה שעד אליה צריך לסיים',
  'plan-page.course.key.late': 'מאוחר מדי',
  'plan-page.course.key.night': 'לילות וימי מנוחה מצוירים צר יותר.',

  'plan-page.head.ends': ({ wallMs, zone, lengthS }, f) =>
    `מסתיים ב${f.day(wallMs, zone)}, ${f.clock(wallMs, zone)}; ${lengthText(lengthS, f)} מההתחלה.`,
  'plan-page.head.in-time': ({ wallMs, zone, spareS, purge }, f) =>
    `בזמן: מסתיים ב${f.day(wallMs, zone)}, ${f.clock(wallMs, zone)}; ${purge ? 'ההכשרה נגמרת' : 'הכול נגמר'} ${lengthText(spareS, f)} לפני השעה.`,
  'plan-page.head.late': ({ doneWallMs, dueWallMs, zone, lateS, purge }, f) =>
    `מאוחר מדי ב־${lengthText(lateS, f)}: ${purge ? 'ההכשרה נגמרת' : 'הכול נגמר'} ב${f.day(doneWallMs, zone)}, ${f.clock(doneWallMs, zone)}. המועד הוא ${f.day(dueWallMs, zone)}, ${f.clock(dueWallMs, zone)}.`,
  'plan-page.head.cut': ({ name, many, of, ...at }, f) =>
    `מאוחר מדי ל־${f.number(many)} מתוך ${f.plural(of, { one: 'מקום אחד', two: 'שני מקומות', other: `${f.number(of)} מקומות` })}: דבר לא מוכשר אחרי ${f.say(name)}, ${f.day(at.wallMs, at.zone)}, ${f.clock(at.wallMs, at.zone)}.`,
  'plan-page.head.close-up': ({ fixtures }, f) =>
    `כבר אי אפשר. נקו, סגרו ואל תשתמשו בפסח: ${f.list(fixtures)}. שאלו קודם.`,
  'plan-page.head.free': ({ spans, people, more }, f) =>
    `${people > 1 ? 'כולם פנויים' : 'אתם פנויים'} ${f.list(spans.map((one) => f.say(one)))}${more ? ', וגם אחר כך' : ''}.`,
  'plan-page.head.why': 'למה, ומה זה אומר',
  'plan-page.head.free.span': ({ toWallMs, ...from }, f) =>
    `מ${when(from, f)} עד ${until(toWallMs, from, f)}`,
  'plan-page.head.never-free': 'אין שעות פנויות ארוכות בין השלב הראשון לאחרון.',
};
