import type { TranslationOf } from '../../model/translation.ts';
import type { timers as english } from '../../english/run/timers.ts';

/** Timers beside the step in hand. */
export const timers: TranslationOf<typeof english> = {
  'run.timers': 'שעונים',
  'run.timers.none': 'שום שעון אחר לא פועל.',
  'run.timer.named': ({ name, label }, f) => `${f.say(name)}: ${f.say(label)}`,
  'run.timer.reading': ({ label, left }, f) => `${f.say(label)}: ${f.say(left)}`,
  'run.timer.calls': 'עכשיו',
  'run.timer.calls-here': ({ state }, f) => `${f.say(state)}: געו כששמעתם`,
  'run.timer.frozen': 'מושהה',
  'run.timer.unproved': 'לא מוכח: ענו על השאלה',
  'run.timer.void': 'לא נספר',
  'run.timer.closed': 'נגמר',
  'run.timer.due': 'עכשיו',
  'run.timer.late': ({ ago }, f) => `הגיע זמנו לפני ${f.say(ago)}, כשאי אפשר היה לומר`,
  'run.timer.due-in-rest-day': ({ day, ago }, f) =>
    `הגיע זמנו במהלך ${f.say(day)}, לפני ${f.say(ago)}`,
};
