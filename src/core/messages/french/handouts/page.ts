import type { page as english } from '../../english/handouts/page.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** The part of the Plan that holds the handouts, and how one is chosen. */
export const page: TranslationOf<typeof english> = {
  'handouts.choose': 'Feuilles à imprimer ou à envoyer',
  'handouts.print': 'Imprimer cette feuille',
  'handouts.send': 'L’envoyer',
  'handouts.copy': 'La copier en texte',
  'handouts.copied': 'Copié.',
  'handouts.not-copied': 'Ce navigateur ne l’a pas copié.',
  'handouts.working': 'Calcul en cours …',
  'handouts.failed': ({ why }, f) => `Le calcul n’a pas abouti. ${f.say(why)}`,
  'handouts.name.labels': 'Étiquettes',
  'handouts.name.rabbi': 'Pour le rabbin',
  'handouts.name.covers': 'Couvertures à couper',
  'handouts.name.utensils': 'Ustensiles',
  'handouts.name.shopping': 'À acheter',
  'handouts.name.door': 'Pour la porte',
  'handouts.name.crew': 'Pour chacun de vous',
};
