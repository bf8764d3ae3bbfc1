import type { TranslationOf } from '../../model/translation.ts';
import type { tops as english } from '../../english/custom/tops.ts';

/** Rows of the customs for counters and tables: why, what may change it, what is asked. */
export const tops: TranslationOf<typeof english> = {
  'custom.way.top-stone-passover.reason':
    'אוכל ונוזל חמים נשפכו עליו, ולכן מים רותחים שמערים על כל מקום מכשירים אותו.',
  'custom.way.top-stone-passover.would-change': 'ייתכן שאצלכם לא מכסים: שאלו.',
  'custom.way.top-stone-passover.ask': 'האם צריך לכסות את המשטח לפסח אחרי העירוי?',
  'custom.way.top-stone-passover.why': 'רבים מכסים לפסח גם את מה שהוכשר.',
  'custom.way.top-stone-passover.until-then': 'לערות, ואז לכסות.',
  'custom.way.top-stone-passover.answer-1': 'די בעירוי.',
  'custom.way.top-stone-passover.answer-2': 'לערות, ואז לכסות.',
  'custom.way.top-stone.reason':
    'אוכל ונוזל חמים נשפכו עליו, ולכן מים רותחים שמערים על כל מקום מכשירים אותו.',
  'custom.way.top-stone.would-change': 'אמרו אם הוא סדוק או סופג מים.',
  'custom.way.top-glass.ashkenazic.reason': 'לפי המנהג הזה אין מכשירים זכוכית.',
  'custom.way.top-glass.ashkenazic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.top-clay.ashkenazic.reason': 'פורצלן וחרס מזוגג דינם ככלי חרס, שאין מכשירים.',
  'custom.way.top-clay.ashkenazic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.top-enamel.ashkenazic.reason': 'מה שמצופה אמייל אין מכשירים לפי המנהג הזה.',
  'custom.way.top-enamel.ashkenazic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.top-made.ashkenazic.reason':
    'החומר לא נזכר בספרי הפסק, והאחרונים חלוקים; המנהג לכסות.',
  'custom.way.top-made.ashkenazic.would-change':
    'ייתכן שהרב יורה לערות קודם: רק אם לפי היצרן הוא עומד במים רותחים.',
  'custom.way.top-tile.reason':
    'הרווחים שבין האריחים אוצרים אוכל שעירוי לא מגיע אליו, ואריחים מזוגגים דינם ככלי חרס.',
  'custom.way.top-tile.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.counter-wood.ashkenazic.reason':
    'עץ חלק מוכשר במים רותחים, כדרך תשמישו; קודם מלטשים כל חתך, ורבים מכסים אחר כך.',
  'custom.way.counter-wood.ashkenazic.would-change':
    'אמרו אם נשארו חתכים אחרי ליטוש, אם הוא מצופה לכה, או אם לשו עליו בצק.',
  'custom.way.counter-wood.sephardic.reason':
    'עץ חלק מוכשר במים רותחים, כדרך תשמישו; קודם מלטשים כל חתך.',
  'custom.way.counter-wood.sephardic.would-change':
    'אמרו אם נשארו חתכים אחרי ליטוש, או אם הוא מצופה לכה.',
  'custom.way.top-raw.reason': 'עץ לא מצופה סופג מים ואוצר אוכל בנקבוביו, ומים לא מכשירים זאת.',
  'custom.way.top-raw.would-change': 'על משטח חלק שאינו מצופה לכה מערים.',
  'custom.way.counter-unknown.ashkenazic.reason': 'לא ידוע ממה המשטח עשוי, ולכן מכסים אותו.',
  'custom.way.counter-unknown.ashkenazic.would-change': 'אמרו ממה הוא עשוי.',
  'custom.way.counter-unknown.ashkenazic.ask': 'ממה עשוי המשטח הזה?',
  'custom.way.counter-unknown.ashkenazic.why': 'אבן ומתכת מכשירים בעירוי; את השאר מכסים.',
  'custom.way.counter-unknown.ashkenazic.until-then': 'לכסות אותו.',
  'custom.way.counter-unknown.sephardic.reason':
    'לא ידוע ממה המשטח עשוי, ולכן מערים עליו ואז מכסים.',
  'custom.way.counter-unknown.sephardic.would-change': 'אמרו ממה הוא עשוי.',
  'custom.way.counter-unknown.sephardic.ask': 'ממה עשוי המשטח הזה?',
  'custom.way.counter-unknown.sephardic.why':
    'אבן ומתכת מכשירים בעירוי; על חומרים מלאכותיים שואלים.',
  'custom.way.counter-unknown.sephardic.until-then': 'לערות, ואז לכסות.',
  'custom.way.table-wood.reason':
    'מרק נשפך על שולחן: עץ חלק מוכשר בעירוי. קודם מלטשים כל חתך; רבים מכסים אחר כך.',
  'custom.way.table-wood.would-change':
    'אמרו אם נשארו חתכים אחרי ליטוש, אם הוא מצופה לכה, או אם לשו עליו בצק.',
  'custom.way.table-pour.reason': 'מרק נשפך על שולחן: מה שחלק מוכשר בעירוי.',
  'custom.way.table-pour.would-change': 'אמרו אם הוא חתוך, סדוק או מצופה לכה, או אם לוח שלו נפתח.',
  'custom.way.table-other.reason': 'החומר לא נזכר בספרי הפסק, ושולחן קל לכסות.',
  'custom.way.table-other.would-change': 'ייתכן שהרב יורה לערות עליו.',
  'custom.way.table-unknown.reason': 'לא ידוע ממה השולחן עשוי, ושולחן קל לכסות.',
  'custom.way.table-unknown.would-change': 'אמרו ממה הוא עשוי.',
  'custom.way.table-unknown.ask': 'ממה עשוי השולחן הזה?',
  'custom.way.table-unknown.why': 'עץ חלק, אבן ומתכת מכשירים בעירוי.',
  'custom.way.table-unknown.until-then': 'לכסות אותו.',
  'custom.way.top-clay.sephardic.reason':
    'חרס מזוגג דינו ככלי חרס, שאין מכשירים; אחרונים במנהג הזה מערים שלוש פעמים.',
  'custom.way.top-clay.sephardic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.top-clay.sephardic.ask': 'האם מותר להכשירו בעירוי שלוש פעמים, או שצריך כיסוי?',
  'custom.way.top-clay.sephardic.why': 'השולחן ערוך לא מכשיר חרס מזוגג; רבים מערים שלוש פעמים.',
  'custom.way.top-clay.sephardic.until-then': 'לערות פעם אחת, ואז לכסות.',
  'custom.way.top-clay.sephardic.answer-1': 'לערות שלוש פעמים; אין צורך בכיסוי.',
  'custom.way.top-clay.sephardic.answer-2': 'לא מוכשר: לכסות אותו.',
  'custom.way.top-enamel.sephardic.reason':
    'על אמייל שואלים: יש דנים אותו כמתכת, יש כזכוכית, ויש שאין מכשירים אותו.',
  'custom.way.top-enamel.sephardic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.top-enamel.sephardic.ask': 'האם מותר להכשירו בעירוי שלוש פעמים, או שצריך כיסוי?',
  'custom.way.top-enamel.sephardic.why':
    'רבים מערים על אמייל שלוש פעמים; אחרים אין מכשירים אותו כלל.',
  'custom.way.top-enamel.sephardic.until-then': 'לערות פעם אחת, ואז לכסות.',
  'custom.way.top-enamel.sephardic.answer-1': 'לערות שלוש פעמים; אין צורך בכיסוי.',
  'custom.way.top-enamel.sephardic.answer-2': 'לא מוכשר: לכסות אותו.',
  'custom.way.top-glass.sephardic.reason': 'זכוכית לא בולעת: לפי המנהג הזה די בשטיפה.',
  'custom.way.top-glass.sephardic.would-change': 'אמרו אם הוא סדוק או שחסר בו שבב.',
  'custom.way.top-made.sephardic.reason': 'החומר לא נזכר בספרי הפסק, והאחרונים חלוקים.',
  'custom.way.top-made.sephardic.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.top-made.sephardic.ask':
    'האם מותר להכשיר את המשטח הזה בעירוי, והאם צריך כיסוי אחר כך?',
  'custom.way.top-made.sephardic.why': 'החומר לא נזכר בספרי הפסק, והאחרונים חלוקים.',
  'custom.way.top-made.sephardic.until-then': 'לערות, ואז לכסות.',
  'custom.way.top-made.sephardic.answer-1': 'לערות; אין צורך בכיסוי.',
  'custom.way.top-made.sephardic.answer-2': 'לערות, ואז לכסות.',
  'custom.way.top-made.sephardic.answer-3': 'לכסות בלי עירוי.',
};
