import type { TranslationOf } from '../../model/translation.ts';
import type { fixture as english } from '../../english/survey/fixture.ts';

/** The plan that is shaped by finger, and the sheet of one fixture. */
export const fixture: TranslationOf<typeof english> = {
  'survey.editor.plan':
    'שרטוט המטבח. מקשי החיצים מזיזים את הנבחר בסנטימטר, עם Shift בעשרה; Delete מוציא אותו; Enter עובר לגיליון שלו.',
  'survey.editor.sized': ({ name, length, depth }, f) =>
    `${name}, ${f.say(length)} על ${f.say(depth)}`,
  'survey.editor.whereabouts': ({ left, front }, f) =>
    `${f.say(left)} משמאל, ${f.say(front)} מלפנים`,
  'survey.editor.look': 'תצוגה',
  'survey.editor.nearer': 'קרוב יותר',
  'survey.editor.farther': 'רחוק יותר',
  'survey.editor.whole-room': 'כל החדר',

  'survey.chosen': '(נבחר)',
  'survey.sheet.next': 'להוסיף את הבא',
  'survey.sheet.name': 'שם',
  'survey.sheet.belongs': 'ישתייך אל',
  'survey.sheet.off-plan': 'להוריד מהשרטוט',
  'survey.sheet.onto-plan': 'להעלות לשרטוט',
  'survey.sheet.turn': 'לסובב',
  'survey.sheet.copy': 'להעתיק',

  'survey.size.length': 'אורך',
  'survey.size.depth': 'עומק',
  'survey.size.from-left': 'משמאל',
  'survey.size.from-front': 'מלפנים',
  'survey.size.corners': ({ count }, f) =>
    `יש לו ${f.number(count)} פינות: האורך והעומק הם של המלבן שסביבו.`,

  'survey.shape': 'צורה',
  'survey.shape.walls': 'אילו שוליים צמודים לקיר?',
  'survey.shape.stand': 'באילו צדדים אפשר לעמוד?',
  'survey.shape.stand-at': ({ side, length }, f) => `ב${f.say(side)}, ${f.say(length)}`,
  'survey.shape.edge': ({ side, length }, f) => `${f.say(side)}, ${f.say(length)}`,
  'survey.shape.numbered-edge': ({ from, to, side, length }, f) =>
    `${f.number(from)} עד ${f.number(to)}, ${f.say(side)}, ${f.say(length)}`,
  'survey.shape.side.far': 'צד רחוק',
  'survey.shape.side.near': 'צד קרוב',
  'survey.shape.side.left': 'צד שמאל',
  'survey.shape.side.right': 'צד ימין',
  'survey.shape.open': 'פינה אחר פינה',
  'survey.shape.close': 'סיום הפינות',
  'survey.shape.crosses': 'אז קו המתאר היה חוצה את עצמו.',
  'survey.shape.corner-left': ({ number }, f) => `${f.number(number)} משמאל`,
  'survey.shape.corner-front': ({ number }, f) => `${f.number(number)} מלפנים`,
  'survey.shape.add-after': 'להוסיף אחרי',
  'survey.shape.add-after-corner': ({ number }, f) => `להוסיף אחרי פינה ${f.number(number)}`,
  'survey.shape.take-out-corner': ({ number }, f) => `להוציא פינה ${f.number(number)}`,
  'survey.shape.backsplash': 'חיפוי הקיר, גובה',

  'survey.surface.heading': 'ממה הוא עשוי?',
  'survey.surface.another': 'חומר אחר',
  'survey.surface.fingernail': 'העבירו עליו ציפורן',

  'survey.sink.bowl-length': 'קערה, אורך',
  'survey.sink.bowl-width': 'קערה, רוחב',
  'survey.sink.bowl-depth': 'קערה, עומק',
  'survey.sink.bowl-n-length': ({ number }, f) => `קערה ${f.number(number)}, אורך`,
  'survey.sink.bowl-n-width': ({ number }, f) => `קערה ${f.number(number)}, רוחב`,
  'survey.sink.bowl-n-depth': ({ number }, f) => `קערה ${f.number(number)}, עומק`,
  'survey.sink.rim': 'שפה',
  'survey.sink.handles': 'ידיות הברז',
  'survey.sink.sprayer': 'מתז נשלף',
  'survey.sink.drainboard': 'משטח ייבוש',

  'survey.parts': 'מה מאלה יש בו?',
  'survey.fact.varnished': 'העץ מצופה לכה?',
  'survey.fact.kneaded': 'לשו עליו בצק ישירות?',
  'survey.fact.hotFood': 'הונח עליו אוכל חם ישירות, בלי כלי?',
  'survey.last-hot.own': 'השימוש החם האחרון שלו, אם היה אחר',
  'survey.last-hot.all': 'מתי השתמשו כאן בחום לאחרונה, בכל דבר?',
  'survey.last-hot.all.hint':
    'כיריים, תנור, כיור, משטחים, קומקום; ניקוי חם נחשב. ההשבתות מתוכננות אז מאותה שעה, והכול מנוקה במים קרים בלבד. הביצוע שואל שוב.',
  'survey.last-hot.forget': 'לא נמסר',
  'survey.cupboard.place': 'איפה הוא?',
  'survey.cupboard.over-counter': 'מעל המשטח',
  'survey.cupboard.under-counter': 'מתחת למשטח',

  'survey.shelves': 'מדפים',
  'survey.shelves.drawer': 'תחתיות לריפוד',
  'survey.shelves.cupboard': 'מדפים לריפוד',
  'survey.shelves.length': ({ number }, f) => `מדף ${f.number(number)}, אורך`,
  'survey.shelves.depth': ({ number }, f) => `מדף ${f.number(number)}, עומק`,
  'survey.shelves.take-out': ({ number }, f) => `להוציא מדף ${f.number(number)}`,
  'survey.shelves.one-more': 'עוד אחד כמו האחרון',
  'survey.shelves.add': 'להוסיף מדף',

  'survey.appliance.power': 'הספק',
  'survey.appliance.power.empty': 'על לוחית היצרן',

  'survey.cooktop.kind': 'סוג המבערים',
  'survey.cooktop.several': 'מכמה סוגים',
  'survey.cooktop.between': 'מה יש בין המבערים?',
  'survey.cooktop.each': 'כל מבער',
  'survey.cooktop.add': 'להוסיף מבער',
  'survey.cooktop.called': 'נקרא',
  'survey.cooktop.power': ({ name }) => `הספק, ${name}`,
  'survey.cooktop.across': ({ name }) => `קוטר, ${name}`,
  'survey.cooktop.lamp': 'יש נורית שמראה שהוא עדיין חם?',
  'survey.cooktop.volts': ({ name }) => `וולט על לוחית היצרן, ${name}`,
  'survey.cooktop.volts.empty': 'כמו המעגל שלו',
  'survey.cooktop.senses': ({ name }) => `חש את הסיר, ${name}`,
  'survey.lamp.lamp': 'נורית חום שיורי',
  'survey.lamp.none': 'אין נורית',
  'survey.senses.no': 'לא, או לא ידוע',
  'survey.senses.yes': 'כן: הוא מגביל את עצמו, ואולי לא יאדים חשוף',
  'survey.cooktop.burner-kind': 'סוג',
  'survey.cooktop.take-out': ({ name }) => `להוציא את המבער ${name}`,

  'survey.oven.cleaning': 'איך הוא מתנקה בעצמו?',
  'survey.oven.steam-trap':
    'ניקוי בקיטור אינו הכשרה. התוכנית מטפלת בתנור הזה כבתנור שלא מתנקה בעצמו.',
  'survey.oven.catalytic-trap':
    'ציפוי קטליטי אינו הכשרה. התוכנית מטפלת בתנור הזה כבתנור שלא מתנקה בעצמו.',
  'survey.oven.cycle': 'אורך המחזור',
  'survey.oven.cycle.empty': 'לפי היצרן',
  'survey.oven.racks': 'מה אומר היצרן על הרשתות?',
  'survey.oven.heated-by': 'מתחמם ב־',
  'survey.oven.range': 'במכשיר אחד עם',
  'survey.oven.no-cooktop': 'בלי כיריים',
};
