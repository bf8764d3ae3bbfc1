import type { faults as english } from '../../english/cautions/faults.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What can go wrong, and what to do (shared/fault-policies.json). */
export const faults: TranslationOf<typeof english> = {
  'cautions.fault.burned.name': 'Quelqu’un est brûlé',
  'cautions.fault.no-glow.name': 'Il ne rougit pas',
  'cautions.fault.flame-out.name': 'La flamme s’est éteinte',
  'cautions.fault.power-cut.name': 'Panne de courant',
  'cautions.fault.smoke.name': 'Fumée',
  'cautions.fault.fire.name': 'Feu',
  'cautions.fault.co-alarm.name': 'Le détecteur de CO sonne',
  'cautions.fault.gas-smell.name': 'Odeur de gaz',
  'cautions.fault.unwell.name': 'Quelqu’un est blessé ou se sent mal',
  'cautions.fault.kettle-failed.name': 'La bouilloire est en panne',
  'cautions.fault.oven-lock.name': 'La porte du four reste verrouillée',
  'cautions.fault.breaker-tripped.name': 'Un disjoncteur a sauté',
  'cautions.fault.cracked.name': 'Quelque chose s’est fendu',
  'cautions.fault.undefined.name': 'Autre chose',
};
