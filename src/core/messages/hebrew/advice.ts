import type { TranslationOf } from '../model/translation.ts';
import type { advice as english } from '../english/advice.ts';

import type { Formatter } from '../model/message.ts';

type Saved = {
  readonly endS: number;
  readonly inTime: boolean;
  readonly spanS: number;
  readonly kettles: number;
  readonly kWh: number;
};

/** Less than this is no difference to a person, s. */
const S_MINUTE = 60;
/** Nearer to the plan than this is as planned, s. */
const AS_PLANNED_S = 300;
/** Energy is told where its first decimal shows, kWh. */
const LEAST_KWH = 0.05;

/** Never more sure than it is. */
function often(chance: number, f: Formatter): string {
  const percent = Math.floor(chance * 100);
  if (percent >= 99) return 'כמעט תמיד';
  return percent < 1 ? 'כמעט אף פעם' : `${f.number(percent)} פעמים מתוך 100`;
}

/** To the minute: a saving is no measurement. */
function inMinutes(lengthS: number, f: Formatter): string {
  return f.duration(Math.round(lengthS / S_MINUTE) * S_MINUTE);
}

function kettlesText(kettles: number, f: Formatter): string {
  const many = Math.abs(kettles);
  const word = f.plural(many, {
    one: 'קומקום אחד',
    two: 'שני קומקומים',
    other: `${f.number(many)} קומקומים`,
  });
  return `${word} ${kettles > 0 ? 'פחות' : 'יותר'}`;
}

function savedText({ endS, inTime, spanS, kettles, kWh }: Saved, f: Formatter): string {
  const parts = [
    ...(inTime ? ['עומד במועד'] : []),
    ...(endS >= S_MINUTE ? [`מסתיים ${inMinutes(endS, f)} מוקדם יותר`] : []),
    ...(endS < S_MINUTE && spanS >= S_MINUTE ? [`אותו סיום, קצר ב־${inMinutes(spanS, f)}`] : []),
    ...(kettles === 0 ? [] : [kettlesText(kettles, f)]),
    ...(Math.abs(kWh) < LEAST_KWH
      ? []
      : [`${f.number(Math.abs(kWh), 1)} קוט״ש ${kWh > 0 ? 'פחות' : 'יותר'}`]),
  ];
  return parts.join('; ');
}

