import type { ask as english } from '../../english/survey/ask.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What is still to tell, and why the plan wants to know. */
export const ask: TranslationOf<typeof english> = {
  'survey.ask.material': ({ fixture }) => `${fixture} : en quelle matière ?`,
  'survey.ask.material.why': 'Cela décide si l’on peut cachériser, et comment.',
  'survey.ask.lining': ({ fixture }) => `${fixture} : de quoi l’intérieur est-il revêtu ?`,
  'survey.ask.lining.why': 'Cela décide si l’on peut cachériser.',
  'survey.ask.condition': ({ fixture }) => `${fixture} : est-ce lisse sous l’ongle ?`,
  'survey.ask.condition.why':
    'L’eau n’entre pas dans les fentes et rayures profondes ; le plan demande jusqu’à ce que ce soit dit.',
  'survey.ask.cycle': ({ fixture }) =>
    `${fixture} : combien de minutes dure le cycle de nettoyage ?`,
  'survey.ask.cycle.why': 'C’est dans la notice ; d’ici là une durée usuelle est prévue.',
  'survey.ask.circuit': ({ fixture }) => `${fixture} : quel circuit l’alimente ?`,
  'survey.ask.circuit.why': 'Sa charge n’est pas surveillée tant que le disjoncteur est inconnu.',
  'survey.ask.vessels': 'Qu’est-ce qui fait bouillir l’eau ?',
  'survey.ask.vessels.why':
    'On ne peut rien verser sans bouilloire, fontaine à eau chaude ou marmite.',
  'survey.ask.burner': ({ vessel }) => `${vessel} : sur quel foyer ?`,
  'survey.ask.burner.why': 'L’eau ne bout pas plus vite que son foyer ne chauffe.',
  'survey.ask.sockets': ({ vessel }) => `${vessel} : sur quelles prises ?`,
  'survey.ask.sockets.why': 'Deux fortes bouilloires sur un disjoncteur le font sauter.',
  'survey.ask.place': 'Où est la cuisine ?',
  'survey.ask.place.why': 'L’eau bout moins chaud en montagne, et le jour a ses heures.',
  'survey.ask.hood': ({ hood }) => `${hood} : souffle-t-elle dehors ?`,
  'survey.ask.hood.why':
    'Le nombre de foyers au rouge à la fois dépend de l’air ; d’ici là elle compte comme aucune.',
  'survey.ask.any-hood': 'Y a-t-il une hotte au-dessus des feux, et souffle-t-elle dehors ?',
  'survey.ask.window': 'Y a-t-il une fenêtre qui s’ouvre ?',
  'survey.ask.window.why':
    'D’ici là le plan n’en compte aucune, et peut trouver la pièce trop chaude ou l’air trop mauvais.',
  'survey.ask.hood-flow': 'Quel débit d’air a la hotte ?',
  'survey.ask.hood-flow.why': 'C’est dans la notice ; d’ici là elle compte comme aucune.',
  'survey.ask.open-sides': ({ fixture }) => `${fixture} : de quels côtés pouvez-vous vous tenir ?`,
  'survey.ask.open-sides.why': 'On verse de là ; d’ici là tous les côtés comptent comme libres.',
  'survey.ask.fixtures': 'Qu’y a-t-il dans la cuisine ?',
  'survey.ask.fixtures.why': 'Il n’y a encore rien à cachériser.',
};
