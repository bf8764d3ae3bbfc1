import type { TranslationOf } from '../../model/translation.ts';
import type { handwork as english } from '../../english/steps/handwork.ts';

import type { Formatter, Message } from '../../model/message.ts';

function untilText(until: Message | undefined, f: Pick<Formatter, 'say'>): string {
  return until ? ` עד ${f.say(until)}` : '';
}

/** Cleaning, resting, covering, marking: what is done without heat. */
export const handwork: TranslationOf<typeof english> = {
  'steps.clean.title': ({ name }, f) => `לנקות: ${f.say(name)}.`,
  'steps.clean.title-vessel': ({ name }, f) => `לנקות ולהסיר אבנית: ${f.say(name)}.`,
  'steps.clean.cold-only': 'מים קרים בלבד, בלי קיטור: הוא כבר מושבת.',
  'steps.clean.sand': 'הסירו בנייר לטש כל חתך ושריטה.',
  'steps.clean.rinse-vessel': 'שטפו היטב, גם את המכסה והפייה.',
  'steps.clean.say': 'זה נקי',

  'steps.unplug.title': ({ name }, f) => `לרוקן ולנתק מהחשמל: ${f.say(name)}.`,
  'steps.unplug.food': 'אוכל לצידנית עם קרחומים; מכסה סגור.',
  'steps.unplug.plug': 'ידיים יבשות, תקע החוצה, קצהו תלוי במקום שאין בו מים.',
  'steps.unplug.towels': 'מגבות ומגש מתחתיו.',
  'steps.unplug.say': 'מנותק',
  'steps.thaw.title': ({ name }, f) => `להניח לקרח להפשיר: ${f.say(name)}.`,
  'steps.thaw.open': 'דלת פתוחה; סחטו מדי פעם את המגבות.',
  'steps.thaw.no-tools': 'הסירו קרח ביד בלבד: לא סכין, לא להבה, לא תנור חימום.',
  'steps.thaw.say': 'אין עוד קרח',
  'steps.thaw.timer': ({ name }, f) => `להציץ בקרח: ${f.say(name)}`,
  'steps.switch-on.title': ({ name }, f) => `להפעיל שוב: ${f.say(name)}.`,
  'steps.switch-on.dry': 'יבשו בפנים, יבשו ידיים, ואז חברו לחשמל.',
  'steps.switch-on.chilled': (_, f) =>
    `האוכל חוזר כשמדחום בפנים מראה ${f.measure(5, '°C')} או פחות.`,
  'steps.switch-on.frozen': (_, f) =>
    `האוכל חוזר כשמדחום בפנים מראה ${f.measure(-15, '°C')} או פחות.`,
  'steps.switch-on.say': 'פועל',

  'steps.rest.title-nothing-hot': ({ name, until }, f) =>
    `${f.say(name)}: שום דבר חם בו או עליו${untilText(until, f)}.`,
  'steps.rest.title-sink': ({ name, until }, f) =>
    `${f.say(name)}: מים קרים בלבד${untilText(until, f)}.`,
  'steps.rest.label': ({ until }, f) =>
    `תלו שלט: לא בשימוש, אין לחמם${until ? ` עד ${f.say(until)}` : ''}.`,
  'steps.rest.detail': 'בלי שימוש חם ובלי ניקוי חם עד תום הזמן. בספק, אמרו זאת: ההשבתה מתחילה שוב.',
  'steps.rest.from-last-hot': ({ wallMs, zone }, f) =>
    `מתוכנן מהשימוש החם האחרון, ${f.moment(wallMs, zone)}: אשרו זאת בביצוע. עד אז כל ההשבתה נספרת מהניקוי.`,
  'steps.rest.timer': ({ name }, f) => `השבתה: ${f.say(name)}`,
  'steps.rest.timer-short': 'השבתה',

  'steps.cool.title': ({ name }, f) => `לתת להתקרר בלי לגעת: ${f.say(name)}.`,
  'steps.cool.wait': ({ name }, f) => `עד שבטוח לגעת: ${f.say(name)}`,
  'steps.cool.wait-short': 'חם: עד שבטוח לגעת',
  'steps.cool.slow-end': 'השעון לפי הזמן הארוך ביותר שייתכן. הוא כשלעצמו אינו מוכיח דבר.',
  'steps.cool.test.lamp':
    'אחר כך הביטו בנורית החום השיורי של הכיריים: עליה להיות כבויה. קרבו את גב היד מלמעלה, בלי לגעת.',
  'steps.cool.test.drop': 'אחר כך קרבו את גב היד מלמעלה, בלי לגעת. טפטפו טיפת מים אחת: אסור שתלחש.',
  'steps.cool.test.drop-in-oven':
    'אחר כך פתחו את הדלת, עמדו בצד, וקרבו פנימה את גב היד בלי לגעת. טפטפו טיפת מים אחת על רצפת התנור: אסור שתלחש.',
  'steps.cool.not-over': 'לא כשמבער שלפניו דולק או חם: בדקו קודם אותו.',
  'steps.cool.lamp-dead':
    'נורית שלא נדלקה כלל אינה מוכיחה דבר: טפטפו טיפת מים אחת על הזכוכית, אסור שתלחש. כתבו הערה.',
  'steps.cool.still-hot.lamp': 'הנורית דולקת, או מורגש חום? הוסיפו זמן לשעון והניחו לו.',
  'steps.cool.still-hot.drop': 'לחישה, או מורגש חום? הוסיפו זמן לשעון והניחו לו.',
  'steps.cool.say.lamp': 'הנורית כבויה, לא מורגש חום',
  'steps.cool.say.drop': 'אין לחישה, לא מורגש חום',
  'steps.cool.say.drop-in-oven': 'אין לחישה, לא מורגש חום בפנים',

  'steps.parts.take-out': ({ parts }, f) =>
    `יוצאים לצמיתות, חדשים נכנסים בסוף: ${f.list(parts.map((part) => f.say(part)))}.`,
  'steps.parts.until-new': ({ part }, f) =>
    `נקו והחזירו למקום לזמן החימום; אחריו החליפו בחדש: ${f.say(part)}.`,
  'steps.parts.pour-over': ({ part }, f) => `יחד איתו: ${f.say(part)}.`,
  'steps.parts.into-cycle': ({ part, fixture }, f) =>
    `הכניסו, אם היצרן מרשה: ${f.say(part)} (${fixture}).`,
  'steps.parts.heat': ({ part, fixture, lengthS }, f) =>
    `לחמם בדרגה הגבוהה ביותר, ${f.duration(lengthS)}: ${f.say(part)} (${fixture}).`,
  'steps.parts.fire': ({ part, fixture, lengthS }, f) =>
    `ללבן באש ${f.duration(lengthS)} מרגע שמאדים: ${f.say(part)} (${fixture}).`,
  'steps.parts.boiling': ({ part, fixture }, f) =>
    `מים רותחים על כל מקום: ${f.say(part)} (${fixture}).`,
  'steps.parts.title': ({ fixture }) => `להרכיב את החלקים החדשים: ${fixture}.`,
  'steps.parts.title-cover': ({ fixture }) => `לכסות את השאר: ${fixture}.`,
  'steps.parts.new': ({ part }, f) => `חדש: ${f.say(part)}.`,
  'steps.parts.cover': ({ part }, f) => `לכסות: ${f.say(part)}.`,
  'steps.parts.cold': 'רק כשהכול קר למגע.',
  'steps.parts.say': 'הם בפנים',

  'steps.cover.title': ({ fixture }) => `לכסות: ${fixture}.`,
  'steps.line.title': ({ fixture }) => `לרפד: ${fixture}.`,
  'steps.cover.with': ({ material }, f) => `חומר: ${f.say(material)}.`,
  'steps.cover.with-area': ({ material, areaM2 }, f) =>
    `חומר: ${f.say(material)}. כ־${f.shortMeasure(areaM2, 'm²')}.`,
  'steps.cover.put-in': 'קודם נקי, יבש וקר.',
  'steps.cover.taped': 'קודם נקי, יבש וקר; הדביקו את השוליים כדי שדבר לא יחליק מתחת.',
  'steps.cover.say': 'זה מכוסה',

  'steps.mark.title': 'לסמן את המקומות הבשריים, החלביים והפרווה.',
  'steps.mark.meat': ({ fixture }) => `${fixture}: בשרי`,
  'steps.mark.dairy': ({ fixture }) => `${fixture}: חלבי`,
  'steps.mark.pareve': ({ fixture }) => `${fixture}: פרווה`,
  'steps.mark.undecided': ({ fixture }) => `${fixture}: בשרי, חלבי או פרווה?`,
  'steps.mark.out-of-use': ({ fixture }) => `${fixture}: אין להשתמש עד שיישאל`,
  'steps.mark.say': 'הכול מסומן',

  'steps.open-question': ({ ask, untilThen }, f) =>
    `עוד לא נענה: ${f.say(ask)} עד אז: ${f.say(untilThen)}`,
};
