import type { TranslationOf } from '../../model/translation.ts';
import type { runEnds as english } from '../../english/run/ends.ts';

/** Before a run and after it; a run in progress needs none of it. */
export const runEnds: TranslationOf<typeof english> = {
  'run.start.title': 'Listo para empezar',
  'run.start.about': ({ steps, lengthS }, f) =>
    `${f.number(steps)} ${f.plural(steps, { one: 'paso', other: 'pasos' })} en ${f.duration(lengthS)}. Pare y vuelva cuando lo necesite: los relojes siguen y no se pierde nada.`,
  'run.start.kept.kept': 'Lo anotado queda en esta tableta hasta que usted lo borre.',
  'run.start.kept.may-be-deleted':
    'Este navegador puede borrar lo guardado si falta espacio o la aplicación no se usa en días: añádala a la pantalla de inicio, y al terminar guarde el trabajo en un archivo.',
  'run.start.kept.not-supported':
    'Este navegador no promete conservar lo guardado: guarde el trabajo en un archivo.',
  'run.start.kept.unknown':
    'El navegador no ha dicho si conserva lo guardado: guarde el trabajo en un archivo.',
  'run.kept.title': 'Lo que este navegador puede borrar',
  'run.kept.room':
    'Si falta espacio en el dispositivo, un navegador puede borrar todo lo que guardó esta aplicación, de golpe y sin preguntar.',
  'run.kept.safari':
    'Safari lo borra si esta página no se usó en siete días, salvo que la aplicación esté en la pantalla de inicio.',
  'run.kept.private': 'Lo hecho en una ventana privada desaparece al cerrar la ventana.',
  'run.kept.cleared': 'Quien borra los datos del navegador lo borra también.',
  'run.kept.do':
    'Por eso: añada la aplicación a la pantalla de inicio y guarde todo en un archivo en Registro, antes y después de un trabajo.',
  'run.start.awake':
    'La tableta no puede despertarse sola: téngala enchufada, con esta página abierta y la pantalla encendida.',
  'run.start.standing':
    'Siga los manuales de los fabricantes y las normas locales; gas, electricidad y fontanería (plomería) son para profesionales autorizados. La aplicación no dicta normas religiosas ni garantiza la seguridad. En caso de necesidad, llame al número local de emergencias.',
  'run.start.hearing': 'Prueba de oído',
  'run.start.hearing.ask': '¿Oye la alarma desde donde va a trabajar?',
  'run.start.hearing.play': 'Hacer sonar la alarma',
  'run.start.hearing.again': 'Hacerla sonar de nuevo',
  'run.start.hearing.heard': 'La he oído',
  'run.start.hearing.done': 'Oída.',
  'run.start.hearing.blocked':
    'El navegador bloqueó el sonido. Suba el volumen, quite el modo silencio y hágala sonar de nuevo.',
  'run.start.hearing.ready-now': 'Ahora el sonido está listo: hágala sonar de nuevo.',
  'run.start.hearing.deaf': 'No la oigo; miraré la pantalla (queda en el registro)',
  'run.start.hearing.deaf-note':
    'Empezado sin oír el sonido: los avisos se vigilan en la pantalla.',
  'run.start.first': 'Primero',
  'run.start.now': ({ wallMs, zone }, f) => `Ahora es ${f.moment(wallMs, zone)}`,
  'run.start.press': 'Iniciar',
  'run.start.hear-first': 'Oiga primero la alarma',

  'run.closed.completed': 'Hecho',
  'run.closed.failed': 'Terminado por un fallo',
  'run.closed.stopped': 'Parado',
  'run.closed.all-done': ({ of }, f) => `Se hicieron ${f.number(of)} de ${f.number(of)} pasos.`,
  'run.closed.some-done': ({ done, undone, of }, f) =>
    `Se hicieron ${f.number(done)} de ${f.number(of)} pasos; sin hacer: ${f.number(undone)}.`,
  'run.closed.mark': 'Marque ahora los lugares tratados, para que nadie los use por error.',
  'run.closed.record': 'Ver el registro',
};
