import type { TranslationOf } from '../model/translation.ts';
import type { rehearse as english } from '../english/rehearse.ts';

/** The band over a run that is rehearsed. */
export const rehearse: TranslationOf<typeof english> = {
  'rehearse.title': 'תרגול',
  'rehearse.about': 'דבר לא חם, דבר לא נכתב.',
  'rehearse.band': 'תרגול: מה הבא, ואיך זה מתנגן',
  'rehearse.ahead.start-run': 'הלחיצה הבאה: הביצוע מתחיל',
  'rehearse.ahead.start-step': ({ step }) => `הלחיצה הבאה: התחלת "${step}"`,
  'rehearse.ahead.confirm': ({ step }) => `הלחיצה הבאה: בוצע, "${step}"`,
  'rehearse.ahead.answer-gate': ({ step }) => `הלחיצה הבאה: "כן" לשאלה שלפני "${step}"`,
  'rehearse.ahead.acknowledge-timer': ({ step }) => `הלחיצה הבאה: מענה להתראה של "${step}"`,
  'rehearse.ahead.other': 'הלחיצה הבאה: מה שהמסך מבקש',
  'rehearse.ahead.wait': ({ wallMs, zone }, f) =>
    `אין מה ללחוץ; השעון רץ עד ${f.shortMoment(wallMs, zone)}`,
  'rehearse.ahead.still': 'שום דבר לא קורה יותר בעצמו: לחצו על מה שהמסך מבקש.',
  'rehearse.ahead.over': 'זה היה כל הביצוע. דבר ממנו לא נשמר.',
  'rehearse.pause': 'השהיה',
  'rehearse.play': 'להמשיך',
  'rehearse.step': 'הבא',
  'rehearse.slower': 'לאט יותר',
  'rehearse.faster': 'מהר יותר',
  'rehearse.speed': ({ speed }, f) =>
    `${f.number(speed, Number.isInteger(speed) ? 0 : Number.isInteger(speed * 2) ? 1 : 2)}×`,
  'rehearse.sound-on': 'עם צליל',
  'rehearse.sound-off': 'בלי צליל',
  'rehearse.leave': 'לצאת',
};
