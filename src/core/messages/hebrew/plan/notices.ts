import type { TranslationOf } from '../../model/translation.ts';
import type { notices as english } from '../../english/plan/notices.ts';

import type { Formatter, Message } from '../../model/message.ts';

/** "20% יותר מהמחושב". */
function shareText(percent: number, f: Formatter): string {
  const whole = Math.round(percent);
  if (whole === 0) return 'זמן כמחושב';
  return `${f.number(Math.abs(whole))}% ${whole > 0 ? 'יותר' : 'פחות'} זמן מהמחושב`;
}

type Late = {
  lateH: number;
  certain: boolean;
  endsWallMs?: number;
  zone?: string;
  after?: Message;
  decidedBy?: readonly Message[];
};

/** When it ends, and after which day of rest; then by how much it is late. */
function ends({ lateH, endsWallMs, zone, after }: Late, f: Formatter): string {
  const late = `${f.number(lateH, 1)} שע׳`;
  if (endsWallMs === undefined || zone === undefined) return late;
  const moment = f.moment(endsWallMs, zone);
  return after ? `ב${moment}, אחרי ${f.say(after)}, ${late}` : `ב${moment}, ${late}`;
}

/** More names than this are counted, not listed. */
const MOST_NAMES = 5;

function someOf(names: readonly string[], f: Formatter): string {
  const more = names.length - MOST_NAMES;
  return f.list(more > 0 ? [...names.slice(0, MOST_NAMES), `עוד ${f.number(more)}`] : names);
}

function bottleneck(decidedBy: Late['decidedBy'], f: Formatter): string {
  if (!decidedBy || decidedBy.length === 0) return '';
  return ` הארוך ביותר בדרך לסוף הזה: ${decidedBy.map((one) => f.say(one)).join('; ')}.`;
}

