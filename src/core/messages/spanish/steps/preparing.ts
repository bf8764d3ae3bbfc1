import type { TranslationOf } from '../../model/translation.ts';
import type { preparing as english } from '../../english/steps/preparing.ts';

/** What is done before anything is cleaned (shared/cleaning.json). */
export const preparing: TranslationOf<typeof english> = {
  'steps.prepare.say': 'Hecho',
  'steps.prepare.ask.title': 'Haga las preguntas abiertas y anote las respuestas.',
  'steps.prepare.ask.line-1': 'La lista de preguntas forma parte de este plan.',
  'steps.prepare.ask.line-2':
    'Anote cada respuesta en la cocina: reemplaza la fila de la costumbre.',
  'steps.prepare.gather.title': 'Reúna lo que dice la lista.',
  'steps.prepare.gather.line-1':
    'Lea los manuales del horno, de la placa y del hervidor, y del fabricante de la encimera.',
  'steps.prepare.gather.line-2':
    'Tenga el extintor, los guantes y las jarras de agua fría donde vaya a trabajar.',
  'steps.prepare.alarms.title': 'Pruebe la alarma de humo y la alarma de CO.',
  'steps.prepare.alarms.line-1': 'Pulse el botón de prueba de cada una.',
  'steps.prepare.alarms.line-2': 'Campana al máximo: ¿atrae una tira de papel?',
  'steps.prepare.alarms.line-3': 'Abra la ventana una vez.',
  'steps.prepare.clear.title': 'Saque de la cocina la comida, la vajilla y todo lo que se mueva.',
  'steps.prepare.clear.line-1': 'Lo limpio va sobre una toalla en otro sitio.',
  'steps.prepare.clear.line-2': 'Desenchufe los aparatos pequeños.',
  'steps.prepare.clear.line-3': 'Anote el último uso en caliente de cada elemento.',
};
