import type { TranslationOf } from '../../model/translation.ts';
import type { told as english } from '../../english/custom/told.ts';

/** Names of customs, covers and terms, and how answers and lists of questions are told. */
export const told: TranslationOf<typeof english> = {
  'custom.name.ashkenazic': 'אשכנזי',
  'custom.name.sephardic': 'ספרדי',
  'custom.name.own': ({ name, base, rows }, f) =>
    rows === 0
      ? `${name} (${f.say(base)}, בלי שינוי)`
      : `${name} (${f.say(base)}, ${f.plural(rows, { one: 'עם שורה אחת משלנו', two: 'עם שתי שורות משלנו', other: `עם ${f.number(rows)} שורות משלנו` })})`,
  'custom.cover.rack-in-bowls': 'רשת על רצפת כל קערה',
  'custom.cover.basin-on-rack': 'גיגית שעומדת על רשת',
  'custom.cover.adhesive-paper': 'נייר נדבק רחיץ על מדפים, יריעת פלסטיק במגירות',
  'custom.cover.shelf-paper': 'נייר מדפים או יריעת פלסטיק',
  'custom.cover.liner-with-holes': 'ריפוד מדפים עם חורים, כדי שאוויר קר יעבור',
  'custom.cover.insert': 'תבנית ייעודית לאוכל, או כל האוכל בו מכוסה',
  'custom.cover.plastic-sheet': 'יריעת פלסטיק עבה, חתוכה לפי מידה',
  'custom.cover.heat-proof-liner': 'ריפוד עמיד בחום שהיצרן מרשה',
  'custom.cover.cut-to-size': 'ריפוד או כיסוי חתוך לפי מידה',
  'custom.term.hagalah': 'הגעלה',
  'custom.term.hagalah-by-steam': 'הגעלה באדים',
  'custom.term.irui': 'עירוי',
  'custom.term.libun-gamur': 'ליבון גמור',
  'custom.term.libun-kal': 'ליבון קל',
  'custom.term.milui-v-irui': 'מילוי ועירוי',
  'custom.sources': ({ sources }, f) => sources.map((source) => f.say(source)).join('; '),
  'custom.state.read': 'נקרא במקור',
  'custom.state.inference': 'אין מקור שאומר זאת במפורש',
  'custom.state.later-authorities': 'אחרונים, לא נקראו כאן',
  'custom.state.common-practice': 'כפי שנוהגים',
  'custom.state.memory': 'מצוטט מהזיכרון, עוד לא נבדק',
  'custom.state.said': 'נאמר למשק הבית הזה',
  'custom.rest.ask': 'האם צריך להשבית 24 שעות לפני חום ששורף את הבלוע?',
  'custom.rest.why':
    'מים היו נבלעים שוב; אש מכלה ואינה מפליטה (נלמד מהש״ך, יורה דעה קכ״א, י״ז). בלי ההשבתה התוכנית עשויה להתקצר ביום.',
  'custom.rest.until-then': 'להשבית קודם 24 שעות.',
  'custom.rest.answer-1': 'להשבית 24 שעות.',
  'custom.rest.answer-2': 'לפני חום כזה אין צורך בהשבתה.',
  'custom.reasons': ({ row, rule }, f) => `${f.say(row)} ${f.say(rule)}`,
  'custom.said-by': ({ saidBy, saidOn }) => `${saidBy}, ${saidOn}`,
  'custom.own-row.said-by': ({ custom, saidBy, saidOn }) =>
    `שורה במנהג שלנו "${custom}": ${saidBy}, ${saidOn}`,
  'custom.said.reason': 'כך נאמר על הפריט הזה, במקום שורת המנהג.',
  'custom.said.would-change': 'תשובה אחרת לאותה שאלה משנה זאת.',
  'custom.own-row.would-change': 'בטלו את השורה הזאת במנהג שלכם כדי לשנות זאת.',
  'custom.own-row.burners': ({ burners, why }, f) =>
    `מבערים מסוג ${burners.map((burner) => f.say(burner)).join(', ')}, לפי המנהג שלכם: ${why}`,

  'custom.inside-passover.reason':
    'עכשיו פסח: עד צאתו אין מכשירים דבר במים. מנקים, ואז מכסים או סוגרים.',
  'custom.inside-passover.would-change': 'להכשיר לפני פסח, או אחריו.',
  'custom.inside-passover.ask': 'הושבת 24 שעות: האם מותר להכשירו במים בתוך פסח?',
  'custom.inside-passover.why':
    'הרמ״א (תנ״ב, א׳) אינו מתיר להכשיר דבר במים בפסח. יש אחרונים שמתירים אחרי השבתה של 24 שעות.',
  'custom.inside-passover.until-then': 'עד אז הוא מכוסה או סגור.',
  'custom.pour-order.ask':
    'באיזה סדר מערים על הכיור: פייה, שפה, דפנות, תחתית, או התחתית קודם ואז כלפי מעלה?',
  'custom.pour-order.why':
    'העושים נחלקים. מלמעלה למטה דבר לא זורם על מקום שנגמר; אבל מה שיורד מגיע לתחתית מצונן, לפני הקילוח שלה.',
  'custom.pour-order.until-then':
    'מלמעלה למטה, ניקוז פתוח, דפנות ותחתית מנוגבות לפני שהקילוח מגיע אליהן.',
  'custom.pour-order.down': 'מלמעלה למטה: פייה, שפה, דפנות, תחתית.',
  'custom.pour-order.upwards': 'התחתית קודם ואז כלפי מעלה: דפנות, שפה, פייה.',
  'custom.questions.title': ({ kitchen }) => `שאלות לרב שלנו: ${kitchen}`,
  'custom.questions.custom': ({ custom }, f) => `מנהג: ${f.say(custom)}`,
  'custom.questions.standing':
    'המנהגים שונים. התוכנית הולכת לפי המנהג שבחרנו; התשובות שלמטה באות במקומו.',
  'custom.questions.to-ask': 'לשאול',
  'custom.questions.to-look': 'אנחנו בודקים',
  'custom.questions.answered': 'נענה',
  'custom.questions.numbered': ({ number, fixture, ask }, f) =>
    `${f.number(number)}. ${fixture}: ${f.say(ask)}`,
  'custom.questions.until-then': ({ untilThen }, f) => `עד שייענה: ${f.say(untilThen)}`,
  'custom.questions.answer-line': 'תשובה: ______________________________',
  'custom.questions.said-line': 'מפי: ________________  בתאריך: ________',
  'custom.questions.look': ({ fixture, ask }, f) => `- ${fixture}: ${f.say(ask)}`,
  'custom.questions.answered-line': ({ fixture, ask, answer, saidBy, saidOn }, f) =>
    `- ${fixture}: ${f.say(ask)} ${answer} (${saidBy}, ${saidOn})`,
};
