import type { TranslationOf } from '../../model/translation.ts';
import type { shell as english } from '../../english/shell/shell.ts';

/** The frame of the app: pages, banners, what the device refuses, files. */
export const shell: TranslationOf<typeof english> = {
  'shell.title': 'Glowpour',
  'shell.pages': 'Páginas',
  'shell.page.kitchen': 'Cocina',
  'shell.page.plan': 'Plan',
  'shell.page.run': 'Trabajo',
  'shell.page.record': 'Registro',
  'shell.theme.night': 'Colores de noche',
  'shell.theme.day': 'Colores de día',

  'shell.reading': 'Leyendo lo que se guarda aquí…',
  'shell.save-run': 'Guardar el trabajo en un archivo',

  'shell.other-lead': 'Otra página de esta tableta dirige el trabajo.',
  'shell.other-lead.took-over': 'Otra página se hizo cargo de este trabajo.',
  'shell.other-lead.beating': 'Ella dirige, anota y suena; esta página solo muestra el trabajo.',
  'shell.other-lead.unsure':
    'Hace un momento que no responde; esta página solo muestra el trabajo, y suena cuando algo vence.',
  'shell.other-lead.silent':
    'Ya no responde. Esta página suena cuando algo vence; puede hacerse cargo del trabajo.',
  'shell.other-lead.arm': 'Toque para activar el sonido',
  'shell.other-lead.lead': 'Dirigir desde aquí',
  'shell.other-lead.only-shows':
    'Otra página dirige el trabajo; esta solo lo muestra. Primero diríjalo desde aquí.',

  'shell.trouble.storage': 'No se guardó.',
  'shell.trouble.read-only': 'Solo lectura.',
  'shell.trouble.taken-over': 'Solo lectura.',
  'shell.trouble.unreadable':
    'Lo guardado no se puede leer ahora. Esta aplicación no ha borrado nada.',
  'shell.broken': 'Falló esta parte de la pantalla. Los relojes y las alarmas siguen.',
  'shell.broken.note': ({ part, why }) =>
    `La pantalla no pudo mostrar una de sus partes (${part}): ${why}`,
  'shell.failed.note': ({ why }) => `Algo falló en la aplicación: ${why}`,
  'shell.broken.again': 'Mostrarla de nuevo',
  'shell.trouble.failed': 'Algo falló en la aplicación.',
  'shell.taken-over': 'Otra página se hizo cargo de este trabajo. Esta solo lo muestra.',

  'shell.storage.full':
    'El dispositivo no tiene más espacio: libere un poco o guarde el trabajo en un archivo.',
  'shell.storage.refused':
    'El navegador no deja que esta página guarde nada: salga del modo privado o actualícelo.',
  'shell.storage.blocked':
    'Otra pestaña tiene abierta una base de datos anterior: ciérrela y vuelva a cargar la página.',
  'shell.storage.held':
    'Otra página de esta aplicación se quedó parada mientras escribía, y no se puede leer ni escribir nada: cierre esa página, o todo el navegador, y vuelva a intentarlo.',
  'shell.storage.timeout':
    'El dispositivo no respondió a tiempo: vuelva a intentarlo o cargue de nuevo la página.',
  'shell.storage.lost':
    'La base de datos se cerró desde fuera: vuelva a intentarlo o cargue de nuevo la página.',
  'shell.storage.gone':
    'El trabajo guardado ya no está: se borraron los datos del navegador. Guárdelo ahora en un archivo.',
  'shell.storage.fenced': 'Ahora otra página escribe el trabajo. Esta solo lo muestra.',
  'shell.storage.out-of-order':
    'Lo que se iba a escribir no sigue a lo guardado: cargue de nuevo la página.',
  'shell.storage.unknown': ({ why }) =>
    `El dispositivo no pudo leer o escribir lo guardado: vuelva a intentarlo o guarde el trabajo en un archivo. (${why})`,
  'shell.failed': ({ why }) =>
    `La aplicación falló aquí: vuelva a intentarlo o cargue de nuevo la página. (${why})`,
  'shell.choice-not-kept': ({ why }, f) =>
    `Esta elección vale hasta que se cierre la página; no se pudo guardar. ${f.say(why)}`,
};
