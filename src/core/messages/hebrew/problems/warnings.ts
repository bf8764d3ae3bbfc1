import type { TranslationOf } from '../../model/translation.ts';
import type { warnings as english } from '../../english/problems/warnings.ts';

/** What a household should look at although the file is used. */
export const warnings: TranslationOf<typeof english> = {
  'problems.load.one.found': ({ vessel, drawA }, f) =>
    `"${vessel}", שצורך ${f.number(drawA, 1)} אמפר`,
  'problems.load.one.allowed': ({ ratingA }) => `לכל היותר ${ratingA} אמפר`,
  'problems.load.one.advice': 'הוא היה מקפיץ את המפסק: השתמשו במעגל אחר או בחלש יותר.',
  'problems.load.several.found': ({ count, circuit, togetherA }, f) =>
    `${f.number(count)} על "${circuit}", יחד ${f.number(togetherA, 1)} אמפר`,
  'problems.load.several.allowed': ({ ratingA }) => `לכל היותר ${ratingA} אמפר בבת אחת`,
  'problems.load.several.advice': 'הם לא יכולים לרתוח שם יחד; התוכנית מרתיחה בתורות.',
  'problems.voltage.found': ({ ratedV, voltsV }) => `${ratedV} וולט במעגל של ${voltsV} וולט`,
  'problems.voltage.allowed': ({ voltsV }) => `כ־${voltsV} וולט`,
  'problems.voltage.advice': 'קראו שוב את הלוחית שמתחתיו.',
  'problems.utensil-material.allowed': ({ materials }) => `אחד מ־${materials} לסוג הזה`,
  'problems.utensil-material.advice': 'הביטו בו שוב, או מסרו אותו כסוג אחר.',
  'problems.utensil-mass.allowed': ({ mostKg }, f) =>
    `לכל היותר ${f.shortMeasure(mostKg, 'kg', 3, 'down')} לגודלו`,
  'problems.utensil-mass.advice': 'כסף מלא היה שוקל פחות: שקלו או מדדו שוב.',
  'problems.no-fixtures.allowed': 'לפחות פריט אחד לתכנן',
  'problems.no-fixtures.advice': 'תארו מה יש במטבח; עד אז אין מה לתכנן.',
  'problems.no-vessels.allowed': 'לפחות קומקום, מיחם או סיר אחד',
  'problems.no-vessels.advice': 'תארו מה מרתיח את המים, אחרת אי אפשר לערות.',
  'problems.unplugged.found': 'דבר',
  'problems.unplugged.allowed': 'מזהה של מעגל חשמלי',
  'problems.unplugged.advice': 'אמרו לאיזה מעגל הוא מחובר, אחרת העומס לא נבדק.',
  'problems.hood-flow.allowed': 'ספיקת קולט שפולט החוצה, בליטר/שנ׳',
  'problems.hood-flow.advice': 'קראו את הספיקה בהוראות היצרן; עד אז הקולט נחשב כאילו אינו.',
  'problems.hood-kind.found': ({ flowLS }, f) =>
    `"none" עם ספיקה של ${f.shortMeasure(flowLS, 'L/s', 3)}`,
  'problems.hood-kind.allowed': 'סוג של קולט',
  'problems.hood-kind.advice': 'אמרו "vented" או "recirculating", או השמיטו את הספיקה.',
  'problems.room-small.found': ({ volumeM3 }, f) => `חדר של ${f.shortMeasure(volumeM3, 'm³', 1)}`,
  'problems.room-small.allowed': ({ leastM3 }, f) => `${f.measure(leastM3, 'm³', 0, 'up')} או יותר`,
  'problems.room-small.advice': 'מדדו שוב רצפה ותקרה; לחדר קטן יותר החום והאוויר לא מחושבים.',
  'problems.last-hot.zone.allowed': 'שימוש חם אחרון במטבח שמקומו ידוע',
  'problems.last-hot.zone.advice':
    'הוסיפו את המקום: עד אז לא ידוע באיזה רגע מדובר, וכל השבתה נספרת מהניקוי.',
  'problems.cycle.found': ({ cycleMin }) => `${cycleMin} לתנור שלא מתנקה בעצמו`,
  'problems.cycle.allowed': 'בלי מחזור',
  'problems.cycle.advice': 'השמיטו אותו, או אמרו "pyrolytic" אם יש לתנור מחזור כזה.',
  'problems.own-rests.found': ({ name, basedOn, followed }) =>
    `"${name}", העתק של ${basedOn}, ומשק הבית הולך לפי ${followed}`,
  'problems.own-rests.advice': ({ basedOn }) =>
    `הוא שמור ואינו בשימוש; חזרו אל ${basedOn} כדי להשתמש בו.`,
  'problems.unusual-answer.found': ({ method, fixture }) => `"${method}" עבור "${fixture}"`,
  'problems.unusual-answer.advice': 'שאלו שוב אם לזה הייתה הכוונה; התוכנית הולכת לפיה ככל שאפשר.',
};
