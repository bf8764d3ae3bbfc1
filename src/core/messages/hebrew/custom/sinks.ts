import type { TranslationOf } from '../../model/translation.ts';
import type { sinks as english } from '../../english/custom/sinks.ts';

/** Rows of the customs for sinks: why, what may change it, what is asked. */
export const sinks: TranslationOf<typeof english> = {
  'custom.way.sink-metal-passover.reason':
    'אוכל ונוזל חמים נשפכו עליו, ולכן מים רותחים שמערים על כל מקום מכשירים אותו.',
  'custom.way.sink-metal-passover.would-change': 'ייתכן שאצלכם לא מוסיפים על העירוי: שאלו.',
  'custom.way.sink-metal-passover.ask': 'האם צריך לפסח רשת או גיגית בכיור אחרי העירוי?',
  'custom.way.sink-metal-passover.why': 'יש מוסיפים לפסח; ויש סומכים על העירוי.',
  'custom.way.sink-metal-passover.until-then': 'לערות, ואז להניח רשת בכל קערה.',
  'custom.way.sink-metal-passover.answer-1': 'די בעירוי.',
  'custom.way.sink-metal-passover.answer-2': 'לערות, ואז רשת או גיגית.',
  'custom.way.sink-metal.reason':
    'אוכל ונוזל חמים נשפכו עליו, ולכן מים רותחים שמערים על כל מקום מכשירים אותו.',
  'custom.way.sink-metal.would-change': 'אמרו אם הוא סדוק או שרוט עמוק.',
  'custom.way.sink-stone.reason':
    'אוכל ונוזל חמים נשפכו עליו, ולכן מים רותחים שמערים על כל מקום מכשירים אותו.',
  'custom.way.sink-stone.would-change': 'אמרו אם הוא סדוק או סופג מים.',
  'custom.way.sink-clay.ashkenazic.reason':
    'פורצלן וחרס מזוגג דינם ככלי חרס, שאין מכשירים: לנקות, לכסות, ולהשתמש בגיגית על רשת.',
  'custom.way.sink-clay.ashkenazic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.sink-enamel.ashkenazic.reason':
    'מה שמצופה אמייל מבפנים אין מכשירים לפי המנהג הזה: לנקות, לכסות, ולהשתמש בגיגית על רשת.',
  'custom.way.sink-enamel.ashkenazic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.sink-glass.ashkenazic.reason': 'לפי המנהג הזה אין מכשירים זכוכית.',
  'custom.way.sink-glass.ashkenazic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.sink-made.ashkenazic.reason': 'החומר לא נזכר בספרי הפסק, והאחרונים חלוקים.',
  'custom.way.sink-made.ashkenazic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.sink-made.ashkenazic.ask': 'האם מותר להכשיר בעירוי כיור מחומר זה?',
  'custom.way.sink-made.ashkenazic.why': 'לא נזכר בספרי הפסק, והאחרונים חלוקים.',
  'custom.way.sink-made.ashkenazic.until-then': 'להשתמש בו עם גיגית על רשת.',
  'custom.way.sink-made.ashkenazic.answer-1': 'לערות; אין צורך בגיגית.',
  'custom.way.sink-made.ashkenazic.answer-2': 'לערות, ואחר כך גיגית על רשת.',
  'custom.way.sink-made.ashkenazic.answer-3': 'לא מוכשר: להשתמש בגיגית על רשת.',
  'custom.way.sink-made.sephardic.reason': 'החומר לא נזכר בספרי הפסק, והאחרונים חלוקים.',
  'custom.way.sink-made.sephardic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.sink-made.sephardic.ask': 'האם מותר להכשיר בעירוי כיור מחומר זה?',
  'custom.way.sink-made.sephardic.why': 'לא נזכר בספרי הפסק, והאחרונים חלוקים.',
  'custom.way.sink-made.sephardic.until-then': 'לערות, ואז להשתמש בו עם גיגית על רשת.',
  'custom.way.sink-made.sephardic.answer-1': 'לערות; אין צורך בגיגית.',
  'custom.way.sink-made.sephardic.answer-2': 'לערות, ואחר כך גיגית על רשת.',
  'custom.way.sink-made.sephardic.answer-3': 'לא מוכשר: להשתמש בגיגית על רשת.',
  'custom.way.sink-wood.reason': 'עץ חלק מוכשר במים רותחים, כדרך תשמישו; אחר כך עומדת בו גיגית.',
  'custom.way.sink-wood.would-change': 'אמרו אם הוא חתוך, סדוק או מצופה לכה.',
  'custom.way.sink-raw.reason': 'עץ לא מצופה סופג מים ואוצר אוכל בנקבוביו, ומים לא מכשירים זאת.',
  'custom.way.sink-raw.would-change': 'על כיור חלק שאינו מצופה לכה מערים.',
  'custom.way.sink-unknown.ashkenazic.reason': 'לא ידוע ממה הכיור עשוי, ולכן משתמשים בו עם גיגית.',
  'custom.way.sink-unknown.ashkenazic.would-change': 'אמרו ממה הוא עשוי.',
  'custom.way.sink-unknown.ashkenazic.ask': 'ממה עשוי הכיור הזה?',
  'custom.way.sink-unknown.ashkenazic.why': 'מתכת מכשירים בעירוי; חרס אין מכשירים.',
  'custom.way.sink-unknown.ashkenazic.until-then': 'להשתמש בו עם גיגית על רשת.',
  'custom.way.sink-unknown.sephardic.reason':
    'לא ידוע ממה הכיור עשוי, ולכן מערים עליו ואז משתמשים בו עם גיגית.',
  'custom.way.sink-unknown.sephardic.would-change': 'אמרו ממה הוא עשוי.',
  'custom.way.sink-unknown.sephardic.ask': 'ממה עשוי הכיור הזה?',
  'custom.way.sink-unknown.sephardic.why': 'מתכת מכשירים בעירוי; על חרס וחומרים מלאכותיים שואלים.',
  'custom.way.sink-unknown.sephardic.until-then': 'לערות, ואז להשתמש בו עם גיגית על רשת.',
  'custom.way.sink-clay.sephardic.reason':
    'חרס מזוגג דינו ככלי חרס, שאין מכשירים; אחרונים במנהג הזה מערים שלוש פעמים.',
  'custom.way.sink-clay.sephardic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.sink-clay.sephardic.ask':
    'האם מותר להכשיר את הכיור בעירוי שלוש פעמים, או שצריך גיגית?',
  'custom.way.sink-clay.sephardic.why': 'השולחן ערוך לא מכשיר חרס מזוגג; רבים מערים שלוש פעמים.',
  'custom.way.sink-clay.sephardic.until-then': 'לערות פעם אחת, ואז להשתמש בו עם גיגית על רשת.',
  'custom.way.sink-clay.sephardic.answer-1': 'לערות שלוש פעמים, בלי גיגית.',
  'custom.way.sink-clay.sephardic.answer-2': 'לא מוכשר: להשתמש בגיגית על רשת.',
  'custom.way.sink-enamel.sephardic.reason':
    'על אמייל שואלים: יש דנים אותו כמתכת, יש כזכוכית, ויש שאין מכשירים אותו.',
  'custom.way.sink-enamel.sephardic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.sink-enamel.sephardic.ask':
    'האם מותר להכשיר את הכיור בעירוי שלוש פעמים, או שצריך גיגית?',
  'custom.way.sink-enamel.sephardic.why':
    'רבים מערים על אמייל שלוש פעמים; אחרים אין מכשירים אותו כלל.',
  'custom.way.sink-enamel.sephardic.until-then': 'לערות פעם אחת, ואז להשתמש בו עם גיגית על רשת.',
  'custom.way.sink-enamel.sephardic.answer-1': 'לערות שלוש פעמים, בלי גיגית.',
  'custom.way.sink-enamel.sephardic.answer-2': 'לא מוכשר: להשתמש בגיגית על רשת.',
  'custom.way.sink-glass.sephardic.reason': 'זכוכית לא בולעת: לפי המנהג הזה די בשטיפה.',
  'custom.way.sink-glass.sephardic.would-change': 'אמרו אם הוא סדוק או שחסר בו שבב.',
};
