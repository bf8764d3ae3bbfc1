import type { TranslationOf } from '../../model/translation.ts';
import type { stop as english } from '../../english/run/stop.ts';

/** What makes safe, and the clock of a burn: here from the first moment of a run. */
export const stop: TranslationOf<typeof english> = {
  'run.stop': 'Parar y asegurar',
  'run.stop.dialog': 'Parar y dejar todo seguro',
  'run.stop.nothing-hot': 'Ahora no hay nada caliente en el plan.',
  'run.stop.first': 'Haga esto primero, toque lo que toque:',
  'run.stop.danger':
    'Fuego, gas o una persona herida: salga y llame al número local de emergencias. La aplicación puede esperar.',
  'run.cooling': 'Alguien se ha quemado',
  'run.cooling.run': 'Mantenga el agua fresca corriendo sobre la quemadura',
  'run.cooling.over': 'Han pasado 20 minutos: ahora cúbrala',
  'run.cooling.steps': 'Qué hacer',
  'run.stop.press': 'Parar el trabajo ahora',
  'run.stop.lead': 'Dirigir el trabajo aquí para pararlo',
  'run.stop.keep-going': 'Seguir',
  'run.stop.reason': 'Lo paró la persona: dejar todo seguro.',
};
