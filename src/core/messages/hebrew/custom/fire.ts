import type { TranslationOf } from '../../model/translation.ts';
import type { fire as english } from '../../english/custom/fire.ts';

/** Rows of the customs for hobs and ovens: why, what may change it, what is asked. */
export const fire: TranslationOf<typeof english> = {
  'custom.way.burner-induction.ashkenazic.reason':
    'אינדוקציה מחממת את הסיר ולא את עצמה: היא לא מאדימה, ולפי המנהג הזה אין מכשירים את זכוכיתה במים.',
  'custom.way.burner-induction.ashkenazic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.burner-induction.ashkenazic.ask': 'איך מותר להכשיר כיריים אינדוקציה?',
  'custom.way.burner-induction.ashkenazic.why':
    'הן לא מאדימות. יש מערים על הזכוכית הקרה אם היצרן מרשה, ויש מכסים את האזורים.',
  'custom.way.burner-induction.ashkenazic.until-then': 'נקו אותן ואל תשתמשו בהן.',
  'custom.way.burner-induction.ashkenazic.answer-1': 'לערות על הזכוכית הקרה, אם היצרן מרשה.',
  'custom.way.burner-induction.ashkenazic.answer-2': 'לנקות ולכסות את האזורים.',
  'custom.way.burner-induction.ashkenazic.answer-3': 'הן נשארות בלי שימוש.',
  'custom.way.burner-induction.sephardic.reason':
    'אינדוקציה מחממת את הסיר ולא את עצמה: היא לא מאדימה. לפי המנהג הזה זכוכית לא בולעת; אם כך הדין גם בכיריים, שואלים.',
  'custom.way.burner-induction.sephardic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.burner-induction.sephardic.ask':
    'את זכוכית האינדוקציה שוטפים כזכוכית אחרת, או מערים עליה?',
  'custom.way.burner-induction.sephardic.why':
    'לפי המנהג הזה זכוכית נשטפת. ספרי הפסק לא הזכירו זכוכית שמעל גוף חימום, ומה שנצלה עליה עמד על האש.',
  'custom.way.burner-induction.sephardic.until-then': 'נקו אותן ואל תשתמשו בהן.',
  'custom.way.burner-induction.sephardic.answer-1': 'לנקות ולשטוף כזכוכית אחרת.',
  'custom.way.burner-induction.sephardic.answer-2': 'לערות על הזכוכית הקרה, אם היצרן מרשה.',
  'custom.way.burner-induction.sephardic.answer-3': 'הן נשארות בלי שימוש.',
  'custom.way.burner-mix-up.reason':
    'אוכל נשרף עליו על האש בלי נוזל. אם האוכל עצמו היה מותר, די בליבון קל.',
  'custom.way.burner-mix-up.would-change': 'אמרו מה נשפך עליו.',
  'custom.way.burner-mix-up.ask':
    'האם האוכל עצמו היה מותר (בשר במקום חלבי, או חלב במקום בשרי), או אסור?',
  'custom.way.burner-mix-up.why': 'מה שנבלע בהיתר מכשירים בליבון קל; איסור צריך ליבון גמור.',
  'custom.way.burner-mix-up.until-then': 'ללבן עד שמאדים.',
  'custom.way.burner-mix-up.answer-1': 'היה מותר: חום מלא, 30 דקות, בלי להאדים.',
  'custom.way.burner-mix-up.answer-2': 'היה אסור, או שאיש לא יודע: ליבון עד שמאדים.',
  'custom.way.burner-glass.reason':
    'אוכל נשרף על האזור על האש, ולכן מלבנים את הסרט שמתחתיו עד שמאדים.',
  'custom.way.burner-glass.would-change': 'ייתכן שהרב יאמר מספר דקות אחר.',
  'custom.way.burner-gas.sephardic.reason':
    'אוכל נשרף על החצובה על האש בלי נוזל, ולכן היא מוכשרת בלהבה מלאה עד שמאדימה במקום שהלהבה מגיעה.',
  'custom.way.burner-gas.sephardic.would-change':
    'ייתכן שהרב יאמר מספר דקות אחר. על החצובות שואלים בנפרד.',
  'custom.way.burner-gas.sephardic.note': 'חצובות וראשים: להבה מלאה, מאדים במקום שהלהבה מגיעה.',
  'custom.way.burner-gas.ashkenazic.reason':
    'אוכל נשרף על החצובה על האש בלי נוזל, ולכן היא מוכשרת בלהבה מלאה עד שמאדימה במקום שהלהבה מגיעה.',
  'custom.way.burner-gas.ashkenazic.would-change':
    'ייתכן שהרב יאמר מספר דקות אחר. על החצובות שואלים בנפרד.',
  'custom.way.burner-gas.ashkenazic.note':
    'חצובות וראשים: להבה מלאה, מאדים במקום שהלהבה מגיעה. רבים מניחים לוח מתכת על המבערים לפזר את החום: רק על כיריים ממתכת שהיצרן שלהן מרשה.',
  'custom.way.burner-plate.reason':
    'אוכל נשרף על הפלטה על האש בלי נוזל, ולכן מלבנים אותה עד שמאדימה. פלטות רבות מנתקות את החשמל לפני שהן מאדימות.',
  'custom.way.burner-plate.would-change': 'אמרו אם היא מאדימה בחדר חשוך.',
  'custom.way.burner-plate.ask': 'פלטה סגורה לרוב לא מאדימה. האם די בחום הגבוה ביותר שלה?',
  'custom.way.burner-plate.why': 'ספרי הפסק דורשים ליבון; רבות מהפלטות האלה לא מגיעות לזה.',
  'custom.way.burner-plate.until-then':
    'ללבן עד שמאדים בחדר חשוך; פלטה שלא מאדימה נשארת בלי שימוש.',
  'custom.way.burner-plate.answer-1': 'די בחום הגבוה ביותר 30 דקות.',
  'custom.way.burner-plate.answer-2': 'היא חייבת להאדים; כזו שלא מאדימה נשארת בלי שימוש.',
  'custom.way.burner-plate.answer-3': 'די בחום הגבוה ביותר 15 דקות.',
  'custom.way.burner-fire.reason':
    'אוכל נשרף על גוף החימום על האש בלי נוזל, ולכן מלבנים אותו עד שמאדים.',
  'custom.way.burner-fire.would-change': 'ייתכן שהרב יאמר מספר דקות אחר.',
  'custom.way.burner-fire.ask': 'כמה דקות צריכה ספירלה ללהוט?',
  'custom.way.burner-fire.why': 'ספרי הפסק דורשים ליבון ולא קבעו דקות; נוהגים 5 עד 30.',
  'custom.way.burner-fire.until-then': 'הניחו לה ללהוט 30 דקות.',
  'custom.way.burner-fire.answer-1': '30 דקות.',
  'custom.way.burner-fire.answer-2': '15 דקות.',
  'custom.way.burner-fire.answer-3': '5 דקות.',
  'custom.way.oven-pyrolytic.reason':
    'אוכל נשרף על דפנותיו בלי נוזל; מחזור הניקוי העצמי המלא שורף אותו. לא נזכר בספרי הפסק: תנור מכשירים בחום עד שניצוצות ניתזים.',
  'custom.way.oven-pyrolytic.would-change': 'אמרו אם היצרן אוסר את המחזור. מחזור שנקטע לא נחשב.',
  'custom.way.oven-pyrolytic.note': 'רשתות נכנסות רק אם היצרן מרשה להשאירן.',
  'custom.way.oven-new.reason':
    'אין לו מחזור ניקוי עצמי ששורף (ניקוי בקיטור או קטליטי אינו הכשרה). ספרי הפסק לא הזכירו דרגה של תנור: הם דורשים חום עד שניצוצות ניתזים. במטבח שלא היה כשר ליבון קל לא מועיל במקום שצריך אש.',
  'custom.way.oven-new.would-change': 'ייתכן שהרב יאמר מספר שעות אחר.',
  'custom.way.oven-new.ask': 'האם די בדרגה הגבוהה ביותר בלי להאדים, וכמה זמן?',
  'custom.way.oven-new.why': 'הדעות הן בין שעה לשעתיים; יש דורשים שיאדים, ולזה תנור כזה לא מגיע.',
  'custom.way.oven-new.until-then':
    'לחמם שעתיים בדרגה הגבוהה ביותר, ולהכניס אוכל רק מכוסה או בתבנית ייעודית.',
  'custom.way.oven-new.answer-1': 'די בשעה.',
  'custom.way.oven-new.answer-2': 'די בשעתיים.',
  'custom.way.oven-new.answer-3': 'שעתיים, ואוכל רק מכוסה או בתבנית ייעודית.',
  'custom.way.oven-new.answer-4':
    'הוא חייב להאדים, והתנור הזה לא יכול: אוכל רק מכוסה או בתבנית ייעודית.',
  'custom.way.oven-plain.reason':
    'אין לו מחזור ניקוי עצמי ששורף (ניקוי בקיטור או קטליטי אינו הכשרה). ספרי הפסק לא הזכירו דרגה של תנור: הם דורשים חום עד שניצוצות ניתזים.',
  'custom.way.oven-plain.would-change': 'ייתכן שהרב יאמר מספר שעות אחר.',
  'custom.way.oven-plain.ask': 'האם די בדרגה הגבוהה ביותר בלי להאדים, וכמה זמן?',
  'custom.way.oven-plain.why': 'הדעות הן בין שעה לשעתיים; יש דורשים שיאדים, ולזה תנור כזה לא מגיע.',
  'custom.way.oven-plain.until-then':
    'לחמם שעתיים בדרגה הגבוהה ביותר, ולהכניס אוכל רק מכוסה או בתבנית ייעודית.',
  'custom.way.oven-plain.answer-1': 'די בשעה.',
  'custom.way.oven-plain.answer-2': 'די בשעתיים.',
  'custom.way.oven-plain.answer-3': 'שעתיים, ואוכל רק מכוסה או בתבנית ייעודית.',
  'custom.way.oven-plain.answer-4':
    'הוא חייב להאדים, והתנור הזה לא יכול: אוכל רק מכוסה או בתבנית ייעודית.',
  'custom.way.oven-mix-up.reason': 'אוכל נשרף בו בלי נוזל. אם האוכל עצמו היה מותר, די בליבון קל.',
  'custom.way.oven-mix-up.would-change': 'אמרו מה נשפך בו.',
  'custom.way.oven-mix-up.ask':
    'האם האוכל עצמו היה מותר (בשר במקום חלבי, או חלב במקום בשרי), או אסור?',
  'custom.way.oven-mix-up.why': 'מה שנבלע בהיתר מכשירים בליבון קל.',
  'custom.way.oven-mix-up.until-then':
    'לחמם שעתיים בדרגה הגבוהה ביותר, ולהכניס אוכל רק מכוסה או בתבנית ייעודית.',
  'custom.way.oven-mix-up.answer-1': 'היה מותר: שעה בדרגה הגבוהה ביותר.',
  'custom.way.oven-mix-up.answer-2':
    'היה אסור, או שאיש לא יודע: שעתיים, ואוכל רק מכוסה או בתבנית ייעודית.',
};
