import type { TranslationOf } from '../../model/translation.ts';
import type { print as english } from '../../english/plan/print.ts';

import type { Formatter } from '../../model/message.ts';

type Band = { readonly low: number; readonly typical: number; readonly high: number };
type Offset = { days: number; hours: number; minutes: number };

/** "יום 2, 02:10"; on the first day "02:10", counted from the start. */
function offset({ days, hours, minutes }: Offset): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  const clock = `${two(hours)}:${two(minutes)}`;
  if (days === 0) return `ההתחלה ועוד ${clock}`;
  return `ההתחלה ועוד ${days === 1 ? 'יום' : `${days} ימים`} ${clock}`;
}

/** One number a line: what is exact as it is, an estimate in round figures. */
function lasts({ low, typical, high }: Band, f: Formatter): string {
  return low === high ? f.duration(typical) : f.about(typical);
}

function kettlesText(count: number, f: Formatter): string {
  return f.plural(count, {
    one: 'קומקום אחד',
    two: 'שני קומקומים',
    other: `${f.number(count)} קומקומים`,
  });
}

/** The plan as plain text. */
export const print: TranslationOf<typeof english> = {
  'plan.customs-differ':
    'המנהגים שונים. התוכנית הולכת לפי המנהג שבחרתם; דברי הרב שלכם באים במקומה.',
  'plan.title': ({ kitchen }) => `תוכנית: ${kitchen}`,
  'plan.for': ({ purpose, custom, people }, f) =>
    `${f.say(purpose)}, מנהג: ${f.say(custom)}, ${f.plural(people, { one: 'אדם אחד', two: 'שני אנשים', other: `${f.number(people)} אנשים` })}`,
  'plan.boils-at': ({ boilingC, low }, f) =>
    `מים רותחים כאן ב־${f.measure(boilingC, '°C', 1)}${low ? '; זו רתיחה' : ''}.`,
  'plan.done-earliest': ({ finishS }, f) =>
    `הסיום אחרי ${f.duration(finishS)}, המוקדם ביותר שאפשר.`,
  'plan.done-after': ({ finishS, boundS }, f) =>
    `הסיום אחרי ${f.duration(finishS)}; בשום סדר עבודה לא לפני ${f.duration(boundS)}.`,
  'plan.section.methods': 'שיטות',
  'plan.section.questions': 'שאלות לשאול',
  'plan.section.notices': 'לפני שמתחילים',
  'plan.section.shopping': 'לקנות ולאסוף',
  'plan.section.totals': 'סיכומים',
  'plan.section.days': 'ימים',
  'plan.section.timetable': 'לוח זמנים',
  'plan.section.gates': 'מאושר פעם אחת, לפני העבודה',
  'plan.section.work': 'איך עושים',
  'plan.method': ({ fixture, method, minutes, cover, term }, f) =>
    `${fixture}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} דק׳` : ''}${cover ? ', ואחר כך כיסוי' : ''}${term ? ` (${f.say(term)})` : ''}`,
  'plan.method.source': ({ source, state, wouldChange }, f) =>
    `${f.say(source)} (${f.say(state)}). ${f.say(wouldChange)}`,
  'plan.method.times': ({ times }, f) =>
    f.plural(times, {
      two: 'עירוי פעמיים על כולו.',
      other: `עירוי ${f.number(times)} פעמים על כולו.`,
    }),
  'plan.method.no-rest': 'בלי השבתה לפני כן, לפי מה שנאמר לכם.',
  'plan.method.stone': 'מזיזים עליו חתיכת פלדה לוהטת בזמן העירוי.',
  'plan.method.part.not-purged': 'בלי הכשרה: אין להניח עליו דבר',
  'plan.method.part': ({ part, method, minutes, reason, source, state }, f) =>
    `${f.say(part)}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} דק׳` : ''}. ${f.say(reason)} ${f.say(source)} (${f.say(state)}).`,
  'plan.method.instead-of-row': ({ by }, f) => `במקום שורת המנהג: ${f.say(by)}`,
  'plan.to-ask': ({ ask, untilThen }, f) => `לשאול: ${f.say(ask)} עד אז: ${f.say(untilThen)}`,
  'plan.question.numbered': ({ number, fixture, ask }, f) =>
    `${f.number(number)}. ${fixture}: ${f.say(ask)}`,
  'plan.question.until-then': ({ untilThen }, f) => `עד אז: ${f.say(untilThen)}`,
  'plan.buy': ({ name, amount, why }, f) => `${f.say(name)}: ${f.say(amount)}. ${f.say(why)}`,
  'plan.total.hot': ({ hotL, kettles }, f) =>
    `מים רותחים: כ־${f.measure(hotL.typical, 'L')}, ${kettlesText(kettles.typical, f)}`,
  'plan.total.cold': ({ coldL }, f) => `מים קרים אחריהם: כ־${f.measure(coldL.typical, 'L')}`,
  'plan.total.electricity': ({ kWh }, f) => `חשמל: כ־${f.number(kWh, 1)} קוט״ש`,
  'plan.total.gas': ({ kWh }, f) => `גז: כ־${f.number(kWh, 1)} קוט״ש`,
  'plan.total.hands': ({ lengthS }, f) => `עבודת ידיים: ${f.about(lengthS)}`,
  'plan.day.begins': ({ startWallMs, endWallMs, zone }, f) =>
    `התחלה: ${f.moment(startWallMs, zone)}; סיום: ${f.moment(endWallMs, zone)} (${zone})`,
  'plan.day.rest': ({ day, fromWallMs, toWallMs, zone }, f) =>
    `${f.say(day)}: ${f.moment(fromWallMs, zone)} עד ${f.moment(toWallMs, zone)}; דבר לא מתוכנן אז`,
  'plan.day.deadline': ({ name, wallMs, zone }, f) => `${f.say(name)}: ${f.moment(wallMs, zone)}`,
  'plan.day.date': ({ wallMs, zone }, f) => f.day(wallMs, zone),
  'plan.day.number': ({ day }, f) => `יום ${f.number(day)}`,
  'plan.step.clock': ({ wallMs, zone, step, lengthS }, f) =>
    `${f.clock(wallMs, zone)}  ${f.say(step)}  [${lasts(lengthS, f)}]`,
  'plan.step.clock-itself': ({ wallMs, zone, step, lengthS }, f) =>
    `${f.clock(wallMs, zone)}  ${f.say(step)}  [${lasts(lengthS, f)}, מתחיל בעצמו]`,
  'plan.step.offset': ({ days, hours, minutes, step, lengthS }, f) =>
    `${offset({ days, hours, minutes })}  ${f.say(step)}  [${lasts(lengthS, f)}]`,
  'plan.step.offset-itself': ({ days, hours, minutes, step, lengthS }, f) =>
    `${offset({ days, hours, minutes })}  ${f.say(step)}  [${lasts(lengthS, f)}, מתחיל בעצמו]`,
  'plan.step.untimed': ({ step, lengthS }, f) => `בלי זמן  ${f.say(step)}  [${lasts(lengthS, f)}]`,
  'plan.work.timer': ({ timer, lengthS }, f) => `${f.say(timer)}, ${f.duration(lengthS)}`,
  'plan.work.timer-about': ({ timer, lengthS }, f) => `אחרי ${f.about(lengthS)}: ${f.say(timer)}`,
  'plan.work.timer-after': ({ timer, lengthS }, f) =>
    `אחרי ${f.duration(lengthS)}: ${f.say(timer)}`,
  'plan.work.timer-every': ({ timer, lengthS }, f) => `כל ${f.duration(lengthS)}: ${f.say(timer)}`,
  'plan.work.stage': ({ stage, timers }, f) =>
    timers.length === 0
      ? f.say(stage)
      : `${f.say(stage)} [${timers.map((timer) => f.say(timer)).join('; ')}]`,
  'plan.work.caution': ({ signal, say }, f) => `${f.say(signal)}: ${f.say(say)}`,
  'plan.work.caution-after': ({ signal, say }, f) => `${f.say(signal)}, אחריו: ${f.say(say)}`,
  'plan.work.gate': ({ signal, say, ask }, f) =>
    `${f.say(signal)}: ${f.say(say)} אשרו קודם: ${f.say(ask)}`,
  'plan.work.kettles': ({ fixture, kettles }, f) =>
    `${fixture}: ${kettlesText(kettles, f)} של מים רותחים, אחרי כל אחד מים קרים.`,
  'plan.work.pour-within': ({ withinS }, f) =>
    `הטיפה האחרונה נופלת בתוך ${f.duration(withinS)} מהרתיחה, אחרת מרתיחים שוב.`,
  'plan.work.kettle-parts': ({ kettle, parts }, f) =>
    `קומקום ${f.number(kettle)}: ${parts.map((part) => f.say(part)).join('; ')}`,
  'plan.work.kettle-lanes': ({ kettle, lengthM }, f) =>
    `קומקום ${f.number(kettle)}: ${f.measure(lengthM, 'm', 1)} נתיבים`,
  'plan.work.kettle-told': ({ kettle, told }, f) =>
    `קומקום ${f.number(kettle)}: ${told.map((one) => f.say(one)).join(' ')}`,

  'common.resource.hands': 'ידיים',
  'common.resource.burners-lit': 'מבערים דולקים',
  'common.resource.watch': 'עיניים',
  'common.resource.unit.shares': 'חלקים',
  'common.resource.unit.people': 'אנשים',
  'common.resource.unit.burners': 'מבערים',
  'common.resource.unit.kettles': 'קומקומים',
  'common.resource.unit.amperes': 'אמפר',
};
