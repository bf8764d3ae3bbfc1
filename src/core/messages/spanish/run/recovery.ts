import type { TranslationOf } from '../../model/translation.ts';
import type { recovery as english } from '../../english/run/recovery.ts';

/** On a fault, and while something is made safe. */
export const recovery: TranslationOf<typeof english> = {
  'run.clock.withdraw': 'La respuesta sobre el reloj era incorrecta',

  'run.suspended': 'Fallo',
  'run.suspended.stopped': 'Parado',
  'run.suspended.meanwhile': 'Mientras tanto, para otra persona',
  'run.suspended.go-on':
    'El calor y los relojes siguen mientras tanto: quédese al lado. Solo si lo termina aquí, déjelo seguro:',
  'run.suspended.clear': 'Está resuelto',

  'run.closing': 'Dejar seguro',
  'run.closing.title': 'Deje esto seguro y después dígalo',
  'run.make-safe.done': 'seguro',
  'run.make-safe.press': 'Está seguro',

  'run.rest-day.look-in': 'Ver cómo va el trabajo',
};
