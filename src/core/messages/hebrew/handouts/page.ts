import type { TranslationOf } from '../../model/translation.ts';
import type { page as english } from '../../english/handouts/page.ts';

/** The part of the Plan that holds the handouts, and how one is chosen. */
export const page: TranslationOf<typeof english> = {
  'handouts.choose': 'דפים להדפסה או לשליחה',
  'handouts.print': 'להדפיס את הדף הזה',
  'handouts.send': 'לשלוח',
  'handouts.copy': 'להעתיק כטקסט',
  'handouts.copied': 'הועתק.',
  'handouts.not-copied': 'הדפדפן הזה לא העתיק.',
  'handouts.working': 'מחשבים…',
  'handouts.failed': ({ why }, f) => `אי אפשר היה לחשב. ${f.say(why)}`,
  'handouts.name.labels': 'תוויות',
  'handouts.name.rabbi': 'לרב',
  'handouts.name.covers': 'כיסויים לחיתוך',
  'handouts.name.utensils': 'כלים',
  'handouts.name.shopping': 'לקנות',
  'handouts.name.crew': 'לכל אחד מכם',
  'handouts.name.door': 'לדלת',
};
