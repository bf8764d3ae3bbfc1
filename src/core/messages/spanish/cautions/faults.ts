import type { TranslationOf } from '../../model/translation.ts';
import type { faults as english } from '../../english/cautions/faults.ts';

/** What can go wrong, and what to do (shared/fault-policies.json). */
export const faults: TranslationOf<typeof english> = {
  'cautions.fault.burned.name': 'Alguien se ha quemado',
  'cautions.fault.no-glow.name': 'No se pone al rojo',
  'cautions.fault.flame-out.name': 'Se apagó la llama',
  'cautions.fault.power-cut.name': 'Se fue la corriente',
  'cautions.fault.smoke.name': 'Humo',
  'cautions.fault.fire.name': 'Fuego',
  'cautions.fault.co-alarm.name': 'Suena la alarma de CO',
  'cautions.fault.gas-smell.name': 'Huele a gas',
  'cautions.fault.unwell.name': 'Alguien está herido o se siente mal',
  'cautions.fault.kettle-failed.name': 'Falló el hervidor',
  'cautions.fault.oven-lock.name': 'La puerta del horno sigue bloqueada',
  'cautions.fault.breaker-tripped.name': 'Saltó un interruptor automático',
  'cautions.fault.cracked.name': 'Algo se agrietó',
  'cautions.fault.undefined.name': 'Otra cosa',
};