export const notices: TranslationOf<typeof english> = {
  'plan.notice.last-hot.counts': ({ names, wallMs, zone }, f) =>
    `ההשבתות מתוכננות מהשימוש החם האחרון, ${f.moment(wallMs, zone)}: ${f.list(names)}. נקו במים קרים בלבד; הביצוע יבקש לאשר את השעה.`,
  'plan.notice.last-hot.later': ({ names, wall }, f) =>
    `השימוש החם האחרון הוא ${wall}, אחרי תחילת העבודה: ${f.list(names)}. הוא לא נספר, רק שימוש שלפני ההתחלה נספר; תקנו במטבח, או התחילו מאוחר יותר.`,
  'plan.notice.last-hot.long-ago': ({ names, wall, mostDays }, f) =>
    `השימוש החם האחרון הוא ${wall}: ${f.list(names)}. יותר מ־${f.number(mostDays)} ימים לפני ההתחלה הוא לא נספר; ציינו במטבח את האחרון.`,
  'plan.notice.last-hot.unplaced': ({ names, wall }, f) =>
    `השימוש החם האחרון הוא ${wall}: ${f.list(names)}. הוא לא נספר עד שיש למטבח מקום ולתוכנית התחלה; ציינו את שניהם.`,
  'plan.notice.circuit-overloaded': ({ name, drawsA, circuit, ratingA }, f) =>
    `${f.say(name)}: צריכה ${f.number(drawsA)} אמפר, ו־${circuit} נושא ${f.shortNumber(ratingA)} אמפר. הזמינו חשמלאי לבדוק לפני שמחממים.`,
  'plan.notice.circuit-shared': ({ circuit, ratingA, names, drawsA }, f) =>
    `${circuit} (${f.shortNumber(ratingA)} אמפר) לא יכול לשאת יחד (${f.number(drawsA)} אמפר): ${someOf(names.map(f.say), f)}. לעולם אל תפעילו אותם יחד; כך גם התוכנית.`,
  'plan.notice.boils-low': ({ boilingC }, f) =>
    `כאן מים רותחים ב־${f.measure(boilingC, '°C')}; זו רתיחה. חם יותר לא יהיה, כמה שיעמוד על האש; היד איטית יותר היכן שצריך.`,
  'plan.notice.may-stay-dark': ({ cooktop, names }, f) =>
    `${cooktop}: ${f.list(names)} אולי לא יאדימו לעולם בלי סיר, כי הם חשים אותו או מקבלים מתח נמוך. נסו אחד בחושך לפני היום, ושאלו איך מכשירים אם נשאר כהה.`,
  'plan.burner': ({ burner }) => `המבער ${burner}`,
  'plan.notice.burners-at-once': ({ atOnce, limitedBy, peakC }, f) => {
    const why = {
      heat: ', בגלל החום',
      air: ', בגלל האוויר',
      circuit: ', בגלל המעגל החשמלי',
      none: '',
    };
    return `${atOnce === 1 ? 'מבער אחד' : 'שני מבערים'} בכל פעם${why[limitedBy]}: צפוי שהחדר יגיע לכ־${f.measure(peakC, '°C')}. זו עצה; היא לעולם לא אומרת שהאוויר בטוח.`;
  },
  'plan.notice.room-blocked': ({ says }, f) => says.map((one) => f.say(one)).join(' '),
  'plan.notice.room-hot': ({ says }, f) => says.map((one) => f.say(one)).join(' '),
  'plan.notice.air-not-told':
    'איש עוד לא אמר אם הקולט פולט החוצה ואם חלון נפתח, ולכן התוכנית לא מביאה אותם בחשבון. כך אפילו מבער אחד הוא יותר מדי: ציינו את שניהם תחת "חדר ואוויר".',
  'plan.notice.room-tiny': ({ volumeM3, leastM3 }, f) =>
    `נפח המטבח נמסר כ־${f.shortMeasure(volumeM3, 'm³', 1)}; חום ואוויר מחושבים מ־${f.measure(leastM3, 'm³', 0, 'up')}. מדדו שוב רצפה ותקרה; עד אז התוכנית מדליקה מבער אחד בכל פעם, ודבר לא אומר שהחדר עומד בזה.`,
  'plan.notice.much-water': ({ says }, f) =>
    `כמות מים גדולה מאוד: ${f.list(says.map((one) => f.say(one)))}. מיחם למילוי הקומקומים, קומקום שני ועוזר מקצרים הרבה; או שאלו אם מותר לכסות משטח במקום לערות.`,
  'plan.notice.much-water.fixture': ({ fixture, kettles, litres }, f) =>
    `${f.number(kettles)} קומקומים (כ־${f.measure(litres, 'L')}) על ${fixture}`,
  'plan.notice.room-unknown':
    'מבער אחד בכל פעם: אי אפשר לחשב כמה יתחמם החדר כפי שתואר. בדקו את מידותיו, את הקולט ואת החלון.',
  'plan.notice.room-too-much':
    'לפי החישוב גם מבער אחד מחמם את החדר יותר מדי או מקלקל את אווירו, כפי שתואר: תנו לאוויר דרך החוצה, והמתינו בין מבערים.',
  'plan.notice.no-air':
    'אין קולט שפולט החוצה ואין חלון: אי אפשר ללבן כאן מבערי גז לפני שיש לאוויר דרך החוצה.',
  'plan.notice.hood-filters': 'הקולט רק מסנן: הוא לא מסלק גז. החלון חייב להיות פתוח.',
  'plan.notice.clean-not-purge.steam': ({ oven }) =>
    `${oven}: ניקוי בקיטור אינו הכשרה; הטיפול בו כבתנור בלי ניקוי עצמי.`,
  'plan.notice.clean-not-purge.catalytic': ({ oven }) =>
    `${oven}: ניקוי קטליטי אינו הכשרה; הטיפול בו כבתנור בלי ניקוי עצמי.`,
  'plan.notice.induction': ({ cooktop }) =>
    `${cooktop}: אינדוקציה לא מאדימה. שאלו איך מכשירים אותה לפני שקובעים את היום.`,
  'plan.notice.by-hand': ({ fixture }) => `${fixture}: כמות המים לא מחושבת; זה מתוכנן כעבודת יד.`,
  'plan.notice.unreached': ({ fixture, spots }, f) =>
    `${fixture}: מחוץ להישג היד מהמקום שאפשר לעמוד בו, ולכן לא תוכנן לשם קומקום: ${spots.map((spot) => f.say(spot)).join('; ')}. אפשר לעמוד בצד אחר? אמרו זאת במטבח. אם לא, שאלו את הרב מה עושים במקום. לעולם אל תעמדו על שרפרף עם מים רותחים.`,
  'plan.question.unreached': ({ spots }, f) =>
    `מה עושים במקום ששום יד לא מגיעה אליו עם קומקום: ${spots.map((spot) => f.say(spot)).join('; ')}?`,
  'plan.question.unreached.why':
    'הקילוח צריך להגיע לכל מקום. ייתכן שמצד אחר מגיעים אליו: אם כן, אמרו זאת במטבח.',
  'plan.question.unreached.until-then': 'לא מתוכנן לשם קומקום.',
  'plan.question.unreached.cover': 'לערות, ואחר כך לכסות.',
  'plan.question.unreached.enough': 'די במה שקיבל עירוי.',
  'plan.notice.spot': ({ areaCm2, leftM, nearM }, f) =>
    `${f.measure(areaCm2, 'cm²')}, ${f.tape(leftM)} מהקצה השמאלי ו־${f.tape(nearM)} מהצד הקרוב`,
  'plan.notice.pots': ({ names }) =>
    `אין מערים מתוך: ${names.join(', ')}. מה שנשאב במצקת הוא כבר בכלי שני, ומלא הוא כבד מדי לנשיאה.`,
  'plan.notice.unused-vessels': ({ names }) =>
    `לא בשימוש: ${names.join(', ')}. לא צוין גוף חימום, חלש מדי להרתיח כאן, או קטן מדי לצד האחרים.`,
  'plan.notice.utensils-now': 'בתוך פסח לא מכשירים כלים: הרחיקו את מה שלא הוכשר לפני כן, ושאלו.',
  'plan.notice.utensils-no-pot': ({ names }, f) =>
    `אין סיר שמרתיח כאן ושנכנסים לתוכו: ${f.list(names.map((name) => f.say(name)))}. שום שלב לא מכשיר אותם. ציינו במטבח סיר גדול יותר ואת המבער שלו, או הרחיקו אותם.`,
  'plan.notice.no-change':
    'נהגו שלא להפוך כלי מבשרי לחלבי או להפך (מגן אברהם תק״ט, י״א): שאלו לפני כן.',
  'plan.notice.passover-hour':
    'ההכשרה צריכה להסתיים לפני השעה החמישית של ערב פסח: תכננו לסיים יום קודם.',
  'plan.notice.overnight': ({ step }, f) =>
    `אין יום עבודה ארוך דיו לזה, ולכן זה נמשך אל תוך הלילה: ${f.say(step)}`,
  'plan.notice.purge-late': ({ decidedBy, ...late }, f) =>
    `לפי התוכנית ההכשרה מסתיימת ${ends(late, f)} אחרי המועד האחרון${late.certain ? ', ושום סדר עבודה אחר לא יעמוד בו' : ''}.${bottleneck(decidedBy, f)}`,
  'plan.notice.after-fourth-hour': ({ decidedBy, ...late }, f) =>
    `לפי התוכנית ההכשרה מסתיימת ${ends(late, f)} אחרי הזמן, ועדיין לפני הדלקת נרות${late.certain ? '; שום סדר עבודה אחר לא יעמוד בשעה' : ''}. במים נדרשת אז זהירות יתרה: שאלו קודם.${bottleneck(decidedBy, f)}`,
  'plan.notice.after-candles': ({ decidedBy, ...late }, f) =>
    `לפי התוכנית ההכשרה מסתיימת ${ends(late, f)} אחרי הזמן, אחרי הדלקת נרות, כשכבר לא מכשירים דבר${late.certain ? '; שום סדר עבודה אחר לא יעמוד בה' : ''}. התחילו מוקדם יותר, או בחרו מה לסגור: נקי, מכוסה ובלי שימוש בפסח.${bottleneck(decidedBy, f)}`,
  'plan.notice.plan-late': ({ decidedBy, ...late }, f) =>
    `התוכנית מסתיימת ${ends(late, f)} אחרי המועד האחרון${late.certain ? ', ושום סדר עבודה אחר לא יעמוד בו' : ''}.${bottleneck(decidedBy, f)}`,
  'plan.chain.step': ({ step, lengthS }, f) =>
    `${f.say(step).replace(/\.$/, '')} (${f.duration(lengthS)})`,
  'plan.chain.by-itself': ({ step, lengthS }, f) =>
    `${f.say(step).replace(/\.$/, '')} (${f.duration(lengthS)}, ועוזר לא יקצר)`,
  'plan.chain.closed': ({ lengthS }, f) =>
    `שעות בלי עבודה, לילה או יום מנוחה (${f.duration(lengthS)})`,
  'plan.chain.work': 'עבודה אחרת',
  'plan.notice.days-unknown': ({ place, start }) => {
    const missing = [
      ...(place ? [] : ['איפה המטבח (קו רוחב, קו אורך, אזור זמן, בישראל או לא)']),
      ...(start ? [] : ['מתי תתחילו']),
    ].join(', ו');
    return `שבתות וחגים אינם בלוח הזמנים הזה, שסופר שעות מההתחלה: ציינו ${missing}, והוא ישמור אותם. עד אז התחילו כך ששום עבודה לא תיפול בהם.`;
  },
  'plan.notice.last-day': ({ step }, f) =>
    `ביום האחרון לפני המועד, בלי יום פנוי אם המנעול או מנתק החום יתקלקל: ${f.say(step)} התחילו את העבודה מוקדם יותר.`,
  'plan.notice.past-fourth-hour': ({ fourthWallMs, candlesWallMs, zone }, f) =>
    `השעה הרביעית של ערב פסח הסתיימה ב${f.moment(fourthWallMs, zone)}. עד הדלקת נרות, ${f.moment(candlesWallMs, zone)}, עוד מכשירים במים, בזהירות יתרה: שאלו קודם. מה שלא הוכשר עד אז מנקים, סוגרים ולא משתמשים בו בפסח.`,
  'plan.notice.inside-passover':
    'עכשיו פסח. עד צאתו לא מכשירים דבר במים: התוכנית סוגרת את מה שהיה צריך עירוי. אש בחול המועד: שאלו את הרב; אחרת סגרו גם את זה. יש מתירים להכשיר במים מה ששבת 24 שעות: שאלו.',
  'plan.notice.eve-is-sabbath':
    'השנה ערב פסח חל בשבת: כל ההכשרה מסתיימת ביום שישי שלפניה. היא מתוכננת עד השעה הרביעית של אותו יום, כבשנים אחרות. ביום שישי הזה החמץ עוד מותר: שאלו את הרב אם אפשר להכשיר בלי זהירות יתרה עד הדלקת נרות.',
  'plan.notice.no-sun-on-eve':
    'במקום הזה השמש לא זורחת ושוקעת בערב פסח, ולכן השעות לא מחושבות: התוכנית מסתיימת יום קודם. שאלו את הרב מה השעה.',
  'plan.notice.leaven-hour': ({ fourthWallMs, fifthWallMs, purgeWallMs, candlesWallMs, zone }, f) =>
    `בערב פסח אוכלים חמץ עד ${f.moment(fourthWallMs, zone)} (סוף השעה הרביעית) ושורפים עד ${f.moment(fifthWallMs, zone)} (סוף החמישית). מים מכשירים לפני הראשונה: התוכנית מסתיימת עד ${f.moment(purgeWallMs, zone)}. אחריה ועד הדלקת נרות, ${f.moment(candlesWallMs, zone)}, שאלו קודם.`,
  'plan.notice.dim-days': ({ day, untilHour }, f) =>
    `בעונה הזאת השמש כאן לא מורה מתי נכנס או יוצא: ${f.say(day)} (היא לא שוקעת, או שהלילה לא מחשיך). התוכנית לא כוללת דבר מההדלקה, או מהצהריים כשאין שקיעה, עד ${f.number(untilHour)}:00 בבוקר שאחריו. שאלו את הרב לשעות.`,
  'plan.notice.recheck': ({ what }) =>
    `תוכנית קטנה אחרי שקרה משהו (${what}): יש בה רק מה שזה נוגע בו. שאלו קודם אם צריך להכשיר שוב; עד אז אין להשתמש בו לשום דבר חם.`,
  'plan.notice.calibration': ({ told }, f) =>
    `מהביצוע הקודם שלכם: ${told.map((one) => f.say(one)).join('; ')}. זה קובע מתי להביט וכמה נמשכת העבודה; השבתות, זמני החזקה וגבולות נשארים כמות שהם.`,
  'plan.calibration.boil': ({ name, percent }, f) =>
    `${f.say(name)}: לרתיחה ${shareText(percent, f)}`,
  'plan.calibration.glow': ({ name, percent }, f) =>
    `${f.say(name)}: עד שמאדים ${shareText(percent, f)}`,
  'plan.calibration.heat-up': ({ name, percent }, f) =>
    `${f.say(name)}: להתחממות ${shareText(percent, f)}`,
  'plan.calibration.cool': ({ name, percent }, f) =>
    `${f.say(name)}: להתקררות ${shareText(percent, f)}`,
  'plan.calibration.flow': ({ flowLMin }, f) =>
    `העירוי שלכם הוא ${f.measure(flowLMin, 'L', 1)} בדקה`,
  'plan.calibration.reach': ({ percent }, f) => `קומקום מגיע ל־${f.number(percent)}% מהמרחק המחושב`,
  'plan.question.recheck': ({ fixture }) => `צריך להכשיר שוב: ${fixture}?`,
  'plan.question.recheck.why': ({ what }) => `אחרי ההכשרה נמסר: ${what}`,
  'plan.question.recheck.until-then':
    'אין להשתמש בו לשום דבר חם. התוכנית משביתה ומכשירה אותו מחדש.',
  'plan.only-heats': 'אין בו ספק: הוא רק מחמם את הקומקום.',
};
