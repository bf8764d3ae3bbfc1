import type { TranslationOf } from '../../model/translation.ts';
import type { charts as english } from '../../english/plan/charts.ts';

import type { Formatter } from '../../model/message.ts';

function litText(burners: number, f: Formatter): string {
  return burners === 1 ? 'מבער אחד דולק' : `${f.number(burners)} מבערים דולקים`;
}

/** Courses of heat and air, drawn on the page of the plan. */
export const charts: TranslationOf<typeof english> = {
  'plan.chart.unit.temperature': (_, f) => f.unitName('°C'),
  'plan.chart.unit.concentration': 'מ״ג/מ״ק',
  'plan.chart.moment.off': 'כיבוי',
  'plan.chart.moment.lit': 'מוקדים פועלים',

  'plan.chart.boil.title': ({ vessel }, f) => `רתיחה: ${f.say(vessel)}`,
  'plan.chart.boil.says': ({ litres }, f) => `${f.fill(litres, true)} מהברז עד רתיחה מלאה.`,
  'plan.chart.boil.says-calibrated': ({ litres }, f) =>
    `${f.fill(litres, true)} מהברז עד רתיחה מלאה. הקו מחושב; הזמנים מהביצוע הקודם שלכם.`,
  'plan.chart.boil.water': 'מים',
  'plan.chart.boil.boils-here': 'כאן רותח',
  'plan.chart.boil.soonest': 'המוקדם ביותר',
  'plan.chart.boil.about': 'בערך',
  'plan.chart.boil.latest': 'המאוחר ביותר',

  'plan.chart.after-boil.title': ({ vessel }, f) => `אחרי הרתיחה: ${f.say(vessel)}`,
  'plan.chart.after-boil.says': ({ dropK }, f) =>
    `הטיפה האחרונה נופלת לפני שאבדו ${f.measure(dropK, 'K')}. התוכנית סופרת לפי המהיר מהשניים, וקומקום מתרוקן מצטנן מהר יותר מאלה, שנשארים מלאים.`,
  'plan.chart.after-boil.loses-much': 'קומקום שמאבד הרבה',
  'plan.chart.after-boil.loses-little': 'קומקום שמאבד מעט',
  'plan.chart.after-boil.boil-again': 'מתחת לזה מרתיחים שוב',
  'plan.chart.after-boil.pour-by': 'טיפה אחרונה עד',

  'plan.chart.glow.title': ({ burnerType }, f) => `ליבון וקירור: ${f.say(burnerType)}`,
  'plan.chart.glow.says': ({ visible, holdS }, f) =>
    `${f.say(visible)} ${f.duration(holdS)} נספרות מהרגע שתאשרו שרואים אודם; הציור מתחיל אותן בחום מלא.`,
  'plan.chart.glow.line': 'מה שמאדים',
  'plan.chart.glow.first-red': 'אודם ראשון בחושך',
  'plan.chart.glow.seen': 'נראה מאדים',
  'plan.chart.burner.electric-coil': 'ספירלה חשמלית',
  'plan.chart.burner.solid-plate': 'פלטת ברזל',
  'plan.chart.burner.radiant-glass': 'כיריים קרמיות',
  'plan.chart.burner.gas-sealed': 'מבער גז סגור',
  'plan.chart.burner.gas-open': 'מבער גז פתוח',
  'plan.chart.burner.gas-wok': 'מבער גז לווק',
  'plan.chart.burner.commercial-open': 'מבער פתוח מסחרי',
  'plan.chart.burner.portable-plate': 'פלטה ניידת',

  'plan.chart.room.title': 'המטבח, כפי שמרגישים',
  'plan.chart.room.outside': ({ burners, outdoorC, oven }, f) =>
    `${litText(burners, f)} בכל פעם, בזה אחר זה, הקולט והחלון כפי שתיארתם, ${f.measure(outdoorC, '°C')} בחוץ${oven ? ', אחרי החום של התנור' : ''}. חום ולחות יחד (מדד עומס חום).`,
  'plan.chart.room.planned': ({ burners }, f) => `מתוכנן: ${litText(burners, f)}`,
  'plan.chart.room.bad-end': 'מתוכנן, במקרה הגרוע',
  'plan.chart.room.one-more': 'עוד מבער אחד',
  'plan.chart.room.shut': 'קולט כבוי, חלון סגור',
  'plan.chart.room.extreme-caution': 'זהירות יתרה',
  'plan.chart.room.danger': 'סכנה',
  'plan.chart.air.title': 'חנקן דו־חמצני מהגז',
  'plan.chart.co.title': 'פחמן חד־חמצני מהגז',
  'plan.chart.air.by-bad-end': ({ burners }, f) =>
    `${litText(burners, f)} בכל פעם, בזה אחר זה. התוכנית הולכת לפי הקצה הרע: להבה מלוכלכת, קולט חלש, אוויר עומד. קו מעל הגבול שעה שלמה הוא יותר מדי; היישום לעולם לא אומר שהאוויר בטוח.`,
  'plan.chart.air.limit': 'גבול לממוצע של שעה',
};
