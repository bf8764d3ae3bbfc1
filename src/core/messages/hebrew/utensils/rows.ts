import type { TranslationOf } from '../../model/translation.ts';
import type { rows as english } from '../../english/utensils/rows.ts';

/** Rows of the table of utensils by their id: why, and what is asked. */
export const rows: TranslationOf<typeof english> = {
  'utensils.row.sieve.reason': 'מה שנחבא בחורים אי אפשר לנקות, ולכן נפות ומגרדות לא מכשירים.',
  'utensils.row.dough-board.reason': 'נהגו שלא להשתמש בקרש שלשו עליו בצק, גם אחרי הכשרה.',
  'utensils.row.earthenware.reason': 'כלי חרס ששימש בחם אין מכשירים.',
  'utensils.row.porcelain.reason': 'חרסינה וכלים מזוגגים דינם ככלי חרס, שאין מכשירים.',
  'utensils.row.enamel.reason': 'השולחן ערוך לא מכשיר מה שמצופה אמייל מבפנים; האחרונים חלוקים.',
  'utensils.row.enamel.ask': 'האם מותר להגעיל מתכת מצופה אמייל?',
  'utensils.row.nonstick.reason':
    'ספרי הפסק לא הזכירו ציפויים; ציפוי עומד במים רותחים, לעולם לא בליבון.',
  'utensils.row.nonstick.ask': 'האם מותר להכשיר מחבת מצופה במים רותחים?',
  'utensils.row.made.reason': 'ספרי הפסק לא הזכירו פלסטיק, והאחרונים חלוקים.',
  'utensils.row.made.ask': 'האם מותר להגעיל פלסטיק או סיליקון במים רותחים?',
  'utensils.row.unknown-material.reason': 'לא ידוע ממה הוא עשוי, ולכן לא משתמשים בו.',
  'utensils.row.unknown-material.ask': 'ממה הוא עשוי?',
  'utensils.row.glass-rinse.reason': 'לפי המנהג הזה זכוכית לא בולעת דבר: שוטפים אותה.',
  'utensils.row.glass-drink.reason':
    'לפי המנהג הזה זכוכית דינה ככלי חרס; רבים משרים כוסות ששימשו בקר שלושה ימים, ומחליפים מים כל 24 שעות.',
  'utensils.row.glass-drink.ask': 'כוסות ששימשו בקר משרים לפסח, או רק שוטפים?',
  'utensils.row.glass-hot.reason': 'לפי המנהג הזה זכוכית ששימשה בחם דינה ככלי חרס, שאין מכשירים.',
  'utensils.row.glass-hot.ask': 'האם בכל זאת מותר להכשיר זכוכית ששימשה בחם?',
  'utensils.row.cold.reason':
    'שימש בקר בלבד: די בשפשוף ובשטיפה. נוזל שעמד בו יממה, או דבר חריף, נחשבים כחם.',
  'utensils.row.wood-fire.reason': 'מה ששימש על האש מכשירים באש, ועץ לא עומד בה.',
  'utensils.row.wood-joints.reason':
    'אוכל נשאר בחיבורים שאי אפשר לפתוח, ומה שאי אפשר לנקות לא מכשירים במים.',
  'utensils.row.wood-open.reason':
    'סדקים, גומות ומקומות מחוספסים אי אפשר לנקות, ומה שאי אפשר לנקות לא מכשירים במים.',
  'utensils.row.wood-open.ask': 'הוא חלק בכל מקום, או שאפשר ללטש אותו עד שיהיה חלק?',
  'utensils.row.wood-smooth.reason': 'עץ חלק ואבן מכשירים במים רותחים, כמו מתכת.',
  'utensils.row.stone-fire.reason': 'מה ששימש על האש מכשירים באש, ואבן הייתה נסדקת.',
  'utensils.row.mix-up-fire.reason':
    'שימש על האש בלי נוזל. ליבון קל מועיל אם מה שבלע היה אז מותר; בתערובת ייתכן שלא.',
  'utensils.row.mix-up-fire.ask': 'האם די בליבון קל בתערובת הזאת?',
  'utensils.row.soft-metal-fire.reason':
    'שימש על האש וצריך ליבון, אבל מתכת זו נמסה או מתעקמת לפני שתאדים.',
  'utensils.row.soft-metal-fire.ask': 'האם די לו בליבון קל?',
  'utensils.row.leaven-pan.reason':
    'במחבת משתמשים במעט שומן או בלעדיו. ליבון הוא הדרך המחמירה; לחמץ רבים מקלים.',
  'utensils.row.leaven-pan.ask': 'מחבת מכשירים לפסח בליבון, בליבון קל או במים?',
  'utensils.row.pan.reason':
    'מחבת ששימשה לדבר שאינו כשר מכשירים בליבון; במים לא הייתה מוכשרת לשימוש חם.',
  'utensils.row.tray.reason': 'מה שאפו עליו מכשירים בליבון, משומן או לא. אולי פשוט יותר להחליף.',
  'utensils.row.fire.reason': 'כבולעו כך פולטו: שימש על האש, מכשירים באש.',
  'utensils.row.gadget.reason':
    'במקום שחיבורים או ידית מודבקת לא נפתחים, אוכל נשאר בפנים, ומים מכשירים רק מה שנקי.',
  'utensils.row.gadget.ask': 'אפשר לפרק ולנקות אותו בכל מקום, גם את הידית?',
  'utensils.row.joints.reason':
    'אוכל נשאר בחיבורים שאי אפשר לפתוח. ליבון קל שורף אותו שם ומועיל בכל מקום שדי במים.',
  'utensils.row.cracks.reason':
    'סדקים, גומות וחלודה אי אפשר לנקות. ליבון קל שורף את מה שבהם ומועיל בכל מקום שדי במים.',
  'utensils.row.liquid.reason': 'כבולעו כך פולטו: שימש בנוזל על האש, מכשירים במים רותחים.',
  'utensils.row.poured.reason':
    'אוכל חם נשפך עליו. עירוי היה מכשיר אותו; הגעלה עושה יותר ולא מחמיצה מקום.',
};
