import type { TranslationOf } from '../../model/translation.ts';
import type { notDrawn as english } from '../../english/steps/not-drawn.ts';

/** Why the lanes of a pour cannot be drawn: seldom, and so not among the first sentences of a run. */
export const notDrawn: TranslationOf<typeof english> = {
  'steps.pour.not-drawn.too-few-points': 'בקו המתאר שלו מעט מדי פינות',
  'steps.pour.not-drawn.not-a-number': 'פינה בקו המתאר שלו אינה מקום',
  'steps.pour.not-drawn.too-large': 'הוא גדול מחדר',
  'steps.pour.not-drawn.too-many-points': 'בקו המתאר שלו יותר מדי פינות',
  'steps.pour.not-drawn.too-fine': 'הוא ארוך מדי לנתיבים צרים כל כך',
  'steps.pour.not-drawn.no-area': 'קו המתאר שלו לא מקיף דבר',
  'steps.pour.not-drawn.all-cut-away': 'הפתחים לא משאירים ממנו דבר',
  'steps.pour.not-drawn.no-such-edge': 'שוליים אחוריים שאינם משוליו',
  'steps.pour.not-drawn.swath-out-of-range': 'הקילוח צר מדי או רחב מדי בשבילו',
  'steps.pour.not-drawn.volume-out-of-range': 'הוא לוקח מעט מדי מים, או יותר מדי קומקומים',
  'steps.pour.not-drawn.speed-out-of-range': 'היד תהיה איטית מדי או מהירה מדי',
  'steps.pour.not-drawn.size-out-of-range': 'לקערה מידה לא רגילה',
  'steps.pour.not-drawn.place-out-of-range': 'מקום שעליו נמצא בחוץ',
  'steps.pour.not-drawn.arm-out-of-range': 'הזרוע שנמסרה קצרה מדי או ארוכה מדי',
  'steps.pour.not-drawn.nowhere-to-stand': 'אין צד פנוי לעמוד בו',
};
