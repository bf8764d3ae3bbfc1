import type { TranslationOf } from '../../model/translation.ts';
import type { water as english } from '../../english/steps/water.ts';

/** Kettles: boiled, poured, and purged themselves. */
export const water: TranslationOf<typeof english> = {
  'steps.vessel.new': 'קומקום חשמלי חדש',
  'steps.vessel.unit': ({ name, number }) => `${name} ${number}`,
  'steps.vessel.fill-on-burner': ({ vessel, litres, burner }, f) =>
    `מלאו עד ${f.fill(litres)} והדליקו תחתיו את המבער "${burner}": ${f.say(vessel)}.`,
  'steps.vessel.fill-plugged': ({ vessel, litres }, f) =>
    `מלאו עד ${f.fill(litres)} והפעילו: ${f.say(vessel)}.`,
  'steps.vessel.plug-into': ({ circuit }) =>
    `חברו ישר אל ${circuit}; שם פועל רק מה שהתוכנית מפעילה.`,
  'steps.vessel.plug-anywhere': 'חברו ישר לשקע בקיר שאין בו שימוש אחר.',
  'steps.vessel.safe-on-burner': ({ burner, vessel }, f) =>
    `כבו את המבער "${burner}" והשאירו עליו: ${f.say(vessel)}.`,
  'steps.vessel.safe-plugged': ({ vessel }, f) =>
    `כבו והשאירו במקום שאיש לא יפיל: ${f.say(vessel)}.`,

  'steps.boil.title': ({ kettle, of, fixture, vessel }, f) =>
    `להרתיח קומקום ${kettle} מתוך ${of} עבור ${fixture}: ${f.say(vessel)}.`,
  'steps.boil.fill-mark': 'לעולם לא מעל הסימן.',
  'steps.boil.wait': 'חכו לרתיחה מלאה.',
  'steps.boil.wait-here': ({ boilingC }, f) =>
    `חכו לרתיחה מלאה, כאן ${f.measure(boilingC, '°C', 1)}.`,
  'steps.boil.wait-low': ({ boilingC }, f) =>
    `חכו לרתיחה מלאה. כאן מים רותחים ב־${f.measure(boilingC, '°C')}; זו רתיחה, וחם יותר לא יהיה.`,
  'steps.boil.again': ({ againS }, f) =>
    `הפעילו שוב רגע לפני שמרימים: הרתיחה חוזרת תוך ${f.about(againS)}. אז שפכו מיד.`,
  'steps.boil.burner-off': ({ burner }) =>
    `כבו את המבער "${burner}" ברגע שמרימים, ישר מהרתיחה, ושפכו מיד.`,
  'steps.boil.say': 'רותח',
  'steps.boil.ask': 'הקומקום הגיע לרתיחה מלאה, והמים עדיין חמים?',
  'steps.boil.expect': ({ isAhead }) => (isAhead ? 'עד הרתיחה (משוער)' : 'אמור לרתוח בערך עכשיו'),

  'steps.boil-over.title': ({ vessel }, f) => `להכשיר את הכלי עצמו: ${f.say(vessel)}.`,
  'steps.boil-over.overflow-on-burner': ({ burner }) =>
    `כבו את המבער "${burner}". בכיור, הורידו לאט פלדה נקייה ולוהטת לתוך הקומקום עד שיגלוש מכל שפתו.`,
  'steps.boil-over.overflow-plugged':
    'נתקו מהחשמל, העמידו בכיור, והורידו לתוכו לאט פלדה נקייה ולוהטת עד שיגלוש מכל שפתו.',
  'steps.boil-over.steel':
    'במלקחיים ארוכים, ביד מושטת: חתיכת פלדה, שחוממה בינתיים על מבער. לא אבן מבחוץ: היא עלולה להתפוצץ.',
  'steps.boil-over.base': 'הבסיס שלו רחוק מהמים.',
  'steps.boil-over.spout': 'לפייה או לצוואר צר זה לא מגיע: שאלו עליהם, או קנו קומקום חדש.',
  'steps.boil-over.overflow-say': 'גלש',
  'steps.boil-over.overflow-ask': 'המים הרותחים גלשו מכל השפה?',
  'steps.boil-over.cold': 'רוקנו ושטפו במים קרים.',
  'steps.cold.say-rinsed': 'נשטף בקרים',

  'steps.dry.title': ({ fixture }) => `לייבש את כולו: ${fixture}.`,
  'steps.dry.reason': 'מים שנשארו עליו מצננים את הקילוח לפני שהוא מגיע למשטח: מערים על יבש.',
  'steps.dry.seams': 'גם תפרים ופינות.',
  'steps.dry.kettle-away': 'הקומקום והבסיס עומדים במקום אחר, בשקע שהתזה לא מגיעה אליו.',
  'steps.dry.drain': 'גם סביב הברז. השאירו את הניקוז פתוח.',
  'steps.dry.clear-to': ({ names, to }, f) =>
    `הורידו ממנו והניחו על ${to}: ${f.list(names.map((name) => f.say(name)))}. זה נשאר שם עד שהמקום יבש שוב.`,
  'steps.dry.clear': ({ names }, f) =>
    `הורידו ממנו והוציאו מהמטבח: ${f.list(names.map((name) => f.say(name)))}. זה נשאר שם עד שהמקום יבש שוב.`,
  'steps.dry.say': 'יבש',
  'steps.air-dry.title': ({ fixture }) => `לנגב ולהשאיר לא מכוסה: ${fixture}.`,
  'steps.air-dry.reason': 'כיסוי על מים נשאר רטוב, מחליק ומנפח את העץ שמתחתיו.',
  'steps.air-dry.timer': ({ name }, f) => `מתייבש: ${f.say(name)}`,
  'steps.air-dry.timer-short': 'מתייבש',

  'steps.pour.title': ({ kettle, of, fixture }) =>
    `לערות קומקום ${kettle} מתוך ${of} על ${fixture}.`,
  'steps.pour.pour': ({ kettle, of, fixture }) =>
    `שפכו קומקום ${kettle} מתוך ${of} על ${fixture}: הקילוח מגיע לכל מקום.`,
  'steps.pour.line': ({ kettle }) =>
    `קומקום ${kettle}: החלק הכחול, מסימן ${kettle} עד סימן ${kettle + 1}.`,
  'steps.pour.line-to-end': ({ kettle }) =>
    `קומקום ${kettle}: החלק הכחול, מסימן ${kettle} עד סופו.`,
  'steps.pour.dry-first': 'יבשו במטלית את מה שעוד לא קיבל עירוי: מים שנשארו עליו מצננים את הקילוח.',
  'steps.pour.drain-open': 'ניקוז פתוח, כדי שמה שרץ קדימה ייצא.',
  'steps.pour.wipe-floor': 'נגבו את הדפנות ואת התחתית בין קומקום לקומקום, לפני שהקילוח מגיע אליהן.',
  'steps.pour.way.back-to-front':
    'מהשוליים האחוריים לקדמיים, נתיב אחר נתיב; הניחו למים לרדת מהחזית.',
  'steps.pour.way.shortest':
    'נתיב אחר נתיב לפי הציור: הדרך הקצרה ביותר, לפי בחירתכם; הניחו למים לרדת מהחזית.',
  'steps.pour.way.far-to-near': 'נתיב אחר נתיב לעברכם, הרחוק קודם.',
  'steps.pour.stand': ({ sides }, f) =>
    `עמדו במקום שמצוירות הרגליים: ${sides.map((side) => f.say(side)).join(', ואחר כך ')}.`,
  'steps.pour.side.far': 'הצד הרחוק',
  'steps.pour.side.near': 'הצד הקרוב',
  'steps.pour.side.left': 'הצד השמאלי',
  'steps.pour.side.right': 'הצד הימני',
  'steps.pour.unreached':
    'המקום המקווקו מחוץ להישג ידכם מהמקום שאפשר לעמוד בו: לא תוכנן לו קומקום. ראו את ההודעות בתוכנית.',
  'steps.pour.round': ({ round, rounds }) => `פעם ${round} מתוך ${rounds} על כולו.`,
  'steps.pour.stone': 'במלקחיים ארוכים הזיזו את הפלדה הלוהטת בתוך הקילוח, על כל מקום.',
  'steps.pour.say': 'העירוי נעשה',
  'steps.pour.ask': 'הקומקום הזה נשפך עד סופו?',
  'steps.pour.expect': ({ isAhead }) =>
    isAhead ? 'עד שיתרוקן (משוער)' : 'אמור להתרוקן בערך עכשיו',
  'steps.pour.cold': 'שפכו מיד מים קרים על אותו מקום.',
  'steps.pour.cold-where': 'רק במקום שנשפכו המים הרותחים.',
  'steps.pour.swab': 'יבשו במטלית את מה שעוד לא קיבל עירוי.',
  'steps.pour.cold-say': 'נשפכו מים קרים',
  'steps.pour.cold-ask': 'נשפכו עליו מים קרים?',
  'steps.pour.cold-timer': 'עכשיו מים קרים',
  'steps.pour.safe': 'הניחו את הקומקום במקום שאיש לא יפיל.',

  'steps.ran-out': ({ kettle }) => `קומקום ${kettle} נגמר מוקדם; מה שנשאר מתחלק מחדש.`,

  'steps.pour.not-drawn': ({ why }, f) =>
    `אי אפשר לצייר לאן הולך כל קומקום (${f.say(why)}): המים מתחלקים שווה בשווה. ודאו בעצמכם שהקילוח מגיע לכל מקום.`,

  'steps.sink.spout-and-tap': 'פייה וברז',
  'steps.sink.handles': ({ count }, f) => f.plural(count, { one: 'ידית', other: 'ידיות' }),
  'steps.sink.deck': 'שטח הכיור שמחוץ לקערה',
  'steps.sink.deck-and-drainboard': 'המשטח ומשטח הייבוש',
  'steps.sink.rim': 'שפה',
  'steps.sink.wall': 'דפנות',
  'steps.sink.floor': 'תחתית הכיור',
  'steps.sink.bowl.rim': ({ bowl }) => `קערה ${bowl}: שפה`,
  'steps.sink.bowl.wall': ({ bowl }) => `קערה ${bowl}: דפנות`,
  'steps.sink.bowl.floor': ({ bowl }) => `קערה ${bowl}: תחתית`,
  'steps.sink.shared': ({ part, pieces }, f) =>
    `${f.say(part)} (${pieces.map((piece) => f.say(piece)).join(', ')})`,
  'steps.sink.the-rest': ({ part }, f) => `${f.say(part)}, השאר`,
  'steps.sink.piece.back': 'מאחור',
  'steps.sink.piece.right': 'מימין',
  'steps.sink.piece.front': 'מלפנים',
  'steps.sink.piece.left': 'משמאל',
  'steps.sink.piece.lane': ({ number }) => `נתיב ${number}`,
  'steps.sink.piece.handle': ({ number }) =>
    ['ראשונה', 'שנייה', 'שלישית', 'רביעית'][number - 1] ?? String(number),
};
