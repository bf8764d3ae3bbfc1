import type { TranslationOf } from '../../model/translation.ts';
import type { partNames as english } from '../../english/steps/parts.ts';

/** What the parts of fixtures are called. */
export const partNames: TranslationOf<typeof english> = {
  'steps.part.racks': 'רשתות',
  'steps.part.side-rails': 'מסילות צד',
  'steps.part.trays': 'תבניות אפייה',
  'steps.part.door-rim': 'שפת הדלת',
  'steps.part.grates': 'חצובות',
  'steps.part.caps': 'מכסי מבערים',
  'steps.part.drip-bowls': 'קעריות טפטוף',
  'steps.part.cooktop-surface': 'משטח סביב המבערים',
  'steps.part.knobs': 'כפתורים',
  'steps.part.hood-filter': 'מסנן',
  'steps.part.strainer': 'מסננת הניקוז',
  'steps.part.aerator': 'חסכם הברז',
  'steps.part.overflow': 'פתח הגלישה',
  'steps.part.sprayer-hose': 'מתז נשלף והצינור שלו',
  'steps.part.instant-hot-tap': 'ברז מים חמים',
  'steps.part.disposer': 'מגן הגומי של טוחן האשפה',
  'steps.part.plate': 'צלחת זכוכית',
  'steps.part.plate-ring': 'טבעת שמתחת לצלחת',
};
