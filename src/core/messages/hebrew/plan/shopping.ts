import type { TranslationOf } from '../../model/translation.ts';
import type { shopping as english } from '../../english/plan/shopping.ts';

/** What to buy and gather. */
export const shopping: TranslationOf<typeof english> = {
  /** What is bought, before how much of it. */
  'plan.buy.before-amount': ({ name }, f) => `${f.say(name)}:`,
  'plan.buy.kettle': ({ maxFillL, ratedW }, f) =>
    `קומקום חשמלי, ${f.shortMeasure(maxFillL, 'L')}, ${f.number(ratedW)} ואט`,
  'plan.buy.kettle.why': 'במטבח לא צוין קומקום שאפשר לערות ממנו.',
  'plan.buy.jugs': ({ jugL }, f) => `כדי מים קרים של ${f.fill(jugL, true)}`,
  'plan.buy.jugs.why': ({ coldL }, f) =>
    `כ־${f.measure(coldL, 'L')} מים קרים באים אחרי המים הרותחים.`,
  'plan.buy.mop': 'מגב, דלי וסמרטוטי רצפה',
  'plan.buy.mop.why': 'הרצפה נרטבת אחרי כל קומקום.',
  'plan.buy.gloves': 'כפפות ארוכות עמידות בחום ובמים',
  'plan.buy.gloves.why': 'מים רותחים ומתכת חמה.',
  'plan.buy.rubber-gloves': 'כפפות גומי ומשקפי מגן',
  'plan.buy.rubber-gloves.why': 'חומרי ניקוי.',
  'plan.buy.extinguisher': 'מטף למטבח, או שמיכת כיבוי',
  'plan.buy.extinguisher.why': 'ליבון וחום תנור.',
  'plan.buy.co-alarm': 'גלאי פחמן חד־חמצני, בדוק',
  'plan.buy.co-alarm.why': 'להבות ושומן נשרף פולטים פחמן חד־חמצני.',
  'plan.buy.smoke-alarm': 'גלאי עשן, בדוק',
  'plan.buy.smoke-alarm.why': 'הוא נשאר במקומו, פועל.',
  'plan.buy.ladder': 'סולם',
  'plan.buy.ladder.why': 'למקומות גבוהים עולים על סולם, לא על כיסא.',
  'plan.buy.towels': 'מגבות נקיות או סדין',
  'plan.buy.towels.why': 'דברים נקיים עומדים עליהן עד שהמשטחים מוכנים.',
  'plan.buy.cleaning': 'נוזל כלים, מברשות, ספוגי קרצוף, שואב אבק',
  'plan.buy.cleaning.why': 'ניקוי מלמעלה למטה.',
  'plan.buy.labels': 'תוויות או סרט בשלושה צבעים',
  'plan.buy.labels.why': 'מקומות בשריים, חלביים ופרווה.',
  'plan.buy.stone': 'חתיכת פלדה חלקה ונקייה, ומלקחיים ארוכים',
  'plan.buy.stone.why': 'מלבנים אותה ומזיזים אותה בזמן עירוי המים הרותחים.',
  'plan.buy.parts': ({ parts }, f) => `חדש: ${f.list(parts.map((part) => f.say(part)))}`,
  'plan.buy.parts.why': ({ fixture }) => `${fixture}: אלה לא מוכשרים. מדדו קודם את הישנים.`,
  'plan.buy.cover': ({ material }, f) => f.say(material),
  'plan.buy.cover.why': ({ fixtures }) => `עבור ${fixtures.join(', ')}.`,
  'plan.amount.count': ({ count }, f) => `כמות: ${f.number(count)}`,
  'plan.amount.set': 'ערכה אחת',
  'plan.amount.pairs': ({ pairs }, f) =>
    f.plural(pairs, { one: 'זוג אחד', two: 'שני זוגות', other: `${f.number(pairs)} זוגות` }),
  'plan.amount.bowls': ({ bowls }, f) =>
    f.plural(bowls, { one: 'לקערה אחת', two: 'לשתי קערות', other: `ל־${f.number(bowls)} קערות` }),
  'plan.amount.area': ({ areaM2 }, f) => f.shortMeasure(areaM2, 'm²'),
  'plan.amount.to-size': 'לפי מידה',
};
