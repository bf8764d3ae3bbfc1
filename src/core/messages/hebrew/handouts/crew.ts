import type { TranslationOf } from '../../model/translation.ts';
import type { crewSheets as english } from '../../english/handouts/crew.ts';

/** A sheet a person, of what the plan gives them. */
export const crewSheets: TranslationOf<typeof english> = {
  'handouts.crew.about': 'דף לכל אחד מהעובדים, לפי התוכנית. מה שהטאבלט אומר קודם לו.',
  'handouts.crew.title': ({ name, kitchen }) => `${name}: ${kitchen}`,
  'handouts.crew.first':
    'לפי התוכנית: הטאבלט אומר מתי זה באמת כך, ושואל קודם את מה שצריך לשאול. כווייה: מיד 20 דקות מים קרירים זורמים.',
  'handouts.crew.nothing': 'התוכנית לא נותנת לאדם הזה מה לעשות.',
};
