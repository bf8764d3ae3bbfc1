import type { TranslationOf } from '../../model/translation.ts';
import type { cooling as english } from '../../english/run/cooling.ts';

/**
 * Somebody is burned: what to do, one thing a sentence, in order. Sources: ANZCOR
 * Guideline 9.1.3 and others, in shared/sources/safety.json (burn-first-aid).
 */
export const cooling: TranslationOf<typeof english> = {
  'cautions.fault.burned.line-1':
    'Ponga la quemadura bajo agua fresca corriente, enseguida y durante 20 minutos.',
  'cautions.fault.burned.line-2': 'Quite anillos, relojes y ropa mojada; deje lo que esté pegado.',
  'cautions.fault.burned.line-3': 'No le ponga nada: ni hielo, ni mantequilla, ni crema.',
  'cautions.fault.burned.line-4': 'Mantenga el resto del cuerpo abrigado y seco.',
  'cautions.fault.burned.line-5':
    'A los 20 minutos, ponga encima, suelto, film transparente de cocina o un paño limpio; no lo enrolle.',

  'run.cooling.title': 'Enfríe la quemadura',
  'run.cooling.title-over': 'Ahora cubra la quemadura',
  'run.cooling.since': ({ when }, f) => `Bajo el agua desde ${f.say(when)}`,
  'run.cooling.call': ({ number }) => `Llame ya al ${number} si:`,
  'run.cooling.call-local': 'Llame ya al número local de emergencias si:',
  'run.cooling.doctor': ({ number }) => `¿Hace falta un médico? Llame al ${number} si:`,
  'run.cooling.doctor-local': '¿Hace falta un médico? Llame al número local de emergencias si:',
  'run.cooling.call.where': 'está en la cara, una mano, una articulación o los genitales',
  'run.cooling.call.large': 'es más grande que la palma de la persona quemada',
  'run.cooling.call.age': 'se ha quemado un niño o una persona mayor',
  'run.cooling.call.deep': 'la piel está blanca, negra o carbonizada',
  'run.cooling.call.cause': 'la causó la electricidad (córtela antes) o un producto químico',
  'run.cooling.call.breath': 'cuesta respirar, o se respiró humo',
  'run.cooling.go-on': 'Siga enfriando mientras llama y espera.',
  'run.cooling.may-be-over':
    'La tableta no vio todo este tiempo. Si pasaron 20 minutos bajo agua corriente, dígalo.',
  'run.cooling.cooled': 'Enfriada durante 20 minutos, y cubierta',
  'run.cooling.early': 'Terminar antes el reloj',
  'run.cooling.otherwise': 'Terminó de otra manera',
  'run.cooling.early.why': '¿Por qué termina el reloj? Queda en el registro.',
  'run.cooling.taken-over': 'Un médico o una ambulancia se hizo cargo',
  'run.cooling.mistake': 'Empezó por error: nadie se ha quemado',
  'run.cooling.keep': 'Seguir enfriando',
};
