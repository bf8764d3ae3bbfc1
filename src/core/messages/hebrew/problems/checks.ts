import type { TranslationOf } from '../../model/translation.ts';
import type { checks as english } from '../../english/problems/checks.ts';

/** Fields that are each in order and do not fit together. */
export const checks: TranslationOf<typeof english> = {
  'problems.mains.found': ({ country }) => `דבר, ואין מתח רשת מקובל עבור "${country}"`,
  'problems.mains.allowed': ({ least, most, countries }) =>
    `מספר מ־${least} עד ${most}, או אחת המדינות ${countries}`,
  'problems.mains.advice': 'כתבו את מתח הרשת, למשל 120 או 230.',
  'problems.vessel-power.none': 'בלי הספק (0 או חסר)',
  'problems.vessel-power.allowed': ({ leastW }) => `לפחות ${leastW} ואט לכלי חשמלי`,
  'problems.vessel-power.advice': 'קראו את ההספק בלוחית שמתחתיו.',

  'problems.reference.circuit.none': 'מזהה של מעגל חשמלי; אין כזה בקובץ',
  'problems.reference.burner.none': 'מזהה של מבער; אין כזה בקובץ',
  'problems.reference.cooktop.none': 'מזהה של כיריים; אין כזה בקובץ',
  'problems.reference.part.none': 'חלק של הפריט; אין לו כזה',
  'problems.reference.part.describe': 'השמיטו את החלק: התשובה על הפריט כולו.',
  'problems.reference.part.allowed': ({ ids }, f) => `חלק של הפריט: ${f.say(ids)}`,
  'problems.reference.fixture.none': 'מזהה של פריט; אין כזה בקובץ',
  'problems.reference.circuit.describe': 'תארו קודם את המעגל החשמלי.',
  'problems.reference.burner.describe': 'תארו קודם את המבער.',
  'problems.reference.cooktop.describe': 'תארו קודם את הכיריים.',
  'problems.reference.fixture.describe': 'תארו קודם את הפריט.',
  'problems.reference.circuit.allowed': ({ ids }, f) => `מזהה של מעגל חשמלי: ${f.say(ids)}`,
  'problems.reference.burner.allowed': ({ ids }, f) => `מזהה של מבער: ${f.say(ids)}`,
  'problems.reference.cooktop.allowed': ({ ids }, f) => `מזהה של כיריים: ${f.say(ids)}`,
  'problems.reference.fixture.allowed': ({ ids }, f) => `מזהה של פריט: ${f.say(ids)}`,
  'problems.reference.use-one': 'השתמשו באחד המזהים האלה.',

  'problems.id-twice.found': ({ id, earlier }) => `"${id}", שכבר יש אצל ${earlier}`,
  'problems.id-twice.allowed': 'מזהה שאין לשום דבר אחר בקובץ',
  'problems.id-twice.advice': ({ example }) => `תנו לו מזהה אחר, למשל "${example}".`,

  'problems.stove.burners': ({ ids }, f) => `מזהה המבער שהוא עומד עליו: ${f.say(ids)}`,
  'problems.stove.no-burners': 'מזהה המבער שהוא עומד עליו: לא תואר מבער',
  'problems.stove.name': 'ציינו את המבער שמחמם אותו.',
  'problems.stove.circuit': ({ kind }) => `מעגל חשמלי לכלי שעל הכיריים (${kind})`,
  'problems.stove.no-circuit': 'בלי מעגל חשמלי',
  'problems.stove.advice': 'השמיטו את המעגל, או שנו ל־"electric-kettle" או "urn".',
  'problems.electric.burner': ({ kind }) => `מבער לכלי חשמלי (${kind})`,
  'problems.electric.no-burner': 'בלי מבער',
  'problems.electric.advice': 'השמיטו את המבער, או שנו ל־"stove-kettle" או "pot".',

  'problems.answers.found': ({ fixture, earlier }) =>
    `תשובה שנייה על "${fixture}" (הראשונה היא overrides[${earlier}])`,
  'problems.answers.allowed': 'תשובה אחת לפריט',
  'problems.answers.advice': 'השאירו רק את התשובה המאוחרת.',

  'problems.own-row.sephardic': ({ rows }, f) => `שורה במנהג הספרדי: ${f.say(rows)}`,
  'problems.own-row.ashkenazic': ({ rows }, f) => `שורה במנהג האשכנזי: ${f.say(rows)}`,
  'problems.own-row.use-one': 'השתמשו באחת השורות האלה.',
  'problems.own-row.use-method': 'השתמשו באחת השיטות האלה בשורה הזאת.',
  'problems.own-row-twice.found': ({ row, earlier }) =>
    `"${row}" פעם שנייה (הראשונה היא changedRows[${earlier}])`,
  'problems.own-row-twice.allowed': 'כל שורה פעם אחת',
  'problems.own-row-twice.advice': 'השאירו רק את השינוי המאוחר.',
  'problems.own-cover.allowed': ({ method }) => `true לצד השיטה "${method}"`,
  'problems.own-cover.advice': 'השמיטו את "cover", או בחרו שיטה אחרת.',

  'problems.corner-twice.found': ({ corner, next }) => `פינות ${corner} ו־${next} במקום אחד`,
  'problems.corner-twice.allowed': 'כל פינה פעם אחת',
  'problems.corner-twice.closes': 'השמיטו את הפינה האחרונה: קו המתאר נסגר בעצמו.',
  'problems.corner-twice.take-out': ({ corner }) => `השמיטו את פינה ${corner}.`,
  'problems.spike.found': ({ corner }) => `קו מתאר שחוזר על עצמו בפינה ${corner}`,
  'problems.spike.allowed': 'פינות לפי הסדר, פעם אחת סביב המשטח',
  'problems.spike.advice': ({ corner }) => `בדקו את פינה ${corner} ואת שכנותיה.`,
  'problems.crossing.found': ({ first, second }) =>
    `שוליים מפינה ${first} ומפינה ${second} שנחתכים או נוגעים`,
  'problems.crossing.allowed': 'קו מתאר שלא חוצה את עצמו',
  'problems.crossing.advice': 'רשמו את הפינות בסדר שבו פוגשים אותן סביב המשטח.',
  'problems.surface.found': ({ surfaceM2 }, f) => `משטח של ${f.measure(surfaceM2, 'm²', 4)}`,
  'problems.surface.allowed': ({ leastM2 }, f) => `לפחות ${f.shortMeasure(leastM2, 'm²', 4, 'up')}`,
  'problems.surface.advice': 'המידות במטרים והפינות מקיפות את המשטח פעם אחת.',

  'problems.box': ({ xMinM, xMaxM, yMinM, yMaxM }, f) =>
    `x מ־${f.tape(xMinM, { decimals: 3, isShort: true, isFirst: true })} עד ${f.tape(xMaxM, { decimals: 3, isShort: true })}, y מ־${f.tape(yMinM, { decimals: 3, isShort: true, isFirst: true })} עד ${f.tape(yMaxM, { decimals: 3, isShort: true })}`,
  'problems.hole.found': ({ box }, f) => `פתח ב: ${f.say(box)}`,
  'problems.hole.allowed': ({ box }, f) => `בתוך קו המתאר של המשטח (${f.say(box)})`,
  'problems.hole.advice': 'מדדו אותו מאותה פינה כמו המשטח.',
  'problems.holes-overlap.found': ({ earlier }) => `פתח שמונח על holes[${earlier}]`,
  'problems.holes-overlap.allowed': 'פתחים נפרדים זה מזה',
  'problems.holes-overlap.advice': 'שרטטו פתח אחד לשניהם.',
  'problems.back-edge.corners': ({ last }) => `מספרי פינות 0 עד ${last}`,
  'problems.back-edge.first': 'הפינה הראשונה בקו המתאר היא 0.',
  'problems.back-edge.neighbours': 'שתי פינות שכנות בקו המתאר',
  'problems.back-edge.next': ({ from, next }) => `אחרי פינה ${from} באה פינה ${next}.`,
  'problems.bowls.found': ({ bowlsM2 }, f) => `קערות של ${f.measure(bowlsM2, 'm²', 2)} יחד`,
  'problems.bowls.allowed': ({ outlineM2 }, f) =>
    `לא יותר מקו המתאר של הכיור, ${f.measure(outlineM2, 'm²', 2)}`,
  'problems.bowls.advice': 'מדדו שוב קערות וקו מתאר, במטרים.',
  'problems.burner-place.allowed': ({ box }, f) => `נקודה על הכיריים (${f.say(box)})`,
  'problems.burner-place.advice': 'מדדו את אמצע המבער באותו מבט מלמעלה כמו הכיריים.',
  'problems.heights.allowed': ({ fromM }, f) => `יותר מ־${f.tape(fromM)}, הקצה התחתון שלו`,
  'problems.heights.advice': 'מדדו את שני הקצוות מהרצפה.',
  'problems.wall.needs-outline': 'קיר של "room.outline", שלא נמסר',
  'problems.wall.tell-outline': 'ציינו את פינות החדר בשדה "room.outline", או השמיטו את זה.',
  'problems.wall.fits': ({ leftM, lengthM, atM }, f) =>
    `לכל היותר ${f.tape(leftM)}: אורך הקיר ${f.tape(lengthM)}, וזה מתחיל ב־${f.tape(atM)}`,
  'problems.wall.shorten': 'מדדו מהקצה השמאלי של הקיר, כפי שרואים אותו מתוך החדר.',

  'problems.lon-zone.found': ({ lonDeg, zone }) => `${lonDeg} עם אזור הזמן "${zone}"`,
  'problems.lon-zone.allowed': 'קו אורך שבתוך אזור הזמן, מזרח חיובי, מערב שלילי',
  'problems.lon-zone.advice': ({ meaning }, f) => `${f.say(meaning)} בדקו את הסימן ואת אזור הזמן.`,
  'problems.lon-zone.wrong-hour': 'ימי המנוחה היו מתחילים בשעה לא נכונה.',
  'problems.lon-zone.sabbath': ({ wallMs, zone }, f) =>
    `השבת הייתה נכנסת ב${f.shortMoment(wallMs, zone)}.`,
};
