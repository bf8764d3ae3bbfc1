import type { TranslationOf } from '../../model/translation.ts';
import type { heat as english } from '../../english/steps/heat.ts';

/** Burners and ovens. */
export const heat: TranslationOf<typeof english> = {
  'steps.heat.say-on': 'פועל',
  'steps.heat.say-off': 'כבוי',
  'steps.heat.ask-stayed-on': 'המבער נשאר דולק?',

  'steps.burner.of': ({ burner, cooktop }) => `${burner} (${cooktop})`,
  'steps.glow.title': ({ burner, cooktop, lengthS }, f) =>
    `ללבן ${f.duration(lengthS)} מרגע שמאדים: ${burner} (${cooktop}).`,
  'steps.glow.title-highest': ({ burner, cooktop, lengthS }, f) =>
    `לחמם בדרגה הגבוהה ביותר ${f.duration(lengthS)}: ${burner} (${cooktop}).`,
  'steps.glow.light-gas': ({ burner }) => `הדליקו בלהבה מלאה את המבער "${burner}".`,
  'steps.glow.light-electric': ({ burner }) => `העבירו לדרגה הגבוהה ביותר את המבער "${burner}".`,
  'steps.glow.light-clear': 'קולט פועל, שום דבר לידו.',
  'steps.glow.light-order': 'המבערים האחוריים קודם, כדי שאיש לא יושיט יד מעל מבער חם.',
  'steps.glow.light-gas-ready':
    'מכסים וחצובות במקום ויבשים, כפתורים מורכבים, ברז הגז פתוח. אין ריח גז; אחרת בלי להבה ובלי מתג: צאו והתקשרו.',
  'steps.glow.light-ask': 'המבער דולק עכשיו?',
  'steps.glow.warm-up': 'השגיחו על המבער עד שיאדים.',
  'steps.glow.visible.electric-coil':
    'כל הספירלה לוהטת באדום עמום, ואחר כך בכתום. ספירלה חדשה עם חיישן שמגביל את החום עשויה להידלק ולהיכבות לסירוגין, ולא להאדים כשאין עליה סיר.',
  'steps.glow.visible.solid-plate':
    'פלטת ברזל לוהטת באדום עמום בחושך, אם המגביל שלה מתיר. רבות עם נקודה אדומה מנתקות את החשמל לפני שהן מאדימות.',
  'steps.glow.visible.radiant-glass':
    'הסרט שמתחת לזכוכית לוהט תוך שניות; מגביל מכבה ומדליק אותו, וזה תקין. הזכוכית עצמה לא מאדימה.',
  'steps.glow.visible.gas-sealed': 'קצות החצובה שבתוך הלהבה מאדימים; החצובה כולה לא.',
  'steps.glow.visible.gas-open': 'קצות החצובה שבתוך הלהבה מאדימים; החצובה כולה לא.',
  'steps.glow.visible.gas-wok': 'טבעת החצובה שמעל הלהבה החיצונית מאדימה בקצותיה.',
  'steps.glow.visible.commercial-open':
    'זרועות הברזל הכבדות מאדימות במקום שהלהבה פוגעת; תנו להן יותר זמן.',
  'steps.glow.visible.portable-plate':
    'ספירלה ניידת מאדימה באדום עמום; כזו עם פלטת ברזל סגורה או תרמוסטט אולי לא תאדים כלל.',
  'steps.glow.may-stay-dark':
    'זה אולי לא יאדים חשוף לעולם: הוא חש את הסיר, או מקבל מתח נמוך מדי. הביטו בחושך. אם נשאר כהה, אמרו שאינו מאדים.',
  'steps.glow.warm-up-say': 'מאדים',
  'steps.glow.expect': ({ isAhead }) => (isAhead ? 'עד שמאדים (משוער)' : 'אמור להאדים בערך עכשיו'),
  'steps.glow.limit': 'כבר היה אמור להאדים',
  'steps.glow.hold': 'הניחו למבער ללהוט בלי הפסקה.',
  'steps.glow.hold-highest': 'החזיקו את המבער בדרגה הגבוהה ביותר בלי הפסקה.',
  'steps.glow.hold-detail': 'הישארו לידו. אם הלהבה או החשמל נפסקים, הזמן מתחיל שוב.',
  'steps.glow.hold-ask': 'המבער להט כל הזמן?',
  'steps.glow.hold-timer': 'ליבון',
  'steps.glow.look': 'הביטו במבער',
  'steps.glow.off': ({ burner }) => `כבו את המבער "${burner}".`,
  'steps.glow.off-detail': 'השאירו בלי מגע ויבש.',
  'steps.glow.off-ask': 'המבער כבוי?',
  'steps.glow.off-timer': 'כבו את המבער',
  'steps.glow.cool-safe': ({ burner }) =>
    `הרחיקו ידיים, מטליות וילדים מהמבער "${burner}" עד שיתקרר.`,

  'steps.oven.look': 'הכול בסדר עם התנור?',
  'steps.oven.clean.title': ({ oven }) => `להפעיל מחזור ניקוי עצמי מלא אחד: ${oven}.`,
  'steps.oven.clean.start': ({ oven }) =>
    `סגרו את הדלת והתחילו את מחזור הניקוי העצמי המלא: ${oven}.`,
  'steps.oven.clean.racks-in': 'הרשתות נשארות בפנים, כפי שמרשה ההוראה של היצרן.',
  'steps.oven.clean.racks-out': 'הרשתות בחוץ.',
  'steps.oven.clean.hob-cold': 'המבערים שמעליו נשארים כבויים עד שהמנעול נפתח.',
  'steps.oven.clean.locks': 'הדלת ננעלת בעצמה כשחם.',
  'steps.oven.clean.start-say': 'פועל',
  'steps.oven.clean.start-ask': 'המחזור פועל עכשיו?',
  'steps.oven.clean.cycle': 'הניחו למחזור להגיע לסופו.',
  'steps.oven.clean.cycle-detail':
    'הישארו בבית וערים; הרחיקו ילדים. אם החשמל נפסק, המחזור מתחיל שוב.',
  'steps.oven.clean.cycle-ask': 'המחזור נמשך בלי הפסקה?',
  'steps.oven.clean.cycle-timer': 'מחזור ניקוי עצמי',
  'steps.oven.clean.cool': 'השאירו את הדלת סגורה עד שהמנעול נפתח.',
  'steps.oven.clean.cool-detail': 'אל תפתחו בכוח.',
  'steps.oven.clean.cool-timer': 'המנעול נפתח',
  'steps.oven.clean.open': 'ודאו שהמחזור הסתיים והמנעול פתוח, ואז כבו.',
  'steps.oven.clean.open-detail': 'בפנים עדיין חם: השאירו סגור ויבש.',
  'steps.oven.clean.open-say': 'כבוי ולא נעול',
  'steps.oven.clean.open-ask': 'התנור כבוי ולא נעול?',
  'steps.oven.clean.open-timer': 'ודאו שהתנור כבוי',
  'steps.oven.clean.safe': 'השאירו את הדלת סגורה וכבו את התנור בלוח הבקרה או במפסק.',
  'steps.oven.title': ({ oven, lengthS }, f) =>
    `לחמם בדרגה הגבוהה ביותר ${f.duration(lengthS)}: ${oven}.`,
  'steps.oven.start': ({ oven }) => `העבירו לדרגה הגבוהה ביותר, דלת סגורה: ${oven}.`,
  'steps.oven.start-detail': 'אם יש בו גריל, הפעילו אותו בדקות האחרונות.',
  'steps.oven.racks-in': 'רשתות בפנים, נקיות ויבשות.',
  'steps.oven.racks-out': 'הרשתות הישנות בחוץ.',
  'steps.oven.start-ask': 'התנור פועל עכשיו?',
  'steps.oven.warm-up': 'חכו עד שיגיע לחום הגבוה ביותר.',
  'steps.oven.warm-up-say': 'הגיע לחום הגבוה ביותר',
  'steps.oven.warm-up-ask': 'התנור נשאר פועל?',
  'steps.oven.expect': ({ isAhead }) =>
    isAhead ? 'עד החום הגבוה ביותר (משוער)' : 'בערך עכשיו בחום הגבוה ביותר',
  'steps.oven.hold': 'החזיקו אותו בחום הגבוה ביותר בלי הפסקה.',
  'steps.oven.hold-detail': 'אם החשמל או הלהבה נפסקים, הזמן מתחיל שוב.',
  'steps.oven.hold-ask': 'התנור פעל בלי הפסקה?',
  'steps.oven.hold-timer': 'החום הגבוה ביותר',
  'steps.oven.off': ({ oven }) => `כבו והשאירו את הדלת סגורה: ${oven}.`,
  'steps.oven.off-ask': 'התנור כבוי?',
  'steps.oven.off-timer': 'כבו את התנור',
  'steps.oven.safe': 'כבו את התנור והשאירו את הדלת סגורה.',
  'steps.oven.cool-safe': ({ oven }) => `השאירו את הדלת סגורה והרחיקו ילדים עד שיתקרר: ${oven}.`,
  'steps.oven.picture.heat': 'חימום',
  'steps.oven.picture.hold': 'החזקה',
  'steps.oven.picture.cool': 'קירור',
  'steps.oven.picture.cool-locked': 'קירור, נעול',
};
