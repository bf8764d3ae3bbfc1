import type { TranslationOf } from '../../model/translation.ts';
import type { files as english } from '../../english/problems/files.ts';

/** Files, imports and kept kitchens that cannot be read: told on the pages beside the run. */
export const files: TranslationOf<typeof english> = {
  'shell.calibration-not-read': ({ why }, f) =>
    `No se pudo leer lo aprendido en trabajos anteriores, así que el plan prescinde de ello. ${f.say(why)}`,
  'shell.kitchens-not-read': ({ why }, f) =>
    `No se pudieron leer las cocinas guardadas aquí. ${f.say(why)}`,

  'shell.unread': 'Todavía no se sabe',
  'shell.unread.about':
    'Puede que aquí se guarde un trabajo: seguirá por sí solo en cuanto se pueda leer. Si esto dura, cierre otras páginas de la aplicación y reinicie el navegador y la tableta. Entretanto se puede planificar una cocina, pero no se guarda nada de ella.',

  'shell.file.too-large': ({ name, bytes, mostBytes }) =>
    `${name} tiene ${bytes} bytes; permitido: hasta ${mostBytes}. Elija un archivo más pequeño.`,
  'shell.file.unreadable': ({ name, why }) =>
    `No se puede leer ${name} (${why}). Elíjalo otra vez.`,
  'shell.import.not-whole': ({ seq, problem }, f) =>
    `No se importó nada: el archivo no está entero en la entrada ${seq}. ${f.say(problem)} Guarde otra vez el trabajo en la otra tableta y elija ese archivo.`,
  'shell.import.no-plan': 'El archivo no empieza con un plan. Elija otro.',
  'shell.import.plan': ({ problem }) =>
    `No es seguro seguir el plan del archivo: ${problem}. Haga el plan de nuevo.`,
  'shell.import.amendment':
    'No se puede leer un cambio del plan en el archivo. Haga el plan de nuevo.',
  'shell.import.records': ({ found, most }, f) =>
    `El archivo tiene ${f.number(found)} entradas; permitido: hasta ${f.number(most)}. Elija un archivo guardado por esta aplicación.`,
  'shell.import.steps': ({ found, most }, f) =>
    `El plan del archivo tiene ${f.number(found)} pasos; permitido: hasta ${f.number(most)}. Haga el plan de nuevo.`,
  'shell.import.more': ({ more }, f) =>
    `El plan del archivo tiene ${f.number(more)} ${f.plural(more, { one: 'fallo más', other: 'fallos más' })} de esta clase.`,
  'shell.import.stranger': ({ seq, name }) =>
    `La entrada ${seq} del archivo habla de “${name}”, que su trabajo no tiene. Guarde otra vez el trabajo en la otra tableta y elija ese archivo.`,
  'shell.import.open-run': ({ open }) =>
    `El trabajo del archivo no está cerrado, y aquí está abierto el trabajo “${open}”; permitido: un solo trabajo abierto. Ciérrelo primero y después importe el archivo.`,
  'shell.kitchen.both-kept': ({ name, copy }) =>
    `“${name}” se cambió entretanto en otra página; eso queda así. Lo cambiado aquí se guarda como “${copy}”.`,
  'shell.recheck.run-open':
    'Hay un trabajo abierto. Dígalo allí, con “Pasó algo”, o ciérrelo primero.',
  'shell.plan.beyond-models': ({ why }) => `No se puede hacer ningún plan: ${why}`,
};
