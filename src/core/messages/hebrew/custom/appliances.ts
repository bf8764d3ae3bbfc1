import type { TranslationOf } from '../../model/translation.ts';
import type { appliances as english } from '../../english/custom/appliances.ts';

/** Rows of the customs for appliances and cupboards: why, what may change it, what is asked. */
export const appliances: TranslationOf<typeof english> = {
  'custom.way.hood.reason': 'רק אדים ושומן מגיעים אליו, ולא מבשלים בו אוכל.',
  'custom.way.hood.would-change': 'אמרו אם טפטף ממנו משהו לסירים.',
  'custom.way.hood.note': 'אל תפעילו אותו כשהמסננים בחוץ.',
  'custom.way.microwave.reason':
    'הוא בלע אדים, ואדי מים רותחים בפנים הם התשובה הרגילה. לא נזכר בספרי הפסק, ויש דורש כלי רותח במקום שהיו אדים.',
  'custom.way.microwave.would-change': 'אמרו אם הדופן סדוקה או שיש בו גוף השחמה.',
  'custom.way.microwave.ask': 'האם מותר להכשיר את המיקרוגל באדים, וכמה דקות?',
  'custom.way.microwave.why': 'לא נזכר בספרי הפסק. הדעות הן בין 10 ל־20 דקות.',
  'custom.way.microwave.until-then': 'הרתיחו בו מים 20 דקות.',
  'custom.way.microwave.answer-1': 'אדים 10 דקות.',
  'custom.way.microwave.answer-2': 'אדים 20 דקות.',
  'custom.way.dishwasher.reason':
    'מים חמים עם אוכל עוברים על הדפנות, הסלים והמשאבה, והדעות חלוקות אם מחזור הדחה מכשיר אותם.',
  'custom.way.dishwasher.would-change': 'דברי הרב שלכם עשויים לשנות זאת.',
  'custom.way.dishwasher.ask': 'האם מותר להכשיר את המדיח הזה, ובאיזה מחזור?',
  'custom.way.dishwasher.why': 'דין דפנות מתכת אינו כדין פלסטיק, ועל הסלים והמסנן שואלים בנפרד.',
  'custom.way.dishwasher.until-then': 'נקו אותו ואל תשתמשו בו.',
  'custom.way.dishwasher.answer-1': 'לנקות, ואז להפעיל ריק, במחזור החם ביותר.',
  'custom.way.dishwasher.answer-2': 'לנקות בלבד.',
  'custom.way.dishwasher.answer-3': 'הוא נשאר בלי שימוש.',
  'custom.way.warming-drawer.reason': 'היא לא מגיעה לחום שמכשיר, ולכן מנקים ומרפדים אותה.',
  'custom.way.warming-drawer.would-change': 'אמרו אם לפי היצרן היא מגיעה לחום של תנור.',
  'custom.way.warming-drawer.ask': 'האם מותר להכשיר את מגירת החימום, ואיך?',
  'custom.way.warming-drawer.why': 'היא מחממת אוכל מכוסה, ולרוב לא מגיעה לחום שמכשיר.',
  'custom.way.warming-drawer.until-then': 'רפדו אותה, והכניסו רק אוכל מכוסה.',
  'custom.way.warming-drawer.answer-1': 'לחמם בדרגה הגבוהה ביותר.',
  'custom.way.warming-drawer.answer-2': 'לרפד אותה.',
  'custom.way.cold-passover.reason': 'היה בשימוש קר בלבד: די בניקוי, ורבים מרפדים את המדפים לפסח.',
  'custom.way.cold-passover.would-change':
    'ייתכן שאצלכם לא מרפדים: שאלו. אמרו אם הונחו בו סירים חמים, או שנוזל עמד בו יממה.',
  'custom.way.cold.reason': 'היה בשימוש קר בלבד, ולכן די בניקוי יסודי ובשטיפה.',
  'custom.way.cold.would-change': 'אמרו אם הונחו בו סירים חמים, או שנוזל עמד בו יממה.',
  'custom.way.shelf-raw.reason':
    'עץ לא מצופה אוצר פירורים ולחות, ולכן מנקים ומרפדים; לא היה בשימוש חם.',
  'custom.way.shelf-raw.would-change': 'אמרו אם הוחזק עליו אוכל חם.',
  'custom.way.shelf-unknown.reason': 'לא ידוע ממה המדפים עשויים, ולכן מנקים ומרפדים אותם.',
  'custom.way.shelf-unknown.would-change': 'אמרו ממה הוא עשוי.',
  'custom.way.shelf-unknown.ask': 'ממה עשויים המדפים האלה?',
  'custom.way.shelf-unknown.why': 'עץ לא מצופה אוצר פירורים; משטחים אטומים רק מנקים.',
  'custom.way.shelf-unknown.until-then': 'נקו ורפדו אותם.',
  'custom.way.shelf.reason': 'היה בשימוש קר בלבד, ולכן די בניקוי יסודי.',
  'custom.way.shelf.would-change': 'אמרו אם הוחזק בו אוכל חם.',
};
