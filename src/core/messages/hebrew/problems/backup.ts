import type { TranslationOf } from '../../model/translation.ts';
import type { backup as english } from '../../english/problems/backup.ts';

/** A file with everything in it that cannot be read, or not all of it. */
export const backup: TranslationOf<typeof english> = {
  'problems.backup.allowed': ({ format }) => `קובץ שהיישום הזה שמר בו הכול ("${format}")`,
  'problems.backup.no-json': ({ why }) => `טקסט שנקטע (${why})`,
  'problems.backup.cut': 'הקובץ לא שלם. בחרו אחר, או העתיקו אותו שוב מהמקום שנשמר בו.',
  'problems.backup.choose': 'בחרו קובץ אחר.',
  'problems.backup.is-kitchen': 'זה מטבח אחד: פתחו אותו תחת "מטבח".',
  'problems.backup.is-run': 'זה ביצוע אחד: הביאו אותו בכפתור שמביא ביצוע.',
  'problems.backup.newer-app': 'גרסה חדשה יותר של היישום כתבה את הקובץ: עדכנו קודם את היישום.',
  'problems.backup.letters': ({ letters }, f) =>
    f.plural(letters, {
      one: 'אות אחת',
      two: 'שתי אותיות',
      other: `${f.number(letters)} אותיות`,
    }),
  'problems.backup.list': 'רשימה',
  'problems.backup.most': ({ most }, f) => `לכל היותר ${f.number(most)}`,
  'problems.backup.object': 'אובייקט בסוגריים מסולסלים',
  'problems.backup.text': 'טקסט',
  'problems.backup.moment': 'רגע באלפיות שנייה, משנת 1970 עד 9999',
  'problems.backup.choice': 'טקסט, מספר, true או false',
  'problems.backup.broken': 'זה נשאר בחוץ; כל מה ששלם מוחזר.',
};
