import type { TranslationOf } from '../model/translation.ts';
import type { planPage as english } from '../english/plan-page.ts';
import { planCourse } from './plan-course.ts';
import { clockOf } from './zones/clock-of.ts';

import type { Formatter } from '../model/message.ts';

const S_DAY = 86_400;
const S_HOUR = 3600;
const S_MINUTE = 60;

/** Days and hours, cut, so that nobody counts on more than there is. */
function daysAndHours(leftS: number, f: Formatter): string {
  const days = Math.floor(leftS / S_DAY);
  if (days === 0) return f.duration(leftS < S_HOUR ? leftS : leftS - (leftS % S_HOUR), 'down');
  const hours = Math.floor((leftS % S_DAY) / S_HOUR);
  const dayText = f.plural(days, {
    one: 'יום אחד',
    two: 'יומיים',
    other: `${f.number(days)} ימים`,
  });
  return hours === 0 ? dayText : `${dayText} ו־${f.duration(hours * S_HOUR, 'down')}`;
}

function kettlesText(count: number, f: Formatter): string {
  return f.plural(count, {
    one: 'קומקום אחד',
    two: 'שני קומקומים',
    other: `${f.number(count)}\u00a0קומקומים`,
  });
}

/** The Plan page: its parts, answers, questions and the day the work begins. */
export const planPage: TranslationOf<typeof english> = {
  ...planCourse,
  'plan-page.print': 'להדפיס לקיר',
  'plan-page.print.all': 'להדפיס את כל התוכנית',
  'plan-page.save-calendar': 'לשמור ביומן',
  'plan-page.start-run': 'להתחיל את הביצוע',
  'plan-page.back-to-run': 'חזרה לביצוע',
  'plan-page.rehearse': 'לתרגל את הביצוע',
  'plan-page.rehearse.run-open':
    'לא עכשיו: ביצוע פתוח בטאבלט הזה, או שלא ידוע אם יש כזה. ההתראות שלו קודמות; תרגלו אחריו.',
  'plan-page.for-whom': ({ purpose, custom }) => `${purpose}, ${custom}`,
  'plan-page.standing':
    'המנהגים שונים. התוכנית הולכת לפי המנהג שבחרתם; דברי הרב שלכם באים במקומה. פעלו לפי הוראות היצרן והתקנות המקומיות; עבודות גז, חשמל ואינסטלציה הן לבעלי רישיון.',
  'plan-page.parts': 'חלקי התוכנית',
  'plan-page.part.methods': 'שיטות',
  'plan-page.part.steps': 'כל השלבים',
  'plan-page.part.pours': 'לאן מערים',
  'plan-page.part.heat': 'חום ואוויר',
  'plan-page.part.ask': 'לשאול',
  'plan-page.part.lists': 'לקנות ולנקות',
  'plan-page.part.handouts': 'דפים להדפסה',
  'plan-page.heat.about':
    'חושב מהציוד שלכם, או מהמקובל היכן שלא ציינתם. הטווח רחב היכן שהפיזיקה או הציוד כאלה; התוכנית לוקחת את הצד הבטוח.',
  'plan-page.facts.day': ({ wallMs, zone, amount }, f) => `${f.day(wallMs, zone)}: ${amount}`,
  'plan-page.facts.whole': 'מההתחלה עד הסוף',
  'plan-page.facts.hands': 'הידיים שלכם עסוקות',
  'plan-page.facts.boils-at': 'מים רותחים כאן ב־',
  'plan-page.facts.kettles': 'מילויי קומקום',
  'plan-page.facts.hot-water': 'מים רותחים',
  'plan-page.facts.electricity': 'חשמל',
  'plan-page.facts.electricity-and-gas': 'חשמל וגז',
  'plan-page.duration': ({ lengthS }, f) => f.duration(lengthS),
  'plan-page.temperature': ({ tempC }, f) => f.measure(tempC, '°C', 1),
  'plan-page.count': ({ low, high }, f) => f.range(low, high),
  'plan-page.litres': ({ lowL, highL }, f) => f.measureRange(lowL, highL, 'L'),
  'plan-page.energy': ({ kWh }, f) => `${f.number(kWh, 1)} קוט״ש`,
  'plan-page.energies': ({ electricityKWh, gasKWh }, f) =>
    `${f.number(electricityKWh, 1)} קוט״ש + ${f.number(gasKWh, 1)} קוט״ש`,

  'plan-page.notices': 'מה לדעת מראש',
  'plan-page.notices.more': ({ many }, f) => `עוד ${f.number(many)} לדעת`,
  'plan-page.notices.kitchen': 'לשנות במטבח',

  'plan-page.begin.region': 'מתי מתחילה העבודה',
  'plan-page.begin': 'התחלה',
  'plan-page.begin.zone': ({ zone }) => `לפי ${clockOf(zone)}`,
  'plan-page.begin.tell-place': 'ציינו תחת "מטבח" איפה הוא, והתוכנית תעקוף שבתות וחגים.',
  'plan-page.begin.inside': ({ day, toWallMs, zone }, f) =>
    `זה נופל בתוך ${day}: דבר לא מתחיל לפני ${f.moment(toWallMs, zone)}.`,
  'plan-page.begin.nothing-in': 'אין עבודה מתוכננת בזמנים האלה',
  'plan-page.begin.from-to': ({ day, fromWallMs, toWallMs, zone }, f) =>
    `${f.say(day)}: ${f.moment(fromWallMs, zone)} עד ${f.moment(toWallMs, zone)}`,
  'plan-page.begin.deadline-ahead': ({ what, atWallMs, leftS, zone }, f) =>
    `${f.say(what)}: ${f.moment(atWallMs, zone)}; ${daysAndHours(leftS, f)} אחרי ההתחלה.`,
  'plan-page.begin.deadline-passed': ({ what, atWallMs, beginWallMs, zone }, f) =>
    `${f.say(what)}: ${f.moment(atWallMs, zone)}. בשעה ${f.clock(beginWallMs, zone)} הוא כבר עבר.`,

  'plan-page.methods.by-custom': 'לפי המנהג:',
  'plan-page.methods.own-custom': 'המנהג שלכם',
  'plan-page.methods.make-own-custom': 'להגדיר מנהג משלנו',
  'plan-page.methods.note-signs':
    'א ב ג ד ה ו ז ח ט י יא יב יג יד טו טז יז יח יט כ כא כב כג כד כה כו',
  'plan-page.methods.head.fixture': 'מה',
  'plan-page.methods.head.what': 'מה עושים',
  'plan-page.methods.head.why': 'למה, ומה היה משנה זאת',
  'plan-page.methods.head.answer': 'תשובת הרב שלכם',
  'plan-page.methods.more': 'למה',
  'plan-page.methods.minutes': ({ method, minutes }, f) => `${method}, ${f.number(minutes)} דק׳`,
  'plan-page.methods.then-cover': ({ method }) => `${method}, ואחר כך כיסוי`,
  'plan-page.methods.term': ({ term }) => `(${term})`,
  'plan-page.methods.provisional': 'הדרך המחמירה, עד לתשובה',
  'plan-page.methods.answered': 'תשובת הרב שלכם',
  'plan-page.methods.source': ({ source, state }) => `${source} (${state}).`,
  'plan-page.methods.instead-of-row': ({ by }) => `במקום שורת המנהג: ${by}.`,
  'plan-page.methods.said-otherwise': 'הרב שלנו אמר אחרת',
  'plan-page.methods.change-answer': 'לשנות את התשובה',
  'plan-page.methods.take-back': 'לבטל אותה',
  'plan-page.to-ask': 'לשאול:',
  'plan-page.until-then': ({ untilThen }) => `עד אז: ${untilThen}`,
  'plan-page.not-answered': 'עוד לא נענה:',

  'plan-page.steps.whole-kitchen': 'כל המטבח',
  'plan-page.steps.about': ({ lengthS }, f) => f.about(lengthS),
  'plan-page.steps.who': ({ people }, f) => f.list(people.map((one) => f.say(one))),
  'plan-page.steps.kettles': ({ name, kettles }, f) =>
    `${name}: מים רותחים, ${kettlesText(kettles, f)}`,
  'plan-page.steps.burners': ({ name, burners }, f) =>
    `${name}: ליבון של ${f.number(burners)} מוקדים`,
  'plan-page.steps.near': 'מישהו בקרבת מקום',
  'plan-page.steps.titles': ({ titles, more }, f) =>
    `${titles.map((one) => f.say(one)).join(' ')}${more > 0 ? ` ועוד ${f.number(more)}` : ''}`,
  'plan-page.steps.day.morning': ({ wallMs, zone }, f) => `${f.day(wallMs, zone)}, בוקר`,
  'plan-page.steps.day.afternoon': ({ wallMs, zone }, f) => `${f.day(wallMs, zone)}, אחר הצהריים`,
  'plan-page.steps.day.evening': ({ wallMs, zone }, f) => `${f.day(wallMs, zone)}, ערב`,
  'plan-page.steps.day.night': ({ wallMs, zone }, f) => `${f.day(wallMs, zone)}, לילה`,

  'plan-page.pours.none': 'לא מערים דבר.',
  'plan-page.pours.kettles': ({ name, kettles }, f) => `${name}: ${kettlesText(kettles, f)}`,
  'plan-page.pours.order': 'גבוה לפני נמוך, כל חלק בשלמותו. המספר בעיגול הוא מספר הקומקום.',
  'plan-page.pours.custom-shortest': ({ customM }, f) =>
    `נתיבים באורך כולל של ${f.measure(customM, 'm', 1)}; אף כיוון אחר אינו קצר יותר. המספר בעיגול הוא מספר הקומקום.`,
  'plan-page.pours.custom-longer': ({ customM, shortestM, savedPercent }, f) =>
    `נתיבים באורך כולל של ${f.measure(customM, 'm', 1)} מאחור לפנים, כמנהג; כיוון אחר היה לוקח ${f.measure(shortestM, 'm', 1)}, ${f.number(savedPercent)}% פחות. המספר בעיגול הוא מספר הקומקום.`,

  'plan-page.shopping': 'לקנות ולאסוף',
  'plan-page.cleaning': 'ניקוי, מלמעלה למטה',
  'plan-page.cleaning.region': 'רשימות ניקוי',
  'plan-page.cleaning.print': 'להדפיס את הרשימות',
  'plan-page.cleaning.about':
    'יבש לפני רטוב, פנים לפני חוץ. ההשבתה נספרת מהשימוש החם האחרון; ניקוי במים חמים נחשב לכזה.',

  'plan-page.questions.region': 'שאלות',
  'plan-page.questions': 'שאלות לרב',
  'plan-page.questions.of': ({ kitchen, custom }) => `${kitchen}. מנהג: ${custom}.`,
  'plan-page.questions.print': 'להדפיס את השאלות',
  'plan-page.questions.share': 'לשתף אותן',
  'plan-page.questions.shared-title': ({ kitchen }) => `שאלות לרב שלנו: ${kitchen}`,
  'plan-page.questions.about':
    'המנהגים שונים. עד ששאלה נענית מתוכננת הדרך המחמירה, והתוכנית אומרת זאת; התשובה באה במקום שורת המנהג.',
  'plan-page.questions.none': 'לא נשאר מה לשאול.',
  'plan-page.questions.enter': 'להזין את התשובה',
  'plan-page.questions.to-look': 'לבדוק בעצמכם',
  'plan-page.questions.say-what': 'לומר מה זה',
  'plan-page.questions.until-then': 'עד אז:',
  'plan-page.questions.changes': 'מה תשנה תשובה?',
  'plan-page.questions.change': ({ answer, finishS, kettles }, f) => {
    const end =
      Math.abs(finishS) < S_MINUTE
        ? 'מסתיימת באותה שעה'
        : `מסתיימת ${f.duration(Math.abs(finishS))} ${finishS < 0 ? 'מוקדם יותר' : 'מאוחר יותר'}`;
    const many = Math.abs(kettles);
    const water =
      many === 0
        ? 'אותו מספר קומקומים'
        : `${kettlesText(many, f)} ${kettles < 0 ? 'פחות' : 'יותר'}`;
    return `${f.say(answer)} אז התוכנית ${end}, עם ${water}.`;
  },
  'plan-page.questions.line.answer': 'תשובה',
  'plan-page.questions.line.said-by': 'מפי',
  'plan-page.questions.line.on': 'בתאריך',
  'plan-page.questions.answered': 'נענה',
  'plan-page.questions.answered-bare': 'נענה.',
  'plan-page.questions.said': ({ saidBy, saidOn }) => `${saidBy}, ${saidOn}`,
  'plan-page.questions.said-own-row': ({ saidBy, saidOn }) =>
    `${saidBy}, ${saidOn} (שורה במנהג שלכם)`,
  'plan-page.questions.take-back': 'לבטל את התשובה',

  'plan-page.answer.about': ({ fixture }) => `תשובה על ${fixture}`,
  'plan-page.answer.what-said': 'מה אמר הרב על זה?',
  'plan-page.answer.given': 'תשובות נתונות',
  'plan-page.answer.own-way': 'או אמרו במילים שלכם:',
  'plan-page.answer.in-words': 'באילו מילים (אם תרצו)',
  'plan-page.answer.replaces-row': 'היא באה במקום שורת המנהג בפריט הזה בלבד.',
  'plan-page.answer.keep': 'לשמור את התשובה',
  'plan-page.back': 'חזרה',
  'plan-page.found.about': ({ fixture }) => `מה מצאתם: ${fixture}`,
  'plan-page.found.leave-open': 'אם אינכם יודעים, השאירו פתוח.',

  'plan-page.curve': ({ title, lines, limits }, f) =>
    [title, ...lines, ...limits].map((one) => f.say(one)).join('. '),
  'plan-page.curve.line': ({ name, most, unit }, f) =>
    `${f.say(name)}: עד ${f.shortNumber(most, 2)} ${f.say(unit)}`,
  'plan-page.curve.limit': ({ name, value, unit }, f) =>
    `${f.say(name)}: ${f.shortNumber(value, 2)} ${f.say(unit)}`,
  'plan-page.curve.value': ({ value }, f) => f.shortNumber(value, 3),
};
