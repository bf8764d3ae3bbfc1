import type { TranslationOf } from '../../model/translation.ts';
import type { told as english } from '../../english/custom/told.ts';

/** Names of customs, covers and terms, and how answers and lists of questions are told. */
export const told: TranslationOf<typeof english> = {
  'custom.name.ashkenazic': 'Askenazí',
  'custom.name.sephardic': 'Sefardí',
  'custom.name.own': ({ name, base, rows }, f) =>
    rows === 0
      ? `${name} (${f.say(base)}, sin cambios)`
      : `${name} (${f.say(base)}, con ${f.number(rows)} ${f.plural(rows, { one: 'fila propia', other: 'filas propias' })})`,
  'custom.cover.rack-in-bowls': 'una rejilla en el fondo de cada seno',
  'custom.cover.basin-on-rack': 'un barreño sobre una rejilla',
  'custom.cover.adhesive-paper':
    'papel adhesivo lavable en estantes, lámina de plástico en cajones',
  'custom.cover.shelf-paper': 'papel para estantes o lámina de plástico',
  'custom.cover.liner-with-holes': 'forro con agujeros para estantes, para que pase el aire frío',
  'custom.cover.insert': 'un inserto para la comida, o toda la comida dentro tapada',
  'custom.cover.plastic-sheet': 'lámina de plástico grueso, cortada a medida',
  'custom.cover.heat-proof-liner': 'forro resistente al calor que el fabricante permita',
  'custom.cover.cut-to-size': 'un forro o una cubierta a medida',
  'custom.term.hagalah': 'hagalá',
  'custom.term.hagalah-by-steam': 'hagalá con vapor',
  'custom.term.irui': 'irui',
  'custom.term.libun-gamur': 'libún gamur',
  'custom.term.libun-kal': 'libún kal',
  'custom.term.milui-v-irui': 'milui veirui',
  'custom.sources': ({ sources }, f) => sources.map((source) => f.say(source)).join('; '),
  'custom.state.read': 'leído en el texto',
  'custom.state.inference': 'ningún texto lo dice con esas palabras',
  'custom.state.later-authorities': 'autoridades posteriores, no leídas aquí',
  'custom.state.common-practice': 'tal como se hace',
  'custom.state.memory': 'citado de memoria, sin comprobar todavía',
  'custom.state.said': 'dicho a este hogar',
  'custom.rest.ask': '¿Debe reposar 24 horas antes de un calor que quema lo absorbido?',
  'custom.rest.why':
    'El agua se volvería a absorber; el fuego consume y no extrae nada (deducido de Siftei Kohen, Yoré Deá 121:17). Sin el reposo el plan puede ser un día más corto.',
  'custom.rest.until-then': 'Déjelo reposar antes 24 horas.',
  'custom.rest.answer-1': 'Dejarlo reposar 24 horas.',
  'custom.rest.answer-2': 'No hace falta reposo antes de ese calor.',
  'custom.reasons': ({ row, rule }, f) => `${f.say(row)} ${f.say(rule)}`,
  'custom.said-by': ({ saidBy, saidOn }) => `${saidBy}, ${saidOn}`,
  'custom.own-row.said-by': ({ custom, saidBy, saidOn }) =>
    `una fila de nuestra propia costumbre “${custom}”: ${saidBy}, ${saidOn}`,
  'custom.said.reason': 'Así se dijo para este elemento, en lugar de la fila de la costumbre.',
  'custom.said.would-change': 'Lo cambia otra respuesta a la misma pregunta.',
  'custom.own-row.would-change': 'Para cambiarlo, retire esta fila de su propia costumbre.',
  'custom.own-row.burners': ({ burners, why }, f) =>
    `Quemadores del tipo ${burners.map((burner) => f.say(burner)).join(', ')}, según su propia costumbre: ${why}`,

  'custom.inside-passover.reason':
    'Es Pésaj: no se kasheriza nada con agua hasta que termine. Se limpia, y después se cubre o se cierra.',
  'custom.inside-passover.would-change': 'Kasherícelo antes de Pésaj, o después.',
  'custom.inside-passover.ask':
    'Ha reposado 24 horas: ¿se puede kasherizar con agua dentro de Pésaj?',
  'custom.inside-passover.why':
    'Rema 452:1 no deja kasherizar nada con agua en Pésaj. Algunas autoridades posteriores lo permiten tras un reposo de 24 horas.',
  'custom.inside-passover.until-then': 'Hasta entonces queda cubierto o cerrado.',
  'custom.pour-order.ask':
    '¿En qué orden se vierte en el fregadero: caño, borde, paredes, fondo, o primero el fondo y después hacia arriba?',
  'custom.pour-order.why':
    'Quienes lo hacen difieren. De arriba abajo nada corre sobre un lugar ya hecho; pero lo que baja llega enfriado al fondo, antes que su propio chorro.',
  'custom.pour-order.until-then':
    'De arriba abajo, con el desagüe abierto, secando paredes y fondo antes de que les llegue el chorro.',
  'custom.pour-order.down': 'De arriba abajo: caño, borde, paredes, fondo.',
  'custom.pour-order.upwards': 'Primero el fondo, después hacia arriba: paredes, borde, caño.',
  'custom.questions.title': ({ kitchen }) => `Preguntas para nuestro rabino: ${kitchen}`,
  'custom.questions.custom': ({ custom }, f) => `Costumbre: ${f.say(custom)}`,
  'custom.questions.standing':
    'Las costumbres difieren. El plan sigue la costumbre que elegimos; las respuestas de abajo la reemplazan.',
  'custom.questions.to-ask': 'Por preguntar',
  'custom.questions.to-look': 'Lo miramos nosotros',
  'custom.questions.answered': 'Respondido',
  'custom.questions.numbered': ({ number, fixture, ask }, f) =>
    `${f.number(number)}. ${fixture}: ${f.say(ask)}`,
  'custom.questions.until-then': ({ untilThen }, f) =>
    `Hasta que haya respuesta: ${f.say(untilThen)}`,
  'custom.questions.answer-line': 'Respuesta: ______________________________',
  'custom.questions.said-line': 'Lo dijo: ________________  fecha: ________',
  'custom.questions.look': ({ fixture, ask }, f) => `- ${fixture}: ${f.say(ask)}`,
  'custom.questions.answered-line': ({ fixture, ask, answer, saidBy, saidOn }, f) =>
    `- ${fixture}: ${f.say(ask)} ${answer} (${saidBy}, ${saidOn})`,
};
