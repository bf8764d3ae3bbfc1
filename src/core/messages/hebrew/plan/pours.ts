import type { TranslationOf } from '../../model/translation.ts';
import type { pours as english } from '../../english/plan/pours.ts';

import type { Formatter } from '../../model/message.ts';

type Amount = { litres: number; kettles: number };

function amount({ litres, kettles }: Amount, f: Formatter): string {
  const count = kettles === 1 ? 'קומקום אחד' : `${f.number(kettles)}\u00a0קומקומים`;
  return `${f.shortMeasure(litres, 'L', 1)}, ${count}`;
}

/** What boiling water does where it is poured, and what the litres rest on. */
export const pours: TranslationOf<typeof english> = {
  'plan.section.pours': 'מה המים עושים',
  'plan.pour.reached': ({ fixture, firstTouchC, surfaceC, mostC }, f) =>
    `${fixture}: הקילוח פוגע גם במקום הגרוע ביותר בכ־${f.measure(firstTouchC, '°C')}, חם מהדעה הגבוהה ביותר בשיעור יד סולדת בו (${f.measure(mostC, '°C')}); החומר עצמו מגיע לכ־${f.measure(surfaceC, '°C')}.`,
  'plan.pour.reached-by-some': ({ fixture, lowC, surfaceC, leastC, mostC }, f) =>
    `${fixture}: הקילוח פוגע במקום הגרוע ביותר בכ־${f.measure(lowC, '°C')}, בתוך הדעות בשיעור יד סולדת בו (${f.first(leastC, '°C')} עד ${f.measure(mostC, '°C')}) ולא מעל הגבוהה שבהן: שאלו איזו מהן שלכם; החומר עצמו מגיע לכ־${f.measure(surfaceC, '°C')}.`,
  'plan.pour.heated': ({ fixture, surfaceC, firstTouchC }, f) =>
    `${fixture}: לחומר יש זמן להשיג את המים, עד כ־${f.measure(surfaceC, '°C')} גם במקום הגרוע ביותר, שהקילוח פוגע בו תחילה בכ־${f.measure(firstTouchC, '°C')}.`,
  'plan.pour.amounts': ({ until, reached, heated }, f) =>
    `עד שהקילוח מגיע לכל מקום: ${f.say(reached)}. עד שמתחמם כולו: ${f.say(heated)}. מתוכנן: ${f.say(until)}.`,
  'plan.pour.amount': (of, f) => amount(of, f),
  'plan.pour.until.reached': 'עד שהקילוח מגיע',
  'plan.pour.until.heated': 'עד שמתחמם כולו',
  'plan.pour.wet': ({ wetFirstTouchC }, f) =>
    `יבשו קודם: במקום שעומדים מים הקילוח נוגע תחילה בכ־${f.measure(wetFirstTouchC, '°C')}.`,
  'plan.pour.run-off': ({ runOffC, belowC }, f) =>
    `מים שנגרים הלאה לא מספיקים: הם עוזבים את הקילוח בכ־${f.measure(runOffC, '°C')} ומביאים את מה שלמטה לכ־${f.measure(belowC, '°C')}.`,
  'plan.pour.moves': 'מה משנה את המספרים (כל מה שמערים עליו):',
  'plan.pour.move': ({ what, less, more }, f) => `${f.say(what)}: ${f.say(less)} או ${f.say(more)}`,
  'plan.pour.move.flow': (_, f) =>
    `קילוח של ${f.first(1.5, 'L', 1)} או ${f.measure(2.5, 'L', 1)} בדקה`,
  'plan.pour.move.fall': (_, f) => `עירוי מגובה ${f.first(10, 'cm')} או ${f.measure(50, 'cm')}`,
  'plan.pour.move.thickness': 'לוח דק או עבה ככל שמייצרים',
  'plan.pour.move.overlap': 'כל נתיב חופף 5% או 30% מקודמו',
  'plan.pour.move.loss': 'שום מים אינם ניתזים ואינם נשארים בקומקום, או 15% מהם',
  'plan.pour.move.fresh': (_, f) => `מערים מיד, או אחרי שהמים איבדו ${f.measure(5, 'K')}`,
  'plan.pour.move.touch': (_, f) => `היד סולדת ב־${f.first(45, '°C')} או ב־${f.measure(71, '°C')}`,
  'plan.pour.move.wet': 'יבש, או שנשאר עליו מילימטר מים',
};