/** What would help a plan, and how sure its end is. */
export const advice: TranslationOf<typeof english> = {
  'advice.title': ({ kitchen }) => `מה יעזור: ${kitchen}`,
  'advice.heading': 'מה יעזור',
  'advice.about': 'כל אחד מתוכנן שוב עם השינוי האחד הזה. הם לא מצטברים: קחו אחד, ואז הביטו שוב.',
  'advice.trying': ({ done, of }, f) => `תוכנית ${f.number(done)} מתוך ${f.number(of)} …`,
  'advice.stop': 'לעצור',
  'advice.none': 'דבר ממה שנוסה לא משפר את התוכנית.',
  'advice.more': ({ many, triage }, f) =>
    `עוד ${f.number(many)}${triage ? ', ומה עוד אפשר להספיק' : ''}`,
  'advice.take': 'לקחת',
  'advice.take.last-hot': 'כך הוא',
  'advice.take.said': 'לומר מי החליט',
  'advice.taken': ({ change }, f) => `נלקח. ${f.say(change)}`,
  'advice.undo': 'ביטול',
  'advice.line': ({ change, saved }, f) => `${f.say(change)} ${f.say(saved)}`,
  'advice.saves': (saved, f) => `${savedText(saved, f)}.`,

  'advice.vessel.kettle': 'קומקום שני',
  'advice.vessel.stove-kettle': 'קומקום על הכיריים',
  'advice.vessel.urn': 'מיחם',
  'advice.change.kettle': ({ on, count }, f) =>
    `${count > 1 ? `${f.number(count)} קומקומים` : 'קומקום שני'}${on === '' ? '' : `, מחובר אל: ${on}`}.`,
  'advice.change.stove-kettle': ({ on }) =>
    `קומקום, או סיר שאפשר לערות ממנו, על מבער שכבר הוכשר אז: ${on}.`,
  'advice.change.urn': 'מיחם.',
  'advice.change.people': ({ people }, f) => `עוד אדם אחד: בסך הכול ${f.number(people)}.`,
  'advice.change.start': ({ wallMs, zone }, f) => `להתחיל ב${f.moment(wallMs, zone)}.`,
  'advice.change.last-hot': ({ wallMs, zone }, f) =>
    `אם לא היה כאן שימוש חם מאז ${f.moment(wallMs, zone)}: ההשבתות נספרות מאז.`,
  'advice.change.answer': ({ fixture, answer }, f) => `${fixture}, אם התשובה היא: ${f.say(answer)}`,
  'advice.change.cover': ({ fixture }) => `${fixture}: מכוסה, לא מוכשר. שאלו קודם.`,
  'advice.change.close': ({ fixture }) => `${fixture}: סגור ולא בשימוש, לא מוכשר.`,

  'advice.in-vain': ({ what }, f) =>
    `נוסה, ולא חוסך דבר: ${what.map((one) => f.say(one)).join('; ')}.`,
  'advice.kind.kettle': 'קומקום שני',
  'advice.kind.stove-kettle': 'קומקום על מבער שהוכשר',
  'advice.kind.urn': 'מיחם (מה שנשאב ממנו הוא בכלי שני, ולכן אין מערים ממנו)',
  'advice.kind.people': 'עוד אדם אחד',
  'advice.kind.start': 'התחלה בשעה אחרת',
  'advice.kind.last-hot': 'השימוש החם האחרון',
  'advice.kind.answer': 'תשובה לשאלה',
  'advice.kind.cover': 'כיסוי במקום הכשרה',

  'advice.decided': ({ links }, f) =>
    `הארוך ביותר בדרך לסוף: ${links.map((one) => f.say(one)).join('; ')}.`,

  'advice.outlook': ({ wallMs, zone, aheadS, about }, f) => {
    const end = `העבודה מסתיימת ${about ? 'בערך ' : ''}ב${f.moment(wallMs, zone)}.`;
    if (Math.abs(aheadS) < AS_PLANNED_S) return `כמתוכנן, ${end}`;
    const by = inMinutes(Math.abs(aheadS), f);
    return `אתם ${aheadS > 0 ? 'מקדימים את התוכנית' : 'מאחרים אחרי התוכנית'} ב־${by}; ${end}`;
  },

  'advice.sure.heading': 'עד כמה הסוף בטוח',
  'advice.sure.moment': ({ endWallMs, wallMs, zone }, f) =>
    `מתוכנן להסתיים ב${f.moment(endWallMs, zone)}; בתשעה מקרים מעשרה, לא אחרי ${f.moment(wallMs, zone)}.`,
  'advice.sure.after': ({ endS, lengthS }, f) =>
    `מתוכנן להסתיים אחרי ${f.duration(endS)}; בתשעה מקרים מעשרה, לכל היותר אחרי ${f.duration(lengthS, 'up')}.`,
  'advice.sure.due': ({ chance, isSure }, f) =>
    `${isSure ? '' : 'צפוף: '}עומד במועד ${often(chance, f)}.`,
  'advice.sure.rest-day': ({ day, wallMs, zone, chance, last, beginByWallMs }, f) =>
    `צפוף: מה שמתוכנן לפני ${f.say(day)}, ${f.moment(wallMs, zone)}, נגמר עד אז ${often(chance, f)}. האחרון לפני כן: ${f.say(last).replace(/\.$/, '')}; התחילו אותו עד ${f.moment(beginByWallMs, zone)}, או השאירו אותו לאחר כך.`,
  'advice.sure.rests-on': ({ plays }, f) =>
    `לפי ${f.number(plays)} הרצות של התוכנית בידיים איטיות ומהירות; תקלות והפסקות אינן כלולות.`,

  'advice.triage.heading': 'מה עוד אפשר להספיק',
  'advice.triage.kept': ({ fixtures }) => `לפי הסדר: ${fixtures.join('; ')}.`,
  'advice.triage.none': 'שום דבר שמוכשר.',
  'advice.triage.utensils': 'כלים: להניח בצד נעולים, ולהכשיר בפעם אחרת.',
  'advice.triage.closed': ({ fixtures }) =>
    `מכוסה או סגור עד שיהיה זמן: ${fixtures.join('; ')}. שאלו קודם.`,
};
