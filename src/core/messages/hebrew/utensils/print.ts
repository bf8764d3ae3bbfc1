import type { TranslationOf } from '../../model/translation.ts';
import type { print as english } from '../../english/utensils/print.ts';

/** How the utensils are told in print. */
export const print: TranslationOf<typeof english> = {
  'utensils.title': ({ kitchen }) => `כלים: ${kitchen}`,
  'utensils.none': 'במטבח הזה לא נרשמו כלים.',
  'utensils.section.methods': 'מה עושים עם כל אחד',
  'utensils.section.questions': 'לשאול או לבדוק',
  'utensils.section.rules': 'איך עושים',
  'utensils.section.batches': 'בסיר',
  'utensils.section.put-away': 'להרחיק או להחליף',
  'utensils.section.mikveh': 'אחר כך למקווה',

  'utensils.count': ({ count, name }, f) => `${f.number(count)} × ${f.say(name)}`,
  'utensils.line': ({ what, method, term }, f) =>
    `${f.say(what)}: ${f.say(method)}${term === '' ? '' : ` (${term})`}.`,
  'utensils.why': ({ reason, source, state }, f) =>
    `${f.say(reason)} [${f.say(source)}; ${f.say(state)}]`,
  'utensils.use-assumed': 'לא נמסר איך השתמשו בו: הונח השימוש הרגיל.',
  'utensils.question': ({ what, ask }, f) => `${f.say(what)}: ${f.say(ask)}`,
  'utensils.answers': ({ answers }, f) => answers.map((answer) => f.say(answer)).join(' / '),
  'utensils.rule': ({ text, source }, f) => `${f.say(text)} [${f.say(source)}]`,

  'utensils.pot': ({ name, volumeL, boilingC, firstS }, f) =>
    `${f.say(name)}, ${f.shortMeasure(volumeL, 'L')}; כאן מים רותחים ב־${f.measure(boilingC, '°C', 1)}, אחרי ${f.about(firstS.typical)}.`,
  'utensils.no-pot': 'לא נמסר סיר על מבער שמרתיח לזה מים: שאלו מאחרים או קנו סיר להכשרה בלבד.',
  'utensils.unfit': ({ what, leastPotL }, f) =>
    `${f.say(what)}: לא נכנס לתוכו, גם לא חצי חצי. צריך סיר של כ־${f.measure(leastPotL, 'L', 0, 'up')}.`,
  'utensils.pot-needed': ({ what, leastPotL }, f) =>
    `${f.say(what)}: סיר של לפחות ${f.measure(leastPotL, 'L', 0, 'up')}.`,
  'utensils.boil-over': ({ what, leastPotL }, f) =>
    `${f.say(what)}: לא נכנס לתוכו. מלאו אותו עד השפה, הרתיחו והניחו לו לגלוש מעל שפתו; אם אוכל חם נגע בו מבחוץ צריך סיר של כ־${f.measure(leastPotL, 'L', 0, 'up')}.`,
  'utensils.fresh-water': 'שפכו את המים, הכשירו שוב את הסיר, הרתיחו מים חדשים.',
  'utensils.batch': ({ number, group, items, fillL }, f) =>
    `סבב ${f.number(number)}, ${f.say(group)}: ${f.list(items.map((item) => f.say(item)))}. מלאו ${f.fill(fillL)}.`,
  'utensils.batch.tongs': ({ dips }, f) =>
    `אחד אחד במלקחיים: פנימה, החוצה, לסובב, שוב פנימה (${f.number(dips)} טבילות).`,
  'utensils.batch.net': 'משוחררים ברשת, מנוערים מתחת למים כדי שיגיעו לכל מקום.',
  'utensils.batch.halves': ({ dips }, f) =>
    `אחד אחד, אוחזים בקצה: חצי אחד פנימה מעט מעבר לאמצע, ואז השני (${f.number(dips)} טבילות).`,
  'utensils.batch.wait': ({ mixedC, recoverS }, f) =>
    `המים יורדים לכ־${f.measure(mixedC.typical, '°C', 1)}; הם רותחים שוב אחרי ${f.about(recoverS.typical)}. חכו לכך כשהכלים מתחת למים.`,
};
