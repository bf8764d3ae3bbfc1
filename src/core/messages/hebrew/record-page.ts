import type { TranslationOf } from '../model/translation.ts';
import type { recordPage as english } from '../english/record-page.ts';

import type { Formatter } from '../model/message.ts';

function from(count: number, f: Formatter): string {
  return f.plural(count, {
    one: 'מדיווח אחד',
    two: 'משני דיווחים',
    other: `מ־${f.number(count)} דיווחים`,
  });
}

/** The Record page around the report itself. */
export const recordPage: TranslationOf<typeof english> = {
  'record-page.title': 'תיעוד',
  'record-page.none': 'עוד אין ביצוע. מה שתעשו בביצוע נשמר כאן.',
  'record-page.list-zone': ({ zone }) =>
    `התחלה, לפי שעון הטאבלט הזה (${(zone.split('/').at(-1) ?? zone).replaceAll('_', ' ')}):`,
  'record-page.run-status': ({ openedWallMs, zone, status }, f) =>
    `${f.shortMoment(openedWallMs, zone)}, ${status}`,
  'record-page.status.open': 'פתוח',
  'record-page.status.closed': 'סגור',
  'record-page.status.completed': 'הושלם',
  'record-page.status.failed': 'נכשל',
  'record-page.status.stopped': 'נעצר',
  'record-page.region': 'תיעוד הביצוע',
  'record-page.print': 'להדפיס',
  'record-page.save-text': 'לשמור כטקסט',
  'record-page.save-calendar': 'לשמור ביומן את השלבים שנותרו',
  'record-page.save-run': 'לשמור את הביצוע בקובץ',
  'record-page.import': 'להביא ביצוע מקובץ',
  'record-page.history': 'מה קרה למקום לאורך הביצועים',
  'record-page.history.reading': 'קוראים את הביצועים של המטבח הזה…',
  'record-page.history.place': 'מקום',
  'record-page.history.nothing': 'שום ביצוע לא עשה בו דבר.',
  'record-page.history.run': ({ wallMs, zone, purpose, status }, f) =>
    `${f.date(wallMs, zone)}, ${purpose}, ${status}`,
  'record-page.history.rested': ({ rest }, f) => `השבתה: ${f.say(rest)}`,
  'record-page.everything': 'הכול בקובץ אחד',
  'record-page.everything.about':
    'כל המטבחים, הביצועים, הסימונים והבחירות של הטאבלט הזה, לשמירה במקום אחר. מה שמוחזר נוסף: דבר ממה שיש כאן לא משתנה.',
  'record-page.everything.save': 'לשמור הכול בקובץ אחד',
  'record-page.everything.bring-back': 'להחזיר מקובץ כזה',
  'record-page.restored': ({ kitchens, runs, same }, f) => {
    const kitchensText = f.plural(kitchens, {
      one: 'מטבח אחד',
      two: 'שני מטבחים',
      other: `${f.number(kitchens)} מטבחים`,
    });
    const runsText = f.plural(runs, {
      one: 'ביצוע אחד',
      two: 'שני ביצועים',
      other: `${f.number(runs)} ביצועים`,
    });
    const sameText = f.plural(same, {
      one: ' אחד כבר היה כאן.',
      two: ' שניים כבר היו כאן.',
      other: ` ${f.number(same)} כבר היו כאן.`,
    });
    return `הוחזרו: ${kitchensText}, ${runsText}.${same > 0 ? sameText : ''}`;
  },
  'record-page.restored.left': ({ count }, f) => `לא הוחזרו, ${f.number(count)}:`,
  'record-page.restored.run': ({ path, name, why }, f) => `${path} (${name}): ${f.say(why)}`,

  'record-page.damaged': 'היומן פגום; ההמשך שבו לא מסופר.',
  'record-page.no-digest': 'אין תמצית: הדפדפן הזה מחשב אותה בחיבור מאובטח בלבד.',
  'record-page.moments': 'הכול, רגע אחר רגע',
  'record-page.picture': ({ places }, f) =>
    `המטבח במבט מלמעלה. ${places.map((place) => f.say(place)).join('; ')}.`,
  'record-page.picture.place': ({ number, name, state }, f) =>
    `${f.number(number)} ${name}: ${f.say(state)}`,
  'record-page.state.heated': 'הוכשר באש',
  'record-page.state.poured': 'הוכשר במים רותחים',
  'record-page.state.steamed': 'הוכשר באדים',
  'record-page.state.covered': 'מכוסה או מרופד',
  'record-page.state.cleaned': 'נשטף ונוקה',
  'record-page.state.closed-up': 'סגור, לא בשימוש',
  'record-page.state.not-purged': 'לא הוכשר',
  'record-page.state.not-done': 'לא הושלם',
  'record-page.state.not-yet': 'עוד לפנינו',
  'record-page.state.untouched': 'דבר לא תוכנן',
  'record-page.covered-too': 'גם מכוסה',
  'record-page.letter.heated': 'א',
  'record-page.letter.poured': 'ע',
  'record-page.letter.steamed': 'ד',
  'record-page.letter.covered': 'כ',
  'record-page.letter.cleaned': 'נ',
  'record-page.letter.closed-up': 'ס',
  'record-page.letter.not-purged': 'ל',
  'record-page.letter.not-done': 'ט',
  'record-page.letter.not-yet': '…',
  'record-page.letter.untouched': '–',
  'record-page.mark.meat': 'ב',
  'record-page.mark.dairy': 'ח',
  'record-page.mark.pareve': 'פ',
  'record-page.table': 'מקום אחר מקום',
  'record-page.column.place': 'מקום, ומה הוא עכשיו',
  'record-page.column.how': 'מה נעשה',
  'record-page.column.when': 'מתי',
  'record-page.column.rested': 'הושבת',
  'record-page.column.source': 'לפי איזה מקור, מפי מי',

  'record-page.recheck.region': 'קרה משהו מאז',
  'record-page.recheck.title': 'קרה משהו מאז?',
  'record-page.recheck.about':
    'אמרו במה זה נוגע. תוכנית קטנה לזה בלבד שואלת קודם אם צריך להכשיר שוב; עד אז, שום דבר חם שם.',
  'record-page.recheck.open': 'קרה משהו',
  'record-page.recheck.what': 'מה קרה?',
  'record-page.recheck.touches': 'במה זה נוגע?',
  'record-page.recheck.make-plan': 'להכין לזה תוכנית קטנה',
  'record-page.recheck.back': 'חזרה',

  'record-page.calibration.title': 'מה לימד הביצוע הזה',
  'record-page.calibration.used':
    'לפי הדיווחים שלכם. התוכנית הבאה מצפה לזה; השבתות, זמני החזקה וגבולות נשארים כמות שהם.',
  'record-page.calibration.not-used':
    'לפי הדיווחים שלכם. התוכנית הבאה עוד לא משתמשת בזה; השבתות, זמני החזקה וגבולות נשארים כמות שהם.',
  'record-page.calibration.boil': ({ name, takesS, plannedS }, f) =>
    `${name}: רותח תוך ${f.duration(takesS)} (תוכנן ${f.duration(plannedS)})`,
  'record-page.calibration.glow': ({ name, takesS, plannedS }, f) =>
    `${name}: מאדים אחרי ${f.duration(takesS)} (תוכנן ${f.duration(plannedS)})`,
  'record-page.calibration.heat-up': ({ name, takesS, plannedS }, f) =>
    `${name}: בחום הגבוה ביותר אחרי ${f.duration(takesS)} (תוכנן ${f.duration(plannedS)})`,
  'record-page.calibration.cool': ({ name, takesS, plannedS }, f) =>
    `${name}: מותר לגעת אחרי ${f.duration(takesS)} (תוכנן ${f.duration(plannedS)})`,
  'record-page.calibration.pour': ({ flowLMin }, f) =>
    `העירוי שלכם: ${f.measure(flowLMin, 'L', 1)} בדקה`,
  'record-page.calibration.reach': ({ percent }, f) =>
    `קומקום אחד מגיע ל־${f.number(percent)}% מהמרחק המחושב`,
  'record-page.calibration.grounds': ({ count, spreadPercent }, f) =>
    `${from(count, f)}, ±${f.number(spreadPercent)}%`,
  'record-page.calibration.grounds-longest': ({ count }, f) =>
    `${from(count, f)}; הארוך ביותר קובע`,
  'record-page.calibration.set-apart': ({ grounds, count }, f) =>
    `${f.say(grounds)}; ${f.number(count)} הוצאו מהחשבון כחריגים מדי`,
  'record-page.calibration.leave-out': 'להשמיט את הדיווח האחרון',
  'record-page.calibration.count': 'להחשיב את הדיווח האחרון',
};
