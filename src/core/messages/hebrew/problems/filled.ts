import type { TranslationOf } from '../../model/translation.ts';
import type { filled as english } from '../../english/problems/filled.ts';

/** Why a field that the file left out was filled as it was. */
export const filled: TranslationOf<typeof english> = {
  'problems.filled.not-told': 'לא נמסר',
  'problems.filled.plan-asks': 'לא נמסר: התוכנית שואלת',
  'problems.filled.designation': 'איש לא אמר לאן ישתייך',
  'problems.filled.holes': 'לא שורטט פתח',
  'problems.filled.back-edges': 'אין שוליים צמודים לקיר',
  'problems.filled.backsplash': 'לא נמסר חיפוי קיר',
  'problems.filled.tap': 'מקובל: ידית אחת בלי מתז',
  'problems.filled.drainboard': 'לא נמסר משטח ייבוש',
  'problems.filled.racks': 'הרשתות יוצאות אלא אם היצרן מרשה להשאירן',
  'problems.filled.shelves': 'לא נמדד מדף',
  'problems.filled.own-rows': 'שום שורה לא שונתה',
  'problems.filled.people': 'אדם אחד עובד אלא אם נמסר אחרת',
  'problems.filled.rest-days': 'דבר לא מתוכנן בשבתות ובחגים אלא אם נמסר אחרת',
  'problems.filled.overrides': 'לא הוזנה תשובה של רב',
  'problems.filled.ceiling': 'גובה תקרה מקובל',
  'problems.filled.hood': 'לא נמסר קולט: נחשב כאילו אין עד שיימסר',
  'problems.filled.kitchen-mains': 'מתח הרשת של המטבח',
  'problems.filled.country-mains': 'מתח הרשת של המדינה',
  'problems.filled.vessel-power': 'מקובל לקומקום חשמלי במדינה הזאת; 0 למה שעומד על הכיריים',
  'problems.filled.utensil-count': 'אחד אלא אם נמסר אחרת',
  'problems.filled.vessel-count': 'אחד אלא אם נמסר אחרת',
  'problems.filled.altitude': 'גובה פני הים: בהרים המים רותחים בחום נמוך יותר',
  'problems.filled.tap-cold': 'מקובל למי רשת ולבדיקות קומקומים',
  'problems.filled.circuits': 'לא נמסר מעגל חשמלי',
  'problems.filled.vessels': 'לא נמסר קומקום',
};
