import type { TranslationOf } from '../../model/translation.ts';
import type { summary as english } from '../../english/report/summary.ts';

import type { Formatter } from '../../model/message.ts';
import { ended, unended, type At } from '../../english/report/phrases.ts';
import { range } from './phrases.ts';

/** Weekday, day, month and year: a record is read years later. */
function fullMoment({ wallMs, zone }: At, f: Formatter): string {
  return `${f.date(wallMs, zone)}, ${f.clock(wallMs, zone)}`;
}

/** What somebody gave as the reason, as a sentence of its own. */
function because(reason: string): string {
  return reason === '' ? '' : ` ${ended(reason)}`;
}

/** The name before a colon, or nothing where it is about no one place. */
function at(name: string): string {
  return name === '' ? '' : `${name}: `;
}

function kettlesText(count: number, f: Formatter): string {
  return f.plural(count, {
    one: 'קומקום אחד',
    two: 'שני קומקומים',
    other: `${f.number(count)} קומקומים`,
  });
}

/** The first page of a record: its head, what it lacks, a row a place. */
export const summary: TranslationOf<typeof english> = {
  'report.head.title': ({ kitchen }) => `${kitchen}: מה נעשה`,
  'report.head.begun': (moment, f) => `התחיל: ${fullMoment(moment, f)}`,
  'report.head.ended': ({ outcome, ...moment }, f) =>
    `נגמר: ${fullMoment(moment, f)}, ${f.say(outcome)}`,
  'report.head.stands': ({ outcome, ...moment }, f) =>
    `נכון ל${fullMoment(moment, f)}: ${f.say(outcome)}`,
  'report.verdict': (
    { isOpen, purged, toPurge, notPurged, covered, cleaned, closedUp, notDone },
    f,
  ) => {
    const places = f.plural(toPurge, {
      one: 'מקום אחד',
      two: 'שני מקומות',
      other: `${f.number(toPurge)} מקומות`,
    });
    const main = `${isOpen ? 'עד כה ' : ''}הוכשרו ${f.number(purged)} מתוך ${places}`;
    const not = notPurged.length === 0 ? '' : `; לא הוכשר: ${f.list(notPurged)}`;
    const others = [
      ...(covered === 0 ? [] : [`כוסו או רופדו ${f.number(covered)}`]),
      ...(cleaned === 0 ? [] : [`נוקו ${f.number(cleaned)}`]),
      ...(closedUp === 0 ? [] : [`נסגרו ${f.number(closedUp)}`]),
    ];
    const beside = others.length === 0 ? '' : ` מלבד זאת: ${others.join(', ')}.`;
    const undone = notDone.length === 0 ? '' : ` לא הושלם: ${f.list(notDone)}.`;
    return `${main}${not}.${beside}${undone}`;
  },
  'report.app': ({ app }) => `הביצוע התחיל ב-Glowpour ${app}.`,
  'report.digest': ({ digest }) => `תמצית הביצוע: ${digest}.`,
  'report.digest.check':
    'אלה 16 הספרות הראשונות של SHA-256 של קובץ הביצוע השמור. הביאו את הקובץ בכל טאבלט: התיעוד שלו מראה אותן ספרות. הן שונות אם שונתה ולו רשומה אחת.',

  'report.section.lacks': 'הושמט, נעצר או בספק',
  'report.section.answers': 'שאלות ותשובות',
  'report.lack.none': 'דבר ממה שתוכנן לא הושמט, לא נעצר ולא נשאר בספק.',
  'report.lack.steps': ({ name, steps, many, planned, outcome, reason }, f) => {
    const named = steps.map((step) => `"${unended(f.say(step))}"`);
    const more = many - steps.length;
    const what = more <= 0 ? f.list(named) : `${named.join(', ')} ועוד ${f.number(more)}`;
    const share = planned === 0 ? '' : `לא הוכשר (${f.number(many)} מתוך ${f.number(planned)}). `;
    return `${at(name)}${share}${what}: ${f.say(outcome)}.${because(f.say(reason))}`;
  },
  'report.section.utensils': 'כלים',
  'report.utensils.line': ({ told, items }, f) =>
    `${f.say(told)} ${f.list(items.map((item) => f.say(item)))}.`,
  'report.lack.utensils': ({ step, items, outcome, reason }, f) =>
    `${f.list(items.map((item) => f.say(item)))}: לא הוכשרו. "${unended(f.say(step))}": ${f.say(outcome)}.${because(f.say(reason))}`,
  'report.lack.rest': ({ name, provedS, neededS, outcome, reason }, f) =>
    `${name}: השבתה: ${f.say(outcome)}${neededS === 0 ? '' : `, מוכח ${f.duration(provedS, 'down')} מתוך ${f.duration(neededS, 'down')}`}.${because(f.say(reason))}`,
  'report.lack.hold': ({ name, label, provedS, neededS, isShort, unproved, wordS, why }, f) => {
    const told = [
      ...(isShort
        ? [`מוכח ${f.duration(provedS, 'down')} מתוך ${f.duration(neededS, 'down')}`]
        : []),
      ...(wordS === 0 ? [] : [`${f.duration(wordS, 'down')} לפי דברי אדם`]),
      ...(unproved ? ['איש לא ראה מה קרה בפער'] : []),
    ];
    return `${name}: ${f.say(label)}, ${told.join('; ')}.${because(why.join('; '))}`;
  },
  'report.lack.unreached': ({ name, areaCm2 }, f) =>
    `${name}: ${f.measure(areaCm2, 'cm²')} מחוץ להישג היד ולא קיבלו עירוי.`,
  'report.lack.cold': ({ name, poured, cold }, f) =>
    `${name}: מים קרים אושרו אחרי ${f.number(cold)} מתוך ${f.number(poured)} קומקומים.`,
  'report.lack.overridden': ({ name, ask, reason }, f) =>
    `${at(name)}"${f.say(ask)}" נעקף.${because(reason)}`,
  'report.lack.fault': ({ name, fault, wallMs, zone, end }, f) =>
    `${at(name)}${f.say(fault)}, ${f.dateTime(wallMs, zone)}. ${f.say(end)}`,
  'report.lack.questions': ({ count }, f) =>
    `${f.plural(count, { one: 'שאלה אחת הייתה פתוחה', two: 'שתי שאלות היו פתוחות', other: `${f.number(count)} שאלות היו פתוחות` })} כשהתוכנית הוכנה; ננקטה הדרך המחמירה.`,
  'report.lack.gaps': ({ count, unprovedS }, f) =>
    `הטאבלט היה כבוי, ישן או שעונו כוון ${f.plural(count, { one: 'פעם אחת', two: 'פעמיים', other: `${f.number(count)} פעמים` })}, יחד ${f.duration(unprovedS, 'down')}.`,
  'report.lack.alarms': ({ late, silent }, f) =>
    `התראות: ${f.number(late)} נאמרו באיחור, ${f.number(silent)} לא יכלו להישמע.`,
  'report.lack.storage': ({ lengthS }, f) => `במשך ${f.duration(lengthS)} אי אפשר היה לכתוב דבר.`,

  'report.said-about': ({ name, said }, f) => `${name}: ${f.say(said)}`,
  'report.said-row': ({ names, method, minutes, saidBy, saidOn, why }, f) =>
    `${f.list(names)}: מפי ${saidBy}, ${saidOn}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} דק׳` : ''}. ${ended(why)}`.trim(),
  'report.unanswered': ({ fixture, ask, untilThen }, f) =>
    `${fixture}: ${f.say(ask)} לא נענה. תוכנן: ${ended(f.say(untilThen))}`,

  'report.row.method': ({ method, isMeant, cover, term }, f) =>
    `${isMeant ? 'תוכנן: ' : ''}${f.say(method)}${term ? ` (${f.say(term)})` : ''}${cover ? ', ואחר כך כיסוי' : ''}`,
  'report.row.kettles': ({ poured, planned }, f) =>
    poured === planned
      ? kettlesText(poured, f)
      : `${f.number(poured)} מתוך ${f.plural(planned, { one: 'קומקום אחד', other: `${f.number(planned)} קומקומים` })}`,
  'report.row.heat': ({ label, provedS, times }, f) =>
    `${f.say(label)} ${f.duration(provedS, 'down')}${times === 1 ? '' : times === 2 ? ', פעמיים' : `, ${f.number(times)} פעמים`}`,
  'report.row.by': ({ who }, f) => `בידי ${f.list(who.map((one) => f.say(one)))}`,
  'report.by.lead': 'מי שמוביל את העבודה',
  'report.by.helper': ({ number }, f) => `עוזר ${f.number(number)}`,
  'report.row.when': ({ fromWallMs, toWallMs, zone }, f) =>
    f.day(fromWallMs, zone) === f.day(toWallMs, zone)
      ? `${f.dateTime(fromWallMs, zone)} עד ${f.clock(toWallMs, zone)}`
      : range({ fromWallMs, toWallMs, zone }, f),
  'report.row.rested': ({ provedS, ...times }, f) =>
    `${range(times, f)} (${f.duration(provedS, 'down')})`,
  'report.row.resting': ({ wallMs, zone, provedS }, f) =>
    `מאז ${f.dateTime(wallMs, zone)} (${f.duration(provedS, 'down')})`,
  'report.row.source': ({ source, state }, f) => `${f.say(source)} (${f.say(state)})`,
  'report.row.voided': ({ count }, f) =>
    f.plural(count, {
      one: 'קומקום אחד שלפני כן לא נחשב.',
      other: `${f.number(count)} קומקומים שלפני כן לא נחשבו.`,
    }),
  'report.row.question': 'השאלה עליו הייתה פתוחה: ראו למטה.',
};
