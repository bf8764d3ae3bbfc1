import type { TranslationOf } from '../../../model/translation.ts';
import type { dialogs as english } from '../../../english/run/sheets/dialogs.ts';

/** What lies over the run while a person answers, looks up, or tells something. */
export const dialogs: TranslationOf<typeof english> = {
  'run.prepare.list': 'La lista',
  'run.prepare.item': ({ name, amount }, f) => `${f.say(name)}: ${f.say(amount)}`,

  'run.glance.open': 'La cocina, en grande',
  'run.glance.hot': ({ names }, f) => `Caliente: ${names.map((one) => f.say(one)).join(', ')}`,
  'run.glance.nothing-hot': 'No hay nada caliente',
  'run.glance.rests-one': ({ name, until }, f) => `${f.say(name)}: en reposo hasta ${f.say(until)}`,
  'run.glance.rests': ({ count, until }, f) => `${f.number(count)} en reposo hasta ${f.say(until)}`,
  'run.glance.next': ({ step, from }, f) => `Después, ${f.say(from)}: ${f.say(step)}`,
  'run.glance.next-now': ({ step }, f) => `Después: ${f.say(step)}`,
  'run.glance.here': 'aquí',
  'run.glance.then': 'después',

  'run.fault.first': ({ fault }, f) => `${f.say(fault)}: haga esto primero`,
  'run.fault.oven-shut': 'Mantenga cerrada la puerta del horno: el aire aviva el fuego.',
  'run.fault.policy.stop-run':
    'Al avisar se para el trabajo y se le guía para dejarlo todo seguro.',
  'run.fault.policy.suspend':
    'Al avisar se detiene el trabajo hasta que usted diga que está resuelto.',
  'run.fault.policy.note': 'Al avisar queda anotado; el trabajo sigue.',
  'run.fault.tell': ({ fault }, f) => `Avisar: ${f.say(fault)}`,
  'run.fault.well': 'Todo va bien',

  'run.happened.danger': 'Alguien está en peligro',
  'run.happened.burned.about': 'Empiezan enseguida 20 minutos de enfriamiento',
  'run.happened.here': 'En este paso',
  'run.happened.other': 'Otra cosa',
  'run.happened.used': 'Se usó o se tocó un elemento',
  'run.happened.broke-off': ({ step }, f) => `Al final no siguió: ${f.say(step)}`,
  'run.happened.skip': 'Omitir este paso',
  'run.happened.note': 'Escribir una nota',
  'run.happened.what': '¿Qué pasó?',
  'run.happened.words-first': 'Escríbalo primero en el campo: el registro lo guarda.',
  'run.happened.skip.why': '¿Por qué se omite este paso? Queda en el registro.',
  'run.happened.skip.press': 'Omitirlo',
  'run.happened.note.press': 'Guardar la nota',

  'run.used.which': '¿Cuál? Tóquelo en el dibujo, o toque su nombre.',
  'run.used.words': 'Con sus palabras, si quiere: el registro las guarda',
  'run.used.press': ({ name }, f) => `Avisar: usado – ${f.say(name)}`,
  'run.used.will-rest': ({ name, ready }, f) =>
    `${f.say(name)}: su reposo empezará de nuevo; a punto ${f.say(ready)}.`,
  'run.used.rests': ({ name, ready }, f) =>
    `${f.say(name)}: de nuevo en reposo; a punto ${f.say(ready)}.`,
  'run.used.not-begun': ({ name }, f) =>
    `${f.say(name)}: su reposo aún no ha empezado, así que no se pierde nada. Queda anotado.`,
  'run.used.no-rest': ({ name }, f) =>
    `${f.say(name)}: no tiene reposo; el registro guarda que se usó.`,
  'run.used.put-away': ({ name }, f) =>
    `${f.say(name)}: el plan no lo kasheriza. El trabajo se detiene hasta que haya otro en su lugar, o se diga que sirve.`,
  'run.used.take-back': 'Deshacer: no se usó',
  'run.used.taken-back': ({ name }, f) =>
    `${f.say(name)}: todo queda como antes. El registro guarda lo uno y lo otro.`,
  'run.used.done-again': ({ steps }, f) =>
    f.plural(steps, {
      one: 'Se hace de nuevo 1 paso que estaba hecho.',
      other: `Se hacen de nuevo ${f.number(steps)} pasos que estaban hechos.`,
    }),

  'run.gate.go-past.title': 'Seguir sin ello',
  'run.gate.go-past.why': '¿Por qué sigue sin ello? Queda en el registro.',
  'run.gate.go-past.press': 'Seguir',
  'run.gate.no': 'Entonces esto espera. Atiéndalo primero; cuando sea así, toque sí.',

  'run.ran-out.where': '¿Dónde se acabó el agua?',
  'run.ran-out.one-more': 'Un hervidor más termina estas partes; las siguientes se adelantan.',
  'run.ran-out.back': 'Más atrás',
  'run.ran-out.on': 'Más adelante',
  'run.ran-out.share': ({ percent }, f) => `${f.number(percent)} % de la franja de este hervidor`,
  'run.ran-out.about':
    'Lo que queda se reparte de nuevo según hasta dónde llegó este hervidor. Primero, como siempre, agua fría sobre lo vertido.',
  'run.ran-out.press': 'Se acabó aquí',

  'run.all-steps': 'Todos los pasos',
  'run.all-steps.show': 'Mostrar',
  'run.all-steps.blocked': ({ state, why }, f) => `${f.say(state)}: ${f.say(why)}`,
  'run.step-state.waiting': 'espera',
  'run.step-state.ready': 'puede empezar',
  'run.step-state.active': 'en curso',
  'run.step-state.checking': 'falta su respuesta',
  'run.step-state.stalled': 'atascado',
  'run.step-state.unwinding': 'dejándolo seguro',
  'run.step-state.settled': 'terminado',
  'run.outcome.done': 'hecho',
  'run.outcome.skipped': 'omitido',
  'run.outcome.failed': 'fallido',
  'run.outcome.stopped': 'parado',
  'run.outcome.not-run': 'sin hacer',

  'run.choices.title': 'Pedal, voz y sonidos',
  'run.choices.pedalActs': 'El pedal pulsa la acción principal',
  'run.choices.pedalActs.about':
    'Avance de página o flecha derecha; si no, pasa al paso siguiente. Un pedal nunca responde una pregunta que protege un paso.',
  'run.choices.spoken': 'Los avisos se dicen en voz alta',
  'run.choices.spoken.about': 'Con una voz de este dispositivo; no se envía nada.',
  'run.choices.soonSounds': 'Sonido de “más o menos ahora”',
  'run.choices.soonSounds.about':
    'Hervidores que deberían hervir, quemadores que deberían estar al rojo.',
  'run.choices.doneSounds': 'Sonido de una espera terminada',
  'run.choices.doneSounds.about': 'Reposos, enfriamientos, ciclos.',
  'run.settings.version': ({ version }) => `Versión de la aplicación: ${version}`,
  'run.choices.always': 'Lo que se debe responder y lo que es un peligro suena siempre.',
  'run.choices.say-again': 'Repetir el último aviso',
  'run.choices.language': 'Idioma',
  'run.choices.voice.asking': 'Buscando una voz…',
  'run.choices.voice.ready': 'Habla una voz de este dispositivo.',
  'run.choices.voice.no-voice':
    'Este dispositivo no tiene una voz en español que funcione sin red: no se dice nada. Se puede añadir una en los ajustes de voz del dispositivo.',
  'run.choices.voice.failed': ({ why }) =>
    `No se pudo iniciar la voz: no se dice nada. Cargue de nuevo la página cuando no haya nada caliente. (${why})`,
  'run.keys': 'Teclas',
  'run.keys.main': 'Espacio, Intro',
  'run.keys.main.does': 'acción principal',
  'run.keys.forward': 'Avance de página, flecha derecha',
  'run.keys.forward.does': 'paso siguiente (o acción principal, según lo elegido arriba)',
  'run.keys.back': 'Retroceso de página, flecha izquierda',
  'run.keys.back.does': 'paso anterior',
  'run.keys.tab': 'Tabulador y después Intro',
  'run.keys.tab.does': 'todos los demás botones y las preguntas que protegen un paso',
  'run.keys.stop': 'S, o Escape si no hay nada encima',
  'run.keys.stop.does': 'Parar y asegurar',
  'run.keys.repeat': 'R',
  'run.keys.repeat.does': 'repetir el último aviso',
  'run.keys.escape': 'Escape',
  'run.keys.escape.does': 'cerrar lo que está encima',
};
