import type { rabbi as english } from '../../english/handouts/rabbi.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** One page for the rabbi: what is known of each thing he is asked about. */
export const rabbi: TranslationOf<typeof english> = {
  'handouts.rabbi.about':
    'Chaque question, avec ce que vous avez dit de l’objet. Inscrivez son âge ; la réponse entre dans le plan sous « À demander ».',
  'handouts.rabbi.facts': ({ facts }, f) => `${f.capital(facts.map(f.say).join(' ; '))}.`,
  'handouts.rabbi.age': 'Âge :',
  'handouts.rabbi.trying': 'Calcul de ce que change chaque réponse …',
  'handouts.fact.part': ({ part }, f) => `concerne : ${f.say(part)}`,
  'handouts.fact.material-unknown': 'matière inconnue',
  'handouts.fact.condition.smooth': 'lisse',
  'handouts.fact.condition.scratched': 'rayé',
  'handouts.fact.condition.cracked': 'fendu',
  'handouts.fact.condition.porous': 'poreux',
  'handouts.fact.condition.unknown': 'surface non regardée',
  'handouts.fact.top.metal': 'dessus en métal',
  'handouts.fact.top.enamel': 'dessus en émail',
  'handouts.fact.top.glass-ceramic': 'dessus en vitrocéramique',
  'handouts.fact.cleaning.pyrolytic': 'pyrolyse',
  'handouts.fact.cleaning.steam': 'nettoyage vapeur',
  'handouts.fact.cleaning.catalytic': 'parois catalytiques',
  'handouts.fact.cleaning.none': 'sans pyrolyse',
  'handouts.fact.varnished.yes': 'verni',
  'handouts.fact.varnished.no': 'non verni',
  'handouts.fact.kneaded.yes': 'de la pâte y a été pétrie directement',
  'handouts.fact.kneaded.no': 'aucune pâte n’y a été pétrie',
  'handouts.fact.hotFood.yes': 'des aliments chauds y ont été posés directement',
  'handouts.fact.hotFood.no': 'aucun aliment chaud n’y a été posé',
  'handouts.fact.belongs': ({ to }, f) => `destiné à : ${f.say(to)}`,
  'handouts.fact.last-hot': ({ at }, f) => `dernier usage à chaud ${f.say(at)}`,
};
