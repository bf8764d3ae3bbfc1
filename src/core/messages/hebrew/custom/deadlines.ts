import type { TranslationOf } from '../../model/translation.ts';
import type { deadlines as english } from '../../english/custom/deadlines.ts';

/** By when a kitchen for Passover is purged; an open run says it too. */
export const deadlines: TranslationOf<typeof english> = {
  'custom.deadline.before-eve': 'ההכשרה מסתיימת לפני ערב פסח',
  'custom.deadline.before-leaven': ({ marginH }, f) =>
    `ההכשרה מסתיימת, ${f.number(marginH)} שע׳ לפני השעה החמישית`,
  'custom.deadline.candles': 'הדלקת נרות',
  'custom.deadline.asks':
    'עברה השעה הרביעית. עד הדלקת נרות עוד מכשירים במים, בזהירות יתרה: המוכשר והסיר הושבתו שניהם 24 שעות, והסיר מוכשר קודם ושוב אחר כך. שאלו את הרב לפני שתמשיכו.',
  'custom.deadline.asks-friday':
    'עברה השעה הרביעית של יום שישי. היום החמץ עוד מותר: שאלו את הרב אם ממשיכים כקודם עד הדלקת נרות.',
};
