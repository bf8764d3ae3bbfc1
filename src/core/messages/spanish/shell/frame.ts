import type { TranslationOf } from '../../model/translation.ts';
import type { frame as english } from '../../english/shell/frame.ts';

/** Round the pages, where no run is open: what is told above them, and what stands in their place. */
export const frame: TranslationOf<typeof english> = {
  'shell.open-run': 'Hay un trabajo abierto; sus relojes siguen.',
  'shell.open-run.back': 'Volver al trabajo',
  'shell.update': 'Hay una versión más nueva.',
  'shell.update.take': 'Usarla ahora',
  'shell.update.run-open':
    'Hay un trabajo abierto en esta tableta. La versión más nueva se podrá usar cuando esté cerrado.',
  'shell.lost-run': ({ name, when }, f) =>
    `El trabajo “${name}” (${f.say(when)}) ya no está en este navegador.`,
  'shell.lost-run.about':
    'El navegador borró lo que guardaba para esta aplicación. Si guardó el trabajo en un archivo, ábralo en Registro. Si no, anote ahora qué se hizo y cuándo empezó cada reposo.',
  'shell.lost-run.dismiss': 'Ya lo he leído',
  'shell.put-aside.about':
    'Este trabajo no puede seguir aquí. Guárdelo primero en un archivo. Si lo aparta, cuenta como terminado por un fallo: lo escrito queda tal cual, en Registro, y se puede empezar un trabajo nuevo.',
  'shell.put-aside.hot':
    'Apague a mano todo lo que esté caliente: fuegos, horno, hervidores. Aquí no se acepta ninguna pulsación, ni siquiera Parar; una vez apartado, nada dice qué está caliente y ningún reloj avisa.',
  'shell.put-aside': 'Apartar este trabajo',
  'shell.put-aside.sure': '¿Apartar este trabajo? Ya no se dirigirá desde aquí.',
  'shell.put-aside.keep': 'Dejarlo abierto',
  'shell.put-aside.do': 'Apartarlo',
  'shell.working': 'Calculando el plan…',
  'shell.working.here': 'La página puede quedarse quieta un momento.',
  'shell.no-page.kitchen': 'Todavía no hay cocina',
  'shell.no-page.kitchen.about': 'Elija primero una cocina; su plan se calcula enseguida.',
  'shell.no-page.kitchen.go': 'Ir a la cocina',
  'shell.no-page.run': 'Todavía no hay trabajo',
  'shell.no-page.run.about': 'Un trabajo se inicia desde el plan de una cocina.',
  'shell.no-page.run.go': 'Ir al plan',
};
