import type { TranslationOf } from '../../model/translation.ts';
import type { preparing as english } from '../../english/steps/preparing.ts';

/** What is done before anything is cleaned (shared/cleaning.json). */
export const preparing: TranslationOf<typeof english> = {
  'steps.prepare.say': 'בוצע',
  'steps.prepare.ask.title': 'לשאול את השאלות הפתוחות ולרשום את התשובות.',
  'steps.prepare.ask.line-1': 'רשימת השאלות היא חלק מהתוכנית.',
  'steps.prepare.ask.line-2': 'הזינו כל תשובה במטבח: היא באה במקום שורת המנהג.',
  'steps.prepare.gather.title': 'לאסוף את מה שברשימה.',
  'steps.prepare.gather.line-1': 'קראו את הוראות התנור, הכיריים והקומקום, ושל יצרן המשטח.',
  'steps.prepare.gather.line-2': 'החזיקו מטף, כפפות וכדי מים קרים במקום העבודה.',
  'steps.prepare.alarms.title': 'לבדוק את גלאי העשן ואת גלאי הפחמן החד־חמצני.',
  'steps.prepare.alarms.line-1': 'לחצו על לחצן הבדיקה של כל אחד.',
  'steps.prepare.alarms.line-2': 'קולט בחוזק מרבי: מושך רצועת נייר?',
  'steps.prepare.alarms.line-3': 'פתחו פעם את החלון.',
  'steps.prepare.clear.title': 'לפנות מהמטבח אוכל, כלים וכל דבר נייד.',
  'steps.prepare.clear.line-1': 'דברים נקיים עומדים על מגבת במקום אחר.',
  'steps.prepare.clear.line-2': 'נתקו מהחשמל את המכשירים הקטנים.',
  'steps.prepare.clear.line-3': 'רשמו את השימוש החם האחרון של כל פריט.',
};
