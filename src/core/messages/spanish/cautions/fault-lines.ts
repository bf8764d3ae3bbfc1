import type { TranslationOf } from '../../model/translation.ts';
import type { faultLines as english } from '../../english/cautions/fault-lines.ts';

/** What to do about each fault (shared/fault-policies.json). */
export const faultLines: TranslationOf<typeof english> = {
  'cautions.fault.no-glow.line-1':
    'Oscurezca el lugar y mire otra vez: en una cocina clara el rojo se ve tarde.',
  'cautions.fault.no-glow.line-2':
    'En una placa de vidrio la zona se enciende y se apaga sola: es normal, espere.',
  'cautions.fault.no-glow.line-3':
    'Compruebe que está al máximo y enchufado, y que hay gas suficiente.',
  'cautions.fault.no-glow.line-4':
    'Una espiral que detecta la olla, un disco con punto rojo o un aparato con poca tensión pueden no enrojecer nunca sin olla. No es una avería.',
  'cautions.fault.no-glow.line-5':
    'Si sigue sin color, apáguelo y omítalo: no queda kasherizado. Pregunte cómo se kasheriza; hasta la respuesta no se usa.',
  'cautions.fault.flame-out.line-1': 'Cierre la perilla.',
  'cautions.fault.flame-out.line-2': 'Ventile cinco minutos antes de volver a encender.',
  'cautions.fault.flame-out.line-3': 'Vuelva a encender: el tiempo empieza de nuevo.',
  'cautions.fault.power-cut.line-1':
    'Apague todos los interruptores y perillas, para que nada se encienda solo.',
  'cautions.fault.power-cut.line-2':
    'Cuando vuelva la corriente, empiece de nuevo cada tiempo interrumpido.',
  'cautions.fault.smoke.line-1':
    'Apague lo que echa humo. Si es un horno, mantenga la puerta cerrada.',
  'cautions.fault.smoke.line-2': 'Campana en marcha, ventanas abiertas, y salga del humo.',
  'cautions.fault.smoke.line-3': 'Si no disminuye, todos fuera y llame a los bomberos.',
  'cautions.fault.fire.line-1':
    'Horno: mantenga la puerta cerrada y apáguelo. Sartén o quemador: apáguelo y póngale una tapa. Nunca agua sobre grasa.',
  'cautions.fault.fire.line-2': 'Todos fuera y llame a los bomberos si no se apaga enseguida.',
  'cautions.fault.co-alarm.line-1': 'Apague el calor.',
  'cautions.fault.co-alarm.line-2': 'Todos fuera, al aire libre, y llame al número de emergencias.',
  'cautions.fault.co-alarm.line-3': 'Vuelva solo cuando lo digan los servicios de emergencia.',
  'cautions.fault.gas-smell.line-1': 'Ni llama, ni interruptor, ni teléfono dentro.',
  'cautions.fault.gas-smell.line-2':
    'Cierre la llave del gas si está a mano, todos fuera, y llame desde fuera.',
  'cautions.fault.unwell.line-1': 'Apague el calor.',
  'cautions.fault.unwell.line-2': 'Primero ayude: aire fresco, que se siente o se acueste.',
  'cautions.fault.unwell.line-3':
    'Llame al número de emergencias si es grave o no se pasa enseguida.',
  'cautions.fault.kettle-failed.line-1': 'Desenchúfelo y déjelo cerrado hasta que se enfríe.',
  'cautions.fault.kettle-failed.line-2':
    'Siga con otro hervidor, o hierva de nuevo: el agua que se enfrió no se vierte.',
  'cautions.fault.oven-lock.line-1': 'Espere a que se enfríe: el bloqueo se abre tarde.',
  'cautions.fault.oven-lock.line-2':
    'Corte el interruptor automático un minuto y vuelva a probar. No fuerce la puerta.',
  'cautions.fault.oven-lock.line-3': 'Hágalo reparar, o deje el horno fuera y pregunte.',
  'cautions.fault.breaker-tripped.line-1': 'Apague todo lo de ese circuito.',
  'cautions.fault.breaker-tripped.line-2':
    'Pase un aparato de calor a otro circuito y suba el interruptor una sola vez.',
  'cautions.fault.breaker-tripped.line-3':
    'Si vuelve a saltar, déjelo cortado y llame a un electricista.',
  'cautions.fault.cracked.line-1': 'Deje de verter ahí y apártese.',
  'cautions.fault.cracked.line-2': 'Déjelo enfriar solo, sin agua.',
  'cautions.fault.cracked.line-3':
    'Márquelo, pregunte cómo tratarlo y omita lo que no se pueda hacer.',
  'cautions.fault.undefined.line-1': 'Apague lo que esté caliente.',
  'cautions.fault.undefined.line-2': 'Anote lo que pasó.',
  'cautions.fault.undefined.line-3': 'Continúe cuando esté resuelto.',
};
