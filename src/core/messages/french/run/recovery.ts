import type { recovery as english } from '../../english/run/recovery.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** On a fault, and while something is made safe. */
export const recovery: TranslationOf<typeof english> = {
  'run.clock.withdraw': 'La réponse sur l’heure était fausse',

  'run.suspended': 'Incident',
  'run.suspended.stopped': 'Arrêté',
  'run.suspended.meanwhile': 'Entre-temps, pour quelqu’un d’autre',
  'run.suspended.go-on':
    'Chauffe et minuteurs continuent : restez auprès. Seulement si vous y mettez fin ici, mettez en sécurité :',
  'run.suspended.clear': 'C’est réglé',

  'run.closing': 'Mise en sécurité',
  'run.closing.title': 'Mettez ceci en sécurité, puis dites-le',
  'run.make-safe.done': 'en sécurité',
  'run.make-safe.press': 'C’est en sécurité',

  'run.rest-day.look-in': 'Jeter un œil au chantier',
};
