import type { TranslationOf } from '../../model/translation.ts';
import type { refusals as english } from '../../english/run/refusals.ts';

/**
 * Why the engine refuses what no screen offers, what was told already, and
 * changes of a running plan. It comes after the run's page: nobody asks for
 * any of it in its first moment.
 */
export const refusals: TranslationOf<typeof english> = {
  'engine.unknown.step': ({ id }) => `השלב הוא "${id}"; מותר: שלב מהתוכנית.`,
  'engine.unknown.stage': 'הקטע הזה כבר נגמר. ראו מה השלב מבקש עכשיו.',
  'engine.unknown.fault': ({ id }) => `התקלה היא "${id}"; מותר: תקלה שדווחה.`,
  'engine.unknown.gate': ({ id }) => `שאלת הבטיחות היא "${id}"; מותר: שאלה מהתוכנית.`,
  'engine.unknown.scope': ({ id, allowed }, f) => `התחום הוא "${id}"; מותר: ${f.list(allowed)}.`,
  'engine.unknown.question': ({ id }) => `השאלה היא "${id}"; מותר: שאלה פתוחה.`,
  'engine.unknown.fixture': ({ id }) =>
    `הפריט הוא "${id}"; מותר: פריט שהתוכנית עובדת עליו, או כלי שהיא מכשירה. בחרו אותו בתמונה; כלי שאינה מכשירה מורחק, והתוכנית נעשית מחדש.`,

  'engine.clock.below-build': ({ shownWallMs, fromWallMs }) =>
    `השעון מראה ${shownWallMs}; מותר: ${fromWallMs} ואילך, מועד בניית היישום. כוונו את התאריך והשעה בטאבלט.`,
  'engine.clock.passed-missing': ({ missingS }, f) =>
    `חסרים ${f.duration(missingS)}. אמרו אם עברו, או שהשעון כוון מחדש.`,
  'engine.clock.nothing-answered': 'לא נענתה שום שאלה על השעון בביצוע הזה.',

  'engine.reason.skip': 'כתבו למה מדלגים על השלב; זה נכנס לתיעוד.',
  'engine.reason.repeat': 'כתבו למה חוזרים על השלב; זה נכנס לתיעוד.',
  'engine.reason.override': 'כתבו למה מותר לעקוף; זה נכנס לתיעוד.',
  'engine.reason.amend': 'כתבו למה התוכנית משתנה; זה נכנס לתיעוד.',
  'engine.reason.correct': 'כתבו איך אתם יודעים; זה נכנס לתיעוד.',
  'engine.reason.note': 'ההערה ריקה. כתבו משהו.',

  'engine.cooling.first': 'אמרו קודם איך הסתיים קירור הכווייה.',
  'engine.cooling.short': 'עוד לא קורר 20 דקות: השאירו את המים זורמים.',
  'engine.fault.already-cleared': 'זה כבר תוקן.',

  'engine.session.open': 'הדף הזה כבר פתח את הביצוע.',
  'engine.session.not-open': 'הדף הזה לא פתח את הביצוע. פתחו קודם את הביצוע, כדי שהפער ייראה.',
  'engine.storage.down-already': 'האחסון כבר לא פועל.',
  'engine.storage.up-already': 'האחסון כבר פועל.',
  'engine.recheck.stands': 'אי אפשר לחזור בכם עוד: משהו קרה מאז. ההשבתה נספרת מהרגע שנאמרה.',
  'engine.timer.ended': 'השעון הזה כבר נגמר; אין על מה לענות.',
  'engine.timer.cause': ({ found, most }) =>
    `cause הוא ${found}; מותר: 1 עד ${most}, כפי שהשעון מראה.`,
  'engine.timer.told': 'זה כבר נאמר; פעם אחת לכל סיבה מספיקה.',
  'engine.timer.does-not-call': 'השעון הזה לא מבקש תשובה.',
  'engine.timer.cannot-extend': 'התראה אי אפשר לדחות. ענו כשהיא נשמעת.',
  'engine.timer.extend-range': ({ byS, mostS }) =>
    `byS הוא ${byS}; מותר: יותר מ־0, לכל היותר ${mostS}. הזינו את הזמן להוספה.`,
  'engine.timer.cannot-correct': 'רק להמתנה כמו השבתה אפשר לקבוע זמן התחלה.',
  'engine.timer.correct-range': ({ sinceWallMs, mostS }) =>
    `sinceWallMs הוא ${sinceWallMs}; מותר: מלפני ${mostS} שנ׳ ועד עכשיו, כפי שהתיעוד מספר. הזינו מתי היה חם לאחרונה.`,

  'engine.clock.not-asked': 'איש לא שאל מה השעה.',
  'engine.clock.range': ({ actualWallMs, fromWallMs, toWallMs }) =>
    `actualWallMs הוא ${actualWallMs}; מותר: מ־${fromWallMs}, מועד בניית היישום, עד ${toWallMs}, יום אחרי השעה המאוחרת ביותר שנראתה. כוונו את השעון, או הזינו את השעה הנכונה.`,

  'engine.amend.begun': ({ step }, f) => `"${f.say(step)}" התחיל; רק מה שלא התחיל יכול להשתנות.`,
  'engine.amend.bad-number': ({ id, found, field }) =>
    `בשלב "${id}" השדה ${field} הוא ${found}; מותר: מספר סופי גדול מ־0.`,
  'engine.amend.need-twice': ({ id, need }) =>
    `שלב "${id}" זקוק ל־"${need}" פעמיים; מותר: פעם אחת.`,
  'engine.amend.no-stage': ({ id }) => `לשלב "${id}" אין קטע; מותר: אחד או יותר.`,
  'engine.amend.stage-twice': ({ id, stage }) =>
    `לשלב "${id}" יש הקטע "${stage}" פעמיים; מותר: פעם אחת.`,
  'engine.amend.timer-twice': ({ id, timer }) =>
    `לשלב "${id}" יש השעון "${timer}" פעמיים בקטע אחד; מותר: פעם אחת.`,
  'engine.amend.start-of-none': ({ id }) => `startS מזכיר את "${id}", שאינו שלב.`,
  'engine.amend.start-range': ({ id, found }) =>
    `startS של "${id}" הוא ${found}; מותר: מספר סופי, 0 או יותר.`,
  'engine.amend.empty': 'בתיקון אין שלב; מותר: אחד או יותר.',
  'engine.amend.twice': 'התיקון מזכיר שלב פעמיים; מותר: פעם אחת.',
  'engine.amend.cycle': ({ id }) => `שלב "${id}" יהיה זקוק לעצמו; לא נשאר סדר אפשרי.`,
  'engine.amend.no-need': ({ id, need }) => `שלב "${id}" זקוק ל־"${need}", שאינו שלב.`,
  'engine.amend.no-resource': ({ id, resource }) => `שלב "${id}" דורש "${resource}", שאינו משאב.`,
  'engine.amend.no-gate': ({ id, gate }) =>
    `שלב "${id}" מזכיר את שאלת הבטיחות "${gate}", שאינה קיימת.`,
  'engine.amend.lacks-gate': ({ id, gate }) => `לשלב "${id}" חסרה שאלת הבטיחות "${gate}".`,
  'engine.amend.lacks-caution': ({ id, caution }) => `לשלב "${id}" חסרה האזהרה "${caution}".`,
  'engine.amend.stages': ({ id, found, allowed }, f) =>
    `לשלב "${id}" יש הקטעים ${f.list(found)}; מותר: עם ${f.list(allowed)} בסדר הזה.`,
  'engine.amend.demands-less': ({ id, resource, wanted }) =>
    `שלב "${id}" דורש פחות מ־${wanted} של "${resource}".`,
  'engine.amend.guards-less': ({ id, step }, f) =>
    `שלב "${id}" שומר על פחות מ־"${f.say(step)}": סכנה, שעון או הבאה למצב בטוח.`,
  'engine.amend.other-work': ({ id, step }, f) =>
    `שלב "${id}" הוא עבודה אחרת מ־"${f.say(step)}"; מותר: אותו פריט ואותו סוג.`,
  'engine.amend.drops-need': ({ id, need, step }, f) =>
    `שלב "${id}" כבר לא זקוק ל־"${need}" כמו "${f.say(step)}".`,
  'engine.amend.no-sibling': ({ id, kind, fixture, means, allowed }) =>
    `שלב "${id}" הוא ${kind} של ${fixture} עם ${means}; מותר: עבודה שכבר יש בתוכנית שם${allowed.map((one) => `, עם ${one}`).join('')}.`,
  'engine.amend.not-fresh': ({ id, step }, f) =>
    `שלב "${id}" לא זקוק למים שזה עתה רתחו כמו "${f.say(step)}".`,
  'engine.amend.not-begun-so': ({ id, step }, f) => `שלב "${id}" לא מתחיל כמו "${f.say(step)}".`,

  'engine.step.over': ({ step }, f) => `"${f.say(step)}" נגמר.`,
  'engine.step.over-repeat': ({ step }, f) =>
    `"${f.say(step)}" נגמר. חזרו עליו כדי לעשות אותו שוב.`,
  'engine.step.begun': ({ step }, f) => `"${f.say(step)}" התחיל.`,
  'engine.step.not-begun': ({ step }, f) => `"${f.say(step)}" לא התחיל.`,
  'engine.step.stopped': ({ step }, f) => `"${f.say(step)}" נעצר. הביאו אותו למצב בטוח.`,
  'engine.step.not-over': ({ step }, f) => `"${f.say(step)}" עוד לא נגמר. עצרו אותו קודם.`,
  'engine.step.cannot-repeat': ({ step }, f) => `אי אפשר לחזור על "${f.say(step)}".`,
  'engine.step.fault-open': 'תקנו קודם את מה שדווח על השלב הזה.',
  'engine.step.not-stopped': 'השלב הזה לא נעצר, ולכן אין מה להביא למצב בטוח.',
  'engine.resume.review-gap': 'ענו קודם מה קרה בפער.',
  'engine.resume.review-clock': 'אמרו קודם אם השעה המוצגת נכונה.',
  'engine.resume.storage': 'עוד אי אפשר לכתוב דבר.',
  'engine.resume.hot': 'הביאו קודם למצב בטוח את מה שעדיין חם.',
  'engine.resume.fault': ({ fault }, f) => `עוד לא תוקן: ${f.say(fault)}.`,
  'engine.resume.gate-settling': ({ ask }, f) => `חכו עד שיתייצב: ${f.say(ask)}`,
  'engine.resume.gate-asked': ({ ask }, f) => `ענו קודם: ${f.say(ask)}`,

  'engine.status.drafting': 'הביצוע לא התחיל. התחילו אותו קודם.',
  'engine.status.running': 'הביצוע כבר מתנהל.',
  'engine.status.held': 'הביצוע מושהה. המשיכו אותו קודם.',
  'engine.status.suspended': 'הביצוע נעצר בגלל תקלה. תקנו את מה שעצר אותו, ואז המשיכו.',
  'engine.status.reviewing': 'ענו קודם מה קרה בזמן שהיישום נעדר.',
  'engine.status.closing': 'הביצוע נעצר עכשיו. נשאר רק להביא למצב בטוח.',
  'engine.status.closed': 'הביצוע סגור.',
};
