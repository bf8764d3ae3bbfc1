import type { cooling as english } from '../../english/run/cooling.ts';
import type { TranslationOf } from '../../model/translation.ts';

/**
 * Somebody is burned: what to do, one thing a sentence, in order. Sources: ANZCOR
 * Guideline 9.1.3 and others, in shared/sources/safety.json (burn-first-aid).
 */
export const cooling: TranslationOf<typeof english> = {
  'cautions.fault.burned.line-1':
    'Passez aussitôt la brûlure sous l’eau fraîche courante, pendant 20 minutes.',
  'cautions.fault.burned.line-2':
    'Ôtez bagues, montres et vêtements mouillés ; laissez ce qui colle.',
  'cautions.fault.burned.line-3': 'Ne mettez rien dessus : ni glace, ni beurre, ni crème.',
  'cautions.fault.burned.line-4': 'Gardez le reste du corps au chaud et au sec.',
  'cautions.fault.burned.line-5':
    'Après 20 minutes, posez dessus sans serrer du film alimentaire ou un linge propre ; n’enroulez pas.',

  'run.cooling.title': 'Refroidissez la brûlure',
  'run.cooling.title-over': 'Couvrez maintenant la brûlure',
  'run.cooling.since': ({ when }, f) => `Sous l’eau depuis ${f.say(when)}`,
  'run.cooling.call': ({ number }) => `Appelez tout de suite le ${number} si :`,
  'run.cooling.call-local': 'Appelez tout de suite le numéro d’urgence local si :',
  'run.cooling.doctor': ({ number }) => `Faut-il un médecin ? Appelez le ${number} si :`,
  'run.cooling.doctor-local': 'Faut-il un médecin ? Appelez le numéro d’urgence local si :',
  'run.cooling.call.where':
    'elle touche le visage, une main, une articulation ou les parties génitales',
  'run.cooling.call.large': 'elle est plus grande que la paume de la personne brûlée',
  'run.cooling.call.age': 'un enfant ou une personne âgée est brûlé',
  'run.cooling.call.deep': 'la peau est blanche, noire ou carbonisée',
  'run.cooling.call.cause':
    'l’électricité (coupez-la d’abord) ou un produit chimique en est la cause',
  'run.cooling.call.breath': 'la respiration est difficile, ou de la fumée a été inhalée',
  'run.cooling.go-on': 'Continuez à refroidir pendant l’appel et l’attente.',
  'run.cooling.may-be-over':
    'La tablette n’a pas vu tout ce temps. Si 20 minutes sous l’eau courante ont passé, dites-le.',
  'run.cooling.cooled': 'Refroidie 20 minutes, et couverte',
  'run.cooling.early': 'Arrêter le minuteur avant l’heure',
  'run.cooling.otherwise': 'Cela s’est terminé autrement',
  'run.cooling.early.why': 'Pourquoi le minuteur s’arrête-t-il ? C’est noté au rapport.',
  'run.cooling.taken-over': 'Un médecin ou une ambulance a pris le relais',
  'run.cooling.mistake': 'Lancé par erreur : personne n’est brûlé',
  'run.cooling.keep': 'Continuer à refroidir',
};
