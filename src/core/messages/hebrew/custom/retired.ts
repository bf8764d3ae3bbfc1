import type { retired as english } from '../../english/custom/retired.ts';
import { UNCHANGED } from '../../english/custom/unchanged.ts';
import type { TranslationOf } from '../../model/translation.ts';
import { appliances } from './appliances.ts';
import { fire } from './fire.ts';
import { rules } from './rules.ts';
import { sinks } from './sinks.ts';
import { tops } from './tops.ts';

const TODAY = { ...sinks, ...tops, ...fire, ...appliances, ...rules };

type Unchanged = { readonly [K in (typeof UNCHANGED)[number] as `custom.row.${K}`]: string };

const GLASS_AS_CLAY = 'לפי המנהג הזה זכוכית דינה ככלי חרס, שאין מכשירים.';
const ZONE_GLOWS = 'אוכל נשרף על האזור על האש, ולכן מחממים את האזור עד שמאדים.';
const NO_CYCLE =
  'אין לו מחזור ניקוי עצמי ששורף (ניקוי בקיטור או קטליטי אינו הכשרה), ולכן מחממים אותו בדרגה הגבוהה ביותר.';

/** Sentences that no plan is made with any more and that journals of older runs still name. */
export const retired: TranslationOf<typeof english> = {
  ...(Object.fromEntries(
    UNCHANGED.map((row) => [`custom.row.${row}`, TODAY[`custom.way.${row}`]]),
  ) as Unchanged),
  'custom.row.sink-clay.ashkenazic.reason':
    'פורצלן, חרס מזוגג ואמייל דינם ככלי חרס, שאין מכשירים: לנקות, לכסות, ולהשתמש בגיגית על רשת.',
  'custom.row.sink-glass.ashkenazic.reason': GLASS_AS_CLAY,
  'custom.row.sink-wood.reason': 'עץ מוכשר כדרך תשמישו.',
  'custom.row.top-glass.ashkenazic.reason': GLASS_AS_CLAY,
  'custom.row.top-tile.reason': 'הרווחים שבין האריחים אוצרים אוכל שעירוי לא מגיע אליו.',
  'custom.row.counter-wood.ashkenazic.reason':
    'עץ חלק מוכשר כדרך תשמישו; קודם מלטשים כל חתך, ורבים מכסים אחר כך.',
  'custom.row.top-raw.reason': 'עץ לא מצופה סופג מים ואוצר אוכל.',
  'custom.row.table-pour.reason': 'אוכל חם עמד ונשפך עליו: עץ חלק, אבן או מתכת מוכשרים בעירוי.',
  'custom.row.table-other.reason': 'חומר זה לא מכשירים בביטחון, ושולחן קל לכסות.',
  'custom.row.burner-induction.reason':
    'אינדוקציה מחממת את הסיר ולא את עצמה: היא לא מאדימה, וזכוכיתה בלעה מה שגלש.',
  'custom.row.burner-induction.ask': 'איך מותר להכשיר כיריים אינדוקציה?',
  'custom.row.burner-induction.until-then': 'נקו אותן ואל תשתמשו בהן.',
  'custom.row.burner-glass.ashkenazic.reason': ZONE_GLOWS,
  'custom.row.burner-glass.ashkenazic.ask': 'איך לטפל בזכוכית שבין האזורים?',
  'custom.row.burner-glass.ashkenazic.until-then':
    'שום סיר, כף או אוכל לא ייגעו בזכוכית שבין האזורים.',
  'custom.row.burner-fire.reason':
    'אוכל נשרף על גוף החימום על האש בלי נוזל, ולכן מחממים אותו עד שמאדים.',
  'custom.row.oven-pyrolytic.reason':
    'אוכל נשרף על דפנותיו בלי נוזל; מחזור הניקוי העצמי המלא שורף אותו.',
  'custom.row.oven-plain.ashkenazic.reason': NO_CYCLE,
  'custom.row.oven-plain.ashkenazic.ask':
    'כמה זמן בדרגה הגבוהה ביותר, והאם אצלכם מקבלים זאת בלי להאדים?',
  'custom.row.oven-plain.ashkenazic.until-then':
    'לחמם שעתיים בדרגה הגבוהה ביותר, ולהכניס אוכל רק מכוסה או בתבנית ייעודית.',
  'custom.row.microwave.reason': 'הוא בלע באדים, ולכן אדי מים רותחים בפנים מכשירים אותו.',
  'custom.row.microwave.until-then': 'הרתיחו בו מים 20 דקות ואל תשתמשו בצלחת הזכוכית.',
  'custom.row.sink-wood-open.reason':
    'סדקים ועץ פתוח אוצרים מה שליטוש ומים לא מגיעים אליו, ולכן לא מערים אלא משתמשים בגיגית.',
  'custom.row.wood-open.reason':
    'סדקים ועץ פתוח אוצרים מה שליטוש ומים לא מגיעים אליו, ולכן לא מערים אלא מכסים.',
  'custom.row.sink-broken.reason':
    'סדק או נקבובית אוצרים מה ששפשוף לא מגיע אליו, ולכן משתמשים אחר כך בגיגית.',
  'custom.row.top-worn.reason':
    'משטחים ישנים, שרוטים או נקבוביים אוצרים אוכל: לערות, ואז לכסות בפלסטיק עבה.',
  'custom.row.sink-clay.sephardic.reason':
    'רבים דנים חרס מזוגג ככלי חרס, שאין מכשירים; על אמייל שואלים.',
  'custom.row.sink-clay.sephardic.until-then': 'לערות, ואז להשתמש בו עם גיגית על רשת.',
  'custom.row.counter-wood.sephardic.reason': 'עץ חלק מוכשר כדרך תשמישו; קודם מלטשים כל חתך.',
  'custom.row.burner-glass.sephardic.reason': ZONE_GLOWS,
  'custom.row.oven-plain.sephardic.reason': NO_CYCLE,
  'custom.row.oven-plain.sephardic.ask': 'כמה זמן בדרגה הגבוהה ביותר: שעה או שעתיים?',
  'custom.row.oven-plain.sephardic.until-then': 'לחמם שעתיים בדרגה הגבוהה ביותר.',
  'sources.oc-451-3-8': 'שולחן ערוך, אורח חיים תנא, ג–ח',
};
