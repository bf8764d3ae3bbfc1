import type { TranslationOf } from '../../model/translation.ts';
import type { fields as english } from '../../english/problems/fields.ts';

/** Where a problem stands, what a value is and what one field may hold. Numbers are as the file writes them. */
export const fields: TranslationOf<typeof english> = {
  'problems.told': ({ where, found, allowed, advice }, f) =>
    `${f.say(where)}: נמצא: ${f.say(found)}; מותר: ${f.say(allowed)}. ${f.say(advice)}`,
  'problems.where.file': 'קובץ',
  'problems.where.field': ({ path }) => path,
  'problems.where.line': ({ line, field }, f) => `שורה ${line}, ${f.say(field)}`,
  'problems.where.letter': ({ line, column }) => `שורה ${line}, עמודה ${column}`,

  'problems.value': ({ json }) => json,
  'problems.found.missing': 'דבר (חסר)',
  'problems.found.none': 'אין',
  'problems.found.list': ({ count }) => `רשימה של ${count}`,
  'problems.found.object': 'אובייקט בסוגריים מסולסלים',
  'problems.did-you-mean': ({ name }) => `התכוונתם ל־"${name}"?`,

  'problems.number.allowed': ({ least, most }) => `מספר מ־${least} עד ${most}`,
  'problems.number.bare': 'כתבו את המספר בלי מירכאות ובלי יחידה, עם נקודה עשרונית.',
  'problems.number.add': 'הוסיפו את השדה הזה.',
  'problems.number.plain': 'כתבו מספר פשוט.',
  'problems.number.more': ({ least, most }) =>
    `הזינו יותר, ביחידה שבסוף השם (${least} עד ${most}).`,
  'problems.number.less': ({ least, most }) =>
    `הזינו פחות, ביחידה שבסוף השם (${least} עד ${most}).`,
  'problems.whole.allowed': ({ least, most }) => `מספר שלם מ־${least} עד ${most}`,
  'problems.whole.round': ({ to }) => `עגלו: ${to}.`,
  'problems.text.allowed': ({ least, most }) => `טקסט של ${least} עד ${most} אותיות במירכאות`,
  'problems.text.seen': 'טקסט בלי תווי בקרה ובלי סימנים שהופכים אותיות או עורמים אותן',
  'problems.text.look': 'הוא נקרא בלעדיהם: בדקו אם כתוב בו מה שצריך.',
  'problems.text.write': 'כתבו כמה מילים במירכאות.',
  'problems.text.shorten': ({ by }, f) =>
    `קצרו ${f.plural(by, { one: 'באות אחת', two: 'בשתי אותיות', other: `ב־${f.number(by)} אותיות` })}.`,
  'problems.text.blank': 'כתבו כאן משהו.',
  'problems.choice.advice': 'בחרו אחד מאלה.',
  'problems.yes-no.allowed': 'true או false',
  'problems.yes-no.advice': 'כתבו true או false, בלי מירכאות.',
  'problems.unknown-field.found': ({ name }) => `השדה הלא מוכר "${name}"`,
  'problems.unknown-field.more': ({ more }, f) =>
    f.plural(more, { one: 'עוד שדה לא מוכר אחד', other: `עוד ${f.number(more)} שדות לא מוכרים` }),
  'problems.unknown-field.allowed': ({ names }) => `השדות ${names}`,
  'problems.unknown-field.advice': 'השמיטו אותו; מילים חופשיות כותבים בשדה comment.',
  'problems.object.allowed': ({ names }) => `אובייקט בסוגריים מסולסלים, עם ${names}`,
  'problems.object.advice': 'כתבו את השדות בתוך סוגריים מסולסלים.',
  'problems.list.allowed': ({ least, most }) => `רשימה בסוגריים מרובעים, ${least} עד ${most}`,
  'problems.list.wrap': 'הקיפו בסוגריים מרובעים.',
  'problems.list.write': 'כתבו רשימה בסוגריים מרובעים.',
  'problems.list.add': ({ count }) => `הוסיפו עוד ${count}.`,
  'problems.list.take-out': 'הוציאו כמה.',
  'problems.pair.advice': 'כתבו שני מספרים בסוגריים מרובעים, ופסיק ביניהם.',
  'problems.kind.object': 'אובייקט בסוגריים מסולסלים, עם kind',
  'problems.kind.wrap': 'כתבו אותו בתוך סוגריים מסולסלים.',
  'problems.kind.advice': 'אמרו מה זה באחת המילים האלה.',
  'problems.id.allowed': ({ least, most }) =>
    `${least} עד ${most} אותיות a עד z, ספרות, - או _, במירכאות`,
  'problems.id.advice': 'השתמשו בשם קצר בלי רווחים, למשל "sink-left".',
  'problems.date.allowed': 'תאריך בצורה "yyyy-mm-dd"',
  'problems.date.advice': 'כתבו שנה, חודש ויום, למשל "2026-03-29".',
  'problems.date.days': ({ last }) => `יום 1 עד ${last} באותו חודש`,
  'problems.date.look-up': 'בדקו שוב את התאריך.',
  'problems.local-time.allowed': 'יום ושעה מקומיים בצורה "yyyy-mm-ddThh:mm", בשנים 1950 עד 2099',
  'problems.local-time.advice': 'כתבו את היום ואת השעה לפי שעון המטבח, למשל "2026-03-29T20:00".',
  'problems.point.allowed': 'פינה [x, y] במטרים',
  'problems.edge.allowed': 'שני מספרי פינות שכנות [from, to], נספרות מ־0',
  'problems.country.allowed': 'מדינה בשתי אותיות גדולות (ISO 3166-1)',
  'problems.country.advice': 'כתבו את קוד שתי האותיות, למשל "US", "GB" או "IL".',
  'problems.zone.quoted': 'שם אזור זמן של IANA במירכאות',
  'problems.zone.allowed': 'שם אזור זמן של IANA',
  'problems.zone.advice': 'כתבו כך: "Europe/Paris": אזור, לוכסן, עיר.',
  'problems.format.advice': 'זה מסמן קובץ מטבח; בלעדיו הקובץ הוא מסוג אחר.',
  'problems.version.advice': ({ version }) => `כתבו ${version}: הגרסה של התבנית הזאת.`,
};
