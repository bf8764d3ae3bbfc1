import type { TranslationOf } from '../../model/translation.ts';
import type { stop as english } from '../../english/run/stop.ts';

/** What makes safe, and the clock of a burn: here from the first moment of a run. */
export const stop: TranslationOf<typeof english> = {
  'run.stop': 'עצירה – למצב בטוח',
  'run.stop.dialog': 'עצירה והבאה למצב בטוח',
  'run.stop.nothing-hot': 'לפי התוכנית שום דבר לא חם עכשיו.',
  'run.stop.first': 'עשו זאת קודם, בכל מקרה:',
  'run.stop.danger': 'אש, גז או נפגע: צאו והתקשרו למספר החירום המקומי. היישום יכול לחכות.',
  'run.cooling': 'מישהו נכווה',
  'run.cooling.run': 'השאירו את המים הקרירים זורמים על הכווייה',
  'run.cooling.over': 'עברו 20 דקות: עכשיו כסו אותה',
  'run.cooling.steps': 'מה לעשות',
  'run.stop.press': 'לעצור את הביצוע עכשיו',
  'run.stop.lead': 'להוביל את הביצוע מכאן, כדי לעצור אותו',
  'run.stop.keep-going': 'להמשיך',
  'run.stop.reason': 'נעצר בידי אדם: להביא למצב בטוח.',
};
