import type { TranslationOf } from '../../../model/translation.ts';
import type { damagedJournal as english } from '../../../english/run/sheets/journal.ts';

/** What is wrong with a journal, in the browser or in a file: said after the page has come. */
export const damagedJournal: TranslationOf<typeof english> = {
  'engine.journal.empty': 'אין ביומן רשומה שלמה.',
  'engine.journal.corrupt': ({ seq }) =>
    `אי אפשר לקרוא את רשומה ${seq}, ואחרות באות אחריה. ייצאו את היומן; הוא נפתח לקריאה בלבד.`,
  'engine.journal.altered': ({ seq }) =>
    `רשומה ${seq} שונתה אחרי שנכתבה: סכום הביקורת לא תואם. נפתח לקריאה בלבד.`,
  'engine.journal.broken-chain': ({ found, seq }) =>
    `רשומה ${found} עומדת במקום ${seq}, שאמורה לבוא אחרי הקודמת. אחת חסרה או כפולה.`,
  'engine.journal.newer-version': ({ seq, version, newest }) =>
    `רשומה ${seq} היא בגרסה ${version}; היישום קורא עד ${newest}. פתחו אותה ביישום החדש.`,
  'engine.journal.unknown-fact': ({ seq, kind }) =>
    `רשומה ${seq} מספרת על "${kind}", שהיישום לא מכיר. פתחו אותה ביישום החדש.`,
  'engine.journal.does-not-fold': ({ why }) => `כל רשומה תקינה, אבל ביחד הן לא יכלו לקרות: ${why}`,
  'engine.journal.file.long': ({ found, most }) =>
    `בקובץ ${found} תווים; מותר: עד ${most}. בחרו קובץ יומן.`,
  'engine.journal.file.not-json': ({ why }) => `הקובץ אינו JSON (${why}). בחרו קובץ יומן.`,
  'engine.journal.file.format': ({ found, allowed }) =>
    `format הוא ${found}; מותר: "${allowed}". בחרו קובץ יומן.`,
  'engine.journal.file.version': ({ found }) =>
    `version הוא ${found}; מותר: 1 או 2. פתחו ביישום שכתב אותו.`,
  'engine.journal.file.entries': ({ field }) =>
    `${field} אינו רשימה; מותר: רשימת רשומות. בחרו קובץ יומן.`,
};
