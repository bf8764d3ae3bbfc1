import type { TranslationOf } from '../../model/translation.ts';
import type { byHand as english } from '../../english/steps/by-hand.ts';

/** Steam, and what a household's answer asks for that is done by hand. */
export const byHand: TranslationOf<typeof english> = {
  'steps.steam.title': ({ fixture, lengthS }, f) =>
    `להרתיח מים בפנים ${f.duration(lengthS)}: ${fixture}.`,
  'steps.steam.start': 'מלאו כוס רחבה במים עד חצייה, העמידו בה מקל עץ, הכניסו והפעילו.',
  'steps.steam.cup-on': 'העמידו את הכוס על משהו חדש: מגבת נייר מקופלת ארבע פעמים.',
  'steps.steam.start-detail':
    'המקל גורם לרתיחה שקטה: מים דוממים עלולים לזנק מן הכוס כשמזיזים אותה.',
  'steps.steam.start-ask': 'פועל עכשיו?',
  'steps.steam.hold': 'הניחו לו להתמלא אדים.',
  'steps.steam.hold-detail':
    'אסור שהכוס תתייבש: מיקרוגל ריק נשרף. להוספת מים: כבו, השאירו סגור דקה, לבשו כפפות; אחר כך העמידו את הכוס במקום אחר.',
  'steps.steam.hold-ask': 'הרתיחה נמשכה?',
  'steps.steam.timer': 'אדים',
  'steps.steam.top-up': 'יש מים בכוס?',
  'steps.steam.open': 'כבו והשאירו סגור חמש דקות; אחר כך נגבו במים קרים.',
  'steps.steam.open-detail':
    'פתחו הרחק מכם, בכפפות, והוציאו קודם את הכוס. הצלחת והטבעת חוזרות יבשות.',
  'steps.steam.open-say': 'נוגב',
  'steps.steam.open-ask': 'כבוי ומנוגב?',
  'steps.steam.off-timer': 'כבו אותו',
  'steps.steam.safe': 'כבו אותו והשאירו סגור.',

  'steps.by-hand.pour': ({ fixture }) => `לערות ביד מים רותחים על כל מקום: ${fixture}.`,
  'steps.by-hand.pour-kettle': 'ישר מהקומקום שרתח, ברתיחה מלאה.',
  'steps.by-hand.pour-stream': 'הקילוח עצמו מגיע לכל מקום, קומקום אחר קומקום.',
  'steps.by-hand.pour-say': 'העירוי הגיע לכל מקום',
  'steps.by-hand.pour-ask': 'מים רותחים הגיעו לכל מקום?',
  'steps.by-hand.immerse': ({ fixture }) => `להגעיל במים רותחים, חלק אחר חלק: ${fixture}.`,
  'steps.by-hand.immerse-boils': 'המים רותחים לפני כל חלק ובזמן שהוא בתוכם.',
  'steps.by-hand.immerse-under': 'כל חלק שקוע כולו.',
  'steps.by-hand.immerse-say': 'כל החלקים היו בפנים',
  'steps.by-hand.immerse-ask': 'כל החלקים היו במים הרותחים?',
  'steps.by-hand.cold': 'שטפו מיד כל חלק במים קרים.',
  'steps.by-hand.heat': ({ fixture, lengthS }, f) =>
    `לחמם כפי שאומרת התשובה שלכם, ${f.duration(lengthS)}: ${fixture}.`,
  'steps.by-hand.run-empty': ({ fixture, lengthS }, f) =>
    `להפעיל ריק, במחזור החם ביותר, ${f.duration(lengthS)}: ${fixture}.`,
  'steps.by-hand.heat-say': 'הזמן נגמר',
  'steps.by-hand.heat-ask': 'החום נמשך בלי הפסקה?',
  'steps.by-hand.heat-timer': 'חימום',
  'steps.by-hand.look': 'הביטו במה שמתחמם',
  'steps.by-hand.off': 'כבו את החום ואל תגעו עד שיתקרר.',
  'steps.by-hand.off-say': 'כבוי וקר',
  'steps.by-hand.off-ask': 'החום כבוי?',
  'steps.by-hand.off-timer': 'כבו את החום',
  'steps.by-hand.safe': 'כבו את החום והרחיקו את כולם.',
};
