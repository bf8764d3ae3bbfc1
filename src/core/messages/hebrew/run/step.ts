import type { TranslationOf } from '../../model/translation.ts';
import type { step as english } from '../../english/run/step.ts';
import { unended } from '../../english/report/phrases.ts';

/** The current-step panel: sentence, digits, gate, checklist, and the one thing to press. */
export const step: TranslationOf<typeof english> = {
  'run.now': 'מה לעשות עכשיו',
  'run.whole-kitchen': 'כל המטבח',
  'run.utensils': 'כלים',
  'run.step.about': ({ phase }, f) => f.say(phase),
  'run.step.about-from': ({ phase, vessel }, f) => `${f.say(phase)}, מתוך: ${vessel}`,
  'run.step.attempt': ({ about, attempt }, f) => `${f.say(about)}, ניסיון ${f.number(attempt)}`,
  'run.step.cautions': 'אזהרות',
  'run.step.more': ({ count }, f) =>
    f.plural(count, {
      one: 'עוד שורה אחת',
      two: 'עוד שתי שורות',
      other: `עוד ${f.number(count)} שורות`,
    }),
  'run.step.next': ({ step, lengthS }, f) => `הבא: ${unended(f.say(step))} (${f.about(lengthS)})`,
  'run.step.faults': 'אם משהו משתבש',
  'run.step.fault': ({ fault }, f) => `${f.say(fault)}?`,

  'run.action.looked': 'בדקתי, הכול בסדר',
  'run.action.heard': 'שמעתי',
  'run.action.boil-again': 'להרתיח שוב את הקומקום הזה',
  'run.action.boil-again.reason': 'המים הרותחים המתינו יותר מדי.',
  'run.action.begin': 'להתחיל',
  'run.action.again': 'לעשות שוב',
  'run.action.again.reason': 'נעצר או נכשל קודם.',
  'run.action.yes': 'כן',
  'run.action.no': 'לא',
  'run.action.not-yet': 'עוד לא',
  'run.action.waiting': 'ממתינים',
  'run.action.timer-ends': 'השעון מסיים את זה בעצמו; צליל יקרא לכם.',
  'run.action.meanwhile': 'בינתיים',
  'run.action.ticks-left': ({ count }, f) =>
    f.plural(count, { one: 'בוצע: נשאר אחד', other: `בוצע: נשארו ${f.number(count)}` }),

  'run.checklist.rest': 'שאר הדברים אינם כאן',

  'run.gate': 'לפני שמתחילים',
  'run.gate.left': ({ count }, f) =>
    f.plural(count, {
      one: 'לפני שמתחילים: נשארה שאלה אחת',
      two: 'לפני שמתחילים: נשארו שתי שאלות',
      other: `לפני שמתחילים: נשארו ${f.number(count)} שאלות`,
    }),
  'run.gate.settles': ({ left }, f) => `חכו עוד ${f.say(left)} כדי להיות בטוחים.`,
  'run.gate.water-waits': ({ left }, f) =>
    `המים הרותחים מחכים: נשארו ${f.say(left)}, ואז מרתיחים שוב.`,
  'run.gate.go-past': 'זה לא כך, וממשיכים',

  'run.burners': 'מבערים יחד עם זה',
  'run.burners.light': 'להדליק',
  'run.burners.warm-up': 'מתחמם',
  'run.burners.hold': 'לוהט ברצף',
  'run.burners.off': 'לכבות',
  'run.burners.press': ({ burner, action }, f) => `${burner}: ${f.say(action)}`,
  'run.kettles': 'קומקומים על האש',
  'run.kettles.to-switch-on': 'להפעיל',
  'run.kettles.should-boil': 'אמור לרתוח',
};
