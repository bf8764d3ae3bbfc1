import type { frame as english } from '../../english/kitchen/frame.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** The frame round the pages beside a run: banners, what is worked out, pages with nothing on them yet. */
export const frame: TranslationOf<typeof english> = {
  'shell.open-run': 'Hay un trabajo abierto; sus relojes siguen.',
  'shell.open-run.back': 'Volver al trabajo',
  'shell.update': 'Hay una versión más nueva.',
  'shell.update.take': 'Usarla ahora',
  'shell.lost-run': ({ name, when }, f) =>
    `El trabajo “${name}” (${f.say(when)}) ya no está en este navegador.`,
  'shell.lost-run.about':
    'El navegador borró lo que guardaba para esta aplicación. Si guardó el trabajo en un archivo, ábralo en Registro. Si no, anote ahora qué se hizo y cuándo empezó cada reposo.',
  'shell.lost-run.dismiss': 'Ya lo he leído',
  'shell.working': 'Calculando el plan…',
  'shell.working.here': 'La página puede quedarse quieta un momento.',
  'shell.no-page.kitchen': 'Todavía no hay cocina',
  'shell.no-page.kitchen.about': 'Elija primero una cocina; su plan se calcula enseguida.',
  'shell.no-page.kitchen.go': 'Ir a la cocina',
  'shell.no-page.run': 'Todavía no hay trabajo',
  'shell.no-page.run.about': 'Un trabajo se inicia desde el plan de una cocina.',
  'shell.no-page.run.go': 'Ir al plan',
};
