import type { preparing as english } from '../../english/steps/preparing.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What is done before anything is cleaned (shared/cleaning.json). */
export const preparing: TranslationOf<typeof english> = {
  'steps.prepare.say': 'Fait',
  'steps.prepare.ask.title': 'Posez les questions ouvertes et notez les réponses.',
  'steps.prepare.ask.line-1': 'La liste des questions fait partie de ce plan.',
  'steps.prepare.ask.line-2':
    'Entrez chaque réponse dans la cuisine : elle remplace la ligne de la coutume.',
  'steps.prepare.gather.title': 'Rassemblez ce que la liste nomme.',
  'steps.prepare.gather.line-1':
    'Lisez les notices du four, de la plaque, de la bouilloire et du plan de travail.',
  'steps.prepare.gather.line-2': 'Extincteur, gants et brocs d’eau froide à portée du travail.',
  'steps.prepare.alarms.title': 'Testez le détecteur de fumée et le détecteur de CO.',
  'steps.prepare.alarms.line-1': 'Pressez le bouton de test de chacun.',
  'steps.prepare.alarms.line-2': 'Hotte au maximum : aspire-t-elle une bande de papier ?',
  'steps.prepare.alarms.line-3': 'Ouvrez la fenêtre une fois.',
  'steps.prepare.clear.title': 'Videz la cuisine : aliments, vaisselle et tout ce qui bouge.',
  'steps.prepare.clear.line-1': 'Les choses propres attendent ailleurs, sur une serviette.',
  'steps.prepare.clear.line-2': 'Débranchez les petits appareils.',
  'steps.prepare.clear.line-3': 'Notez le dernier usage à chaud de chaque élément.',
};
