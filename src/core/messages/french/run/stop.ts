import type { stop as english } from '../../english/run/stop.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What makes safe, and the clock of a burn: here from the first moment of a run. */
export const stop: TranslationOf<typeof english> = {
  'run.stop': 'Arrêt – sécurité',
  'run.stop.dialog': 'Arrêter et mettre en sécurité',
  'run.stop.nothing-hot': 'Rien n’est chaud dans le plan en ce moment.',
  'run.stop.first': 'Faites d’abord ceci, quoi que vous pressiez :',
  'run.stop.danger':
    'Feu, gaz ou blessé : sortez et appelez le numéro d’urgence local. L’application peut attendre.',
  'run.cooling': 'Quelqu’un est brûlé',
  'run.cooling.run': 'Laissez l’eau fraîche couler sur la brûlure',
  'run.cooling.over': 'Les 20 minutes sont passées : couvrez-la maintenant',
  'run.cooling.steps': 'Que faire',
  'run.stop.press': 'Arrêter le chantier maintenant',
  'run.stop.lead': 'Prendre la conduite ici, pour l’arrêter',
  'run.stop.keep-going': 'Continuer',
  'run.stop.reason': 'Arrêté par la personne : mettez en sécurité.',
};
