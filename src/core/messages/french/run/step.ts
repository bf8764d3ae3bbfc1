import type { step as english } from '../../english/run/step.ts';
import type { TranslationOf } from '../../model/translation.ts';
import { unended } from '../report/phrases.ts';

/** The current-step panel: sentence, digits, gate, checklist, and the one thing to press. */
export const step: TranslationOf<typeof english> = {
  'run.now': 'À faire maintenant',
  'run.whole-kitchen': 'Toute la cuisine',
  'run.utensils': 'Ustensiles',
  'run.step.about': ({ phase }, f) => f.say(phase),
  'run.step.about-from': ({ phase, vessel }, f) => `${f.say(phase)}, depuis : ${vessel}`,
  'run.step.attempt': ({ about, attempt }, f) => `${f.say(about)}, essai ${f.number(attempt)}`,
  'run.step.cautions': 'Mises en garde',
  'run.step.more': ({ count }, f) =>
    `${f.number(count)} ${f.plural(count, { one: 'ligne', other: 'lignes' })} de plus`,
  'run.step.next': ({ step, lengthS }, f) =>
    `Ensuite : ${unended(f.say(step))} (${f.about(lengthS)})`,
  'run.step.faults': 'Si quelque chose tourne mal',
  'run.step.fault': ({ fault }, f) => `${f.say(fault)} ?`,

  'run.action.looked': 'J’ai regardé, tout va bien',
  'run.action.heard': 'J’ai entendu',
  'run.action.boil-again': 'Refaire bouillir cette bouilloire',
  'run.action.boil-again.reason': 'L’eau bouillie a trop attendu.',
  'run.action.begin': 'Commencer',
  'run.action.again': 'Refaire',
  'run.action.again.reason': 'L’étape avait été arrêtée ou avait échoué.',
  'run.action.yes': 'Oui, c’est le cas',
  'run.action.no': 'Non',
  'run.action.not-yet': 'Pas encore',
  'run.action.waiting': 'En attente',
  'run.action.timer-ends': 'Le minuteur y met fin ; vous serez appelé.',
  'run.action.meanwhile': 'Entre-temps',
  'run.action.ticks-left': ({ count }, f) =>
    `Fait : ${f.plural(count, { one: 'reste', other: 'restent' })} ${f.number(count)}`,

  'run.checklist.rest': 'Le reste n’existe pas ici',

  'run.gate': 'Avant de commencer',
  'run.gate.left': ({ count }, f) => `Avant de commencer : ${f.number(count)} à répondre`,
  'run.gate.settles': ({ left }, f) => `Attendez encore ${f.say(left)} pour être sûr.`,
  'run.gate.water-waits': ({ left }, f) =>
    `L’eau bouillie attend : encore ${f.say(left)}, puis il faut la refaire bouillir.`,
  'run.gate.go-past': 'Ce n’est pas le cas, et je continue',

  'run.burners': 'Foyers en même temps que celui-ci',
  'run.burners.light': 'à allumer',
  'run.burners.warm-up': 'chauffe',
  'run.burners.hold': 'rouge, sans interruption',
  'run.burners.off': 'à éteindre',
  'run.burners.press': ({ burner, action }, f) => `${burner} : ${f.say(action)}`,
  'run.kettles': 'Bouilloires en chauffe',
  'run.kettles.to-switch-on': 'à allumer',
  'run.kettles.should-boil': 'devrait bouillir',
};
