import type { crewSheets as english } from '../../english/handouts/crew.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** A sheet a person, of what the plan gives them. */
export const crewSheets: TranslationOf<typeof english> = {
  'handouts.crew.about':
    'Une feuille pour chacun de ceux qui travaillent, selon le plan. Ce que dit la tablette passe avant.',
  'handouts.crew.title': ({ name, kitchen }) => `${name} : ${kitchen}`,
  'handouts.crew.first':
    'Selon le plan : la tablette dit quand c’est vraiment le moment, et pose les questions d’avant. Brûlure : aussitôt 20 minutes sous l’eau courante fraîche.',
  'handouts.crew.nothing': 'Le plan ne donne rien à faire à cette personne.',
};
