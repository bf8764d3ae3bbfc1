import type { TranslationOf } from '../../model/translation.ts';
import type { recovery as english } from '../../english/run/recovery.ts';

/** On a fault, and while something is made safe. */
export const recovery: TranslationOf<typeof english> = {
  'run.clock.withdraw': 'התשובה על השעון הייתה שגויה',

  'run.suspended': 'תקלה',
  'run.suspended.stopped': 'נעצר',
  'run.suspended.meanwhile': 'בינתיים, למישהו אחר',
  'run.suspended.go-on':
    'החום והשעונים ממשיכים בינתיים: הישארו לידם. רק אם אתם מסיימים כאן, הביאו למצב בטוח:',
  'run.suspended.clear': 'התקלה תוקנה',

  'run.closing': 'להביא למצב בטוח',
  'run.closing.title': 'הביאו את אלה למצב בטוח, ואשרו',
  'run.make-safe.done': 'בטוח',
  'run.make-safe.press': 'זה בטוח',

  'run.rest-day.look-in': 'להציץ בביצוע',
};
