import type { page as english } from '../../english/run/page.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Round the step: what the device promises, and what else can be pressed. */
export const page: TranslationOf<typeof english> = {
  'run.light.sound.armed': 'Son prêt',
  'run.light.sound.touch-to-arm': 'Touchez pour activer le son',
  'run.light.sound.blocked': 'Son bloqué',
  'run.light.sound.unknown': 'Son inconnu',
  'run.light.sound.elsewhere': 'Le son vient de l’autre page',
  'run.light.wake.held': 'L’écran reste allumé',
  'run.light.wake.lost': 'L’écran peut s’éteindre',
  'run.light.wake.not-supported': 'Désactivez le verrouillage automatique pendant le travail',
  'run.light.other-lead': 'Une autre page conduit ce chantier',
  'run.arm': 'Touchez pour activer le son',
  'run.arm.region': 'Son',
  'run.arm.about': 'Après un redémarrage, la tablette reste muette jusqu’au premier toucher.',
  'run.arm.calling': ({ timer, state }, f) => `${f.say(timer)}, ${f.say(state)}`,

  'run.side': 'À côté de l’étape',
  'run.pause': 'Pause',
  'run.resume': 'Reprendre',
  'run.ran-out': 'Vide ici',
  'run.happened': 'Il s’est passé quelque chose',
  'run.steps': ({ done, of }) => `Étapes ${done}/${of}`,
  'run.settings': 'Réglages',
  'run.until-when': 'Jusqu’à quand',
  'run.back': 'Retour',
  'run.alarm-failed': ({ timer }, f) =>
    `L’alarme « ${f.say(timer)} » n’a pas pu sonner : surveillez l’écran.`,

  'run.alarm-failed.no-audio': 'Ce navigateur n’a pas d’horloge audio.',
  'run.alarm-failed.no-gesture':
    'Personne n’a touché la page depuis son ouverture : le navigateur interdit le son.',
  'run.alarm-failed.no-sounds': 'Les fichiers de son n’ont pas pu être chargés.',
  'run.alarm-failed.interrupted': 'Un appel ou une autre application occupe le haut-parleur.',
  'run.alarm-failed.suspended': 'L’appareil a arrêté le son.',
  'run.alarm-failed.stuck': 'L’horloge audio est arrêtée.',
  'run.alarm-failed.other': 'Le son n’a pas pu être produit.',
  'run.written-anew':
    'Le journal stocké a été effacé de l’extérieur pendant le chantier. Cette page l’a réécrit en entier, d’après sa mémoire.',
};
