import type { TranslationOf } from '../../model/translation.ts';
import type { utensilSteps as english } from '../../english/utensils/steps.ts';

/** Utensils as steps of the run: batches, pots, heat, soaking. */
export const utensilSteps: TranslationOf<typeof english> = {
  'utensils.all': 'כלים',

  'cautions.dip-pot.say':
    'עבדו במלקחיים ארוכים או ברשת עם ידית ארוכה, פנים וזרועות לצד הסיר; הורידו לאט, ואל תעזבו אותו כשהוא רותח: הוא מתיז, והאדים שלו שורפים.',

  'utensils.step.clean': 'לשטוף את הכלים.',
  'utensils.step.clean-these': ({ items }, f) =>
    `שטפו: ${f.list(items.map((item) => f.say(item)))}.`,
  'utensils.step.joints': 'פתחו את מה שנפתח: הורידו חלודה, תוויות, שומן ודבק, גם מהידיות.',
  'utensils.step.soak-first': ({ items }, f) =>
    `אחרי השטיפה הניחו את אלה במים קרים, כולם מתחת למים: ${f.list(items.map((item) => f.say(item)))}.`,
  'utensils.step.put-away': ({ items }, f) =>
    `לא מוכשרים כאן, הרחיקו או החליפו: ${f.list(items.map((item) => f.say(item)))}.`,

  'utensils.step.boil': ({ vessel, group }, f) =>
    `להרתיח מים חדשים לכלים, ${f.say(group)}: ${f.say(vessel)}.`,
  'utensils.step.lid': 'מכסה סגור עד הרתיחה; כשמסירים, הטו אותו הרחק מכם.',
  'utensils.step.boil-ask': 'המים ברתיחה מלאה?',
  'utensils.step.overflow': ({ burner }) =>
    `מלאו עד השפה, כבו את המבער "${burner}", והורידו לתוכו לאט פלדה נקייה ולוהטת עד שיגלוש מכל שפתו.`,
  'utensils.step.overflow-hob':
    'במקום שהוא עומד: איש לא נושא אותו מלא. עמדו רחוק, ונגבו את הכיריים לפני שמדליקים שוב.',
  'utensils.step.empty': 'רוקנו מעט בכל פעם, במצקת; לעולם אל תישאו את הסיר כשהוא מלא וחם.',

  'utensils.step.batch': ({ number, of, group }, f) =>
    `להגעיל סבב ${f.number(number)} מתוך ${f.number(of)}: ${f.say(group)}.`,
  'utensils.step.top-up': ({ litres }, f) =>
    `השלימו את המים בסיר עד ${f.fill(litres)} וחכו לרתיחה מלאה.`,
  'utensils.step.lower': 'הורידו לתוך המים הרותחים, כולו מתחת למים.',
  'utensils.step.under': 'כולו מתחת למים',
  'utensils.step.under-ask': 'הכול היה כולו מתחת למים הרותחים?',
  'utensils.step.again': 'השאירו מתחת למים עד שירתחו שוב.',
  'utensils.step.drop': ({ mixedC, recoverS }, f) =>
    `המים יורדים לכ־${f.measure(mixedC, '°C', 1)} ורותחים שוב אחרי ${f.about(recoverS.typical)}, לכל היותר ${f.about(recoverS.high)}.`,
  'utensils.step.again-say': 'רותח שוב',
  'utensils.step.again-ask': 'המים רתחו שוב כשהכלים בתוכם?',
  'utensils.step.turn': 'הרימו, סובבו במלקחיים, והורידו שוב.',
  'utensils.step.other-half': 'הרימו, אחזו בחצי שהיה בפנים, והורידו את החצי השני, מעט מעבר לאמצע.',
  'utensils.step.one-by-one':
    'אחד אחד: מתחת למים עד שירתחו שוב, לסובב, ושוב מתחת למים עד שירתחו שוב.',
  'utensils.step.each-cold': 'כל אחד עובר מהסיר ישר למים קרים.',
  'utensils.step.all-twice': 'כולם היו בפנים פעמיים',
  'utensils.step.dips-expect': ({ isAhead }) =>
    isAhead ? 'עד שכולם הוגעלו (משוער)' : 'כולם אמורים להיות מוגעלים בערך עכשיו',
  'utensils.step.cold': 'מהסיר מיד למים קרים.',
  'utensils.step.next-batch': ({ burner }) =>
    `הסבב הבא הוא באותם מים. מי שעוצר כאן מכבה את המבער "${burner}".`,
  'utensils.step.off': ({ burner }) => `כבו את המבער "${burner}".`,
  'utensils.step.off-say': 'כבוי',

  'utensils.step.own-rim': ({ name, piece, of }, f) =>
    `להכשיר בגלישה מעל שפתו: ${f.say(name)}${of > 1 ? `, ${f.number(piece)} מתוך ${f.number(of)}` : ''}.`,
  'utensils.step.own-rim-fill': ({ burner }) =>
    `מלאו עד שתי אצבעות מתחת לשפה והדליקו תחתיו את המבער "${burner}".`,
  'utensils.step.own-rim-safe': ({ burner }) => `כבו את המבער "${burner}" והשאירו עליו את הסיר.`,
  'utensils.step.outside': 'אם אוכל חם נגע בו מבחוץ, זה לא מספיק: שאלו.',

  'utensils.step.glow-title': 'ללבן כלים עד שמאדימים.',
  'utensils.step.light-title': 'ללבן כלים עד שקש נחרך בצד האחר.',
  'utensils.step.glow': ({ burner }) =>
    `אחד אחד מעל המבער "${burner}" בחום מלא, עד שכל הכלי האדים.`,
  'utensils.step.light-heat': ({ burner }) =>
    `אחד אחד מעל המבער "${burner}", עד שקש או נייר נחרך בצד האחר.`,
  'utensils.step.fire-tongs':
    'מלקחיים ארוכים, כפפות יבשות. הכלי שורף עוד זמן רב אחרי שכבר אינו מאדים: הניחו על פלדה או אבן, ואל תגעו בדבר.',
  'utensils.step.glowed': 'כולם האדימו',
  'utensils.step.scorched': 'נחרך בכולם',

  'utensils.step.soak': ({ day, of }) => `להשרות במים קרים: יום ${day} מתוך ${of}.`,
  'utensils.step.soak-under': 'כולם מתחת למים; שום דבר אחר במים האלה.',
  'utensils.step.soak-timer': ({ day, of }) => `בהשריה, יום ${day} מתוך ${of}`,
  'utensils.step.change': 'שפכו את המים ומלאו מים קרים חדשים.',
  'utensils.step.change-say': 'הוחלפו',
  'utensils.step.soaked': 'הוציאו מהמים ושטפו.',
  'utensils.step.soaked-say': 'נשטפו',
};
