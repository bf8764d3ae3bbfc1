import type { TranslationOf } from '../../model/translation.ts';
import type { stepReasons as english } from '../../english/plan/step-reasons.ts';

function reportsText(reports: number): string {
  return reports === 1 ? 'דיווח אחד' : `${reports} דיווחים`;
}

/** Why each step is done, and what earlier runs showed about it: told with the plan, not at the work. */
export const stepReasons: TranslationOf<typeof english> = {
  'steps.prepare.ask.reason': 'מה שלא נענה נעשה בדרך המחמירה.',
  'steps.prepare.gather.reason': 'עם קומקום רותח ביד אי אפשר להביא דבר.',
  'steps.prepare.alarms.reason': 'הם שומרים מפני מה שאיש לא מריח.',
  'steps.prepare.clear.reason': 'לניקוי ולעירוי צריך משטחים ריקים.',
  'steps.clean.reason': 'הפריט הזה צריך ניקוי.',
  'steps.clean.reason-before-rest':
    'מה שדבוק בו היה חוצץ בפני ההכשרה, וניקוי חם נחשב לשימוש: הוא בא לפני ההשבתה.',
  'steps.clean.reason-resting':
    'מה שדבוק בו היה חוצץ בפני ההכשרה. הוא כבר מושבת, וניקוי חם היה מתחיל את ההשבתה מחדש.',
  'steps.clean.reason-vessel': 'אבנית ושומן היו חוצצים על דפנותיו.',
  'steps.unplug.reason': 'מים וחשמל לא נפגשים: התקע בחוץ לפני השטיפה.',
  'steps.thaw.reason': 'מה שקפוא בפנים אי אפשר לנקות.',
  'steps.switch-on.reason': 'אוכל נשמר בצידנית שעות ספורות בלבד.',
  'steps.rest.reason': ({ restHours }, f) =>
    `אסור שהיה בשימוש חם בתוך ${f.shortNumber(restHours)} שעות לפני הכשרתו (אינו בן יומו).`,
  'steps.parts.reason': 'מה שלא מוכשר מוחלף או מכוסה.',
  'steps.mark.reason': 'כדי שאיש לא יקלקל את העבודה בטעות.',
  'steps.boil.reason': 'מערים מהכלי שעמד על האש (כלי ראשון), ברתיחה מלאה.',
  'steps.boil-over.reason':
    'מה שמכשיר צריך להיות כשר בעצמו: מים רותחים בתוכו ומעל שפתו מכשירים אותו (הגעלה).',
  'steps.glow.cool-reason': 'הוא שורף את היד זמן רב אחרי שהאודם נעלם.',
  'steps.oven.cool-reason': 'הוא שורף את היד זמן רב אחרי שכבה.',
  'steps.experience.boil': ({ lengthS, reports }, f) =>
    `מהביצוע הקודם שלכם: רותח תוך ${f.about(lengthS)} (${reportsText(reports)}).`,
  'steps.experience.glow': ({ lengthS, reports }, f) =>
    `מהביצוע הקודם שלכם: מאדים אחרי ${f.about(lengthS)} (${reportsText(reports)}).`,
  'steps.experience.heat-up': ({ lengthS, reports }, f) =>
    `מהביצוע הקודם שלכם: בחום הגבוה ביותר אחרי ${f.about(lengthS)} (${reportsText(reports)}).`,
  'steps.experience.pour': ({ lengthS, reports }, f) =>
    `מהביצוע הקודם שלכם: הקומקום מתרוקן אחרי ${f.about(lengthS)} (${reportsText(reports)}).`,
  'steps.reason-and-experience': ({ reason, experience }, f) =>
    `${f.say(reason)} ${f.say(experience)}`,
};
