import type { TranslationOf } from '../../model/translation.ts';
import type { faultLines as english } from '../../english/cautions/fault-lines.ts';

/** What to do about each fault (shared/fault-policies.json). */
export const faultLines: TranslationOf<typeof english> = {
  'cautions.fault.no-glow.line-1': 'החשיכו את החדר והביטו שוב: במטבח מואר הלהט נראה מאוחר.',
  'cautions.fault.no-glow.line-2': 'בכיריים מזכוכית האזור נדלק וכבה בעצמו: זה תקין, חכו.',
  'cautions.fault.no-glow.line-3': 'בדקו שהוא בדרגה הגבוהה, מחובר לחשמל, ושיש גז.',
  'cautions.fault.no-glow.line-4':
    'ספירלה שחשה את הסיר, פלטה עם נקודה אדומה או תנור משולב במתח נמוך מדי אולי לא יאדימו חשופים לעולם. אין זה קלקול.',
  'cautions.fault.no-glow.line-5':
    'אם נשאר כהה, כבו ודלגו: הוא לא הוכשר. שאלו איך להכשיר אותו; עד התשובה אין להשתמש בו.',
  'cautions.fault.flame-out.line-1': 'סגרו את כפתור המבער.',
  'cautions.fault.flame-out.line-2': 'אווררו את החדר חמש דקות לפני שמדליקים שוב.',
  'cautions.fault.flame-out.line-3': 'הדליקו שוב: הזמן נספר מחדש.',
  'cautions.fault.power-cut.line-1': 'כבו כל מתג וכפתור, כדי שדבר לא יידלק בעצמו.',
  'cautions.fault.power-cut.line-2': 'כשהחשמל חוזר, התחילו שוב כל חימום שנקטע.',
  'cautions.fault.smoke.line-1': 'כבו את מה שמעשן. דלת תנור נשארת סגורה.',
  'cautions.fault.smoke.line-2': 'הפעילו את הקולט, פתחו חלונות, וצאו מהעשן.',
  'cautions.fault.smoke.line-3': 'אם לא נרגע, כולם החוצה והתקשרו לכבאות.',
  'cautions.fault.fire.line-1':
    'תנור: השאירו את הדלת סגורה וכבו. סיר או מבער: כבו ושימו מכסה. לעולם לא מים על שומן.',
  'cautions.fault.fire.line-2': 'כולם החוצה והתקשרו לכבאות אם לא כבתה מיד.',
  'cautions.fault.co-alarm.line-1': 'כבו את החום.',
  'cautions.fault.co-alarm.line-2': 'כולם החוצה לאוויר צח, והתקשרו למספר החירום.',
  'cautions.fault.co-alarm.line-3': 'חזרו רק כשאנשי החירום אומרים כך.',
  'cautions.fault.gas-smell.line-1': 'בלי להבה, בלי מתג, בלי טלפון בפנים.',
  'cautions.fault.gas-smell.line-2': 'סגרו את ברז הגז אם הוא בהישג יד, כולם החוצה, והתקשרו מבחוץ.',
  'cautions.fault.unwell.line-1': 'כבו את החום.',
  'cautions.fault.unwell.line-2': 'עזרו לו קודם: אוויר צח, לשבת או לשכב.',
  'cautions.fault.unwell.line-3': 'התקשרו למספר החירום אם זה חמור או לא חולף מיד.',
  'cautions.fault.kettle-failed.line-1': 'נתקו אותו מהחשמל והשאירו סגור עד שיתקרר.',
  'cautions.fault.kettle-failed.line-2':
    'המשיכו בקומקום אחר, או הרתיחו שוב: אין מערים מים שהצטננו.',
  'cautions.fault.oven-lock.line-1': 'חכו עד שיתקרר: המנעול נפתח מאוחר.',
  'cautions.fault.oven-lock.line-2': 'נתקו את המפסק לדקה, ואז נסו שוב. אל תפתחו את הדלת בכוח.',
  'cautions.fault.oven-lock.line-3': 'הזמינו תיקון, או דלגו ושאלו.',
  'cautions.fault.breaker-tripped.line-1': 'כבו כל מה שבמעגל החשמלי הזה.',
  'cautions.fault.breaker-tripped.line-2':
    'העבירו גוף חימום אחד למעגל אחר, ואז הרימו את המפסק פעם אחת.',
  'cautions.fault.breaker-tripped.line-3': 'אם הוא קופץ שוב, השאירו אותו למטה וקראו לחשמלאי.',
  'cautions.fault.cracked.line-1': 'הפסיקו לערות שם והתרחקו.',
  'cautions.fault.cracked.line-2': 'הניחו לו להתקרר בעצמו, בלי מים.',
  'cautions.fault.cracked.line-3': 'סמנו אותו, שאלו איך לטפל בו, ודלגו על מה שאי אפשר.',
  'cautions.fault.undefined.line-1': 'כבו את מה שחם.',
  'cautions.fault.undefined.line-2': 'כתבו מה קרה.',
  'cautions.fault.undefined.line-3': 'המשיכו כשתוקן.',
};
