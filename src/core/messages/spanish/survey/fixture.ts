import type { TranslationOf } from '../../model/translation.ts';
import type { fixture as english } from '../../english/survey/fixture.ts';

/** The plan that is shaped by finger, and the sheet of one fixture. */
export const fixture: TranslationOf<typeof english> = {
  'survey.editor.plan':
    'Plano de la cocina. Las flechas mueven lo elegido un centímetro, con Mayúsculas diez; Supr lo quita; Intro va a su hoja.',
  'survey.editor.sized': ({ name, length, depth }, f) =>
    `${name}, ${f.say(length)} por ${f.say(depth)}`,
  'survey.editor.whereabouts': ({ left, front }, f) =>
    `a ${f.say(left)} de la izquierda y a ${f.say(front)} del frente`,
  'survey.editor.look': 'Vista',
  'survey.editor.nearer': 'Más cerca',
  'survey.editor.farther': 'Más lejos',
  'survey.editor.whole-room': 'Todo el local',

  'survey.chosen': '(elegido)',
  'survey.sheet.next': 'Añadir el siguiente',
  'survey.sheet.name': 'Nombre',
  'survey.sheet.belongs': 'Será de',
  'survey.sheet.off-plan': 'Fuera del plano',
  'survey.sheet.onto-plan': 'Al plano',
  'survey.sheet.turn': 'Girar',
  'survey.sheet.copy': 'Copiar',

  'survey.size.length': 'Largo',
  'survey.size.depth': 'Fondo',
  'survey.size.from-left': 'Desde la izquierda',
  'survey.size.from-front': 'Desde el frente',
  'survey.size.corners': ({ count }, f) =>
    `Tiene ${f.number(count)} esquinas: largo y fondo son los del rectángulo que lo encierra.`,

  'survey.shape': 'Forma',
  'survey.shape.walls': '¿Qué bordes dan a una pared?',
  'survey.shape.stand': '¿En qué lados puede ponerse?',
  'survey.shape.stand-at': ({ side, length }, f) => `${f.capital(f.say(side))}, ${f.say(length)}`,
  'survey.shape.edge': ({ side, length }, f) => `${f.say(side)}, ${f.say(length)}`,
  'survey.shape.numbered-edge': ({ from, to, side, length }, f) =>
    `${f.number(from)}–${f.number(to)}, ${f.say(side)}, ${f.say(length)}`,
  'survey.shape.side.far': 'lado de enfrente',
  'survey.shape.side.near': 'lado de acá',
  'survey.shape.side.left': 'lado izquierdo',
  'survey.shape.side.right': 'lado derecho',
  'survey.shape.open': 'Esquinas una por una',
  'survey.shape.close': 'Listo con las esquinas',
  'survey.shape.crosses': 'Entonces el contorno se cruzaría a sí mismo.',
  'survey.shape.corner-left': ({ number }, f) => `${f.number(number)} desde la izquierda`,
  'survey.shape.corner-front': ({ number }, f) => `${f.number(number)} desde el frente`,
  'survey.shape.add-after': 'Añadir detrás',
  'survey.shape.add-after-corner': ({ number }, f) =>
    `Añadir después de la esquina ${f.number(number)}`,
  'survey.shape.take-out-corner': ({ number }, f) => `Quitar la esquina ${f.number(number)}`,
  'survey.shape.backsplash': 'Salpicadero, altura',

  'survey.surface.heading': '¿De qué material es?',
  'survey.surface.another': 'Otro material',
  'survey.surface.fingernail': 'Pase la uña por encima',

  'survey.sink.bowl-length': 'Seno, largo',
  'survey.sink.bowl-width': 'Seno, ancho',
  'survey.sink.bowl-depth': 'Seno, profundidad',
  'survey.sink.bowl-n-length': ({ number }, f) => `Seno ${f.number(number)}, largo`,
  'survey.sink.bowl-n-width': ({ number }, f) => `Seno ${f.number(number)}, ancho`,
  'survey.sink.bowl-n-depth': ({ number }, f) => `Seno ${f.number(number)}, profundidad`,
  'survey.sink.rim': 'Borde',
  'survey.sink.handles': 'Manijas del grifo',
  'survey.sink.sprayer': 'Ducha extraíble',
  'survey.sink.drainboard': 'Escurridor',

  'survey.parts': '¿Cuáles de estos tiene?',
  'survey.fact.varnished': '¿Está la madera barnizada o lacada?',
  'survey.fact.kneaded': '¿Se amasó directamente encima?',
  'survey.fact.hotFood': '¿Se puso comida caliente directamente encima, sin plato?',
  'survey.last-hot.own': 'Su propio último uso en caliente, si fue otro',
  'survey.last-hot.all': '¿Cuándo se usó aquí algo en caliente por última vez?',
  'survey.last-hot.all.hint':
    'Quemadores, horno, fregadero, encimeras, hervidor; la limpieza caliente cuenta. Los reposos se planifican desde esa hora, y todo se limpia solo con agua fría. Durante el trabajo se pregunta otra vez.',
  'survey.last-hot.forget': 'Sin indicar',
  'survey.cupboard.place': '¿Dónde está?',
  'survey.cupboard.over-counter': 'Sobre la encimera',
  'survey.cupboard.under-counter': 'Bajo la encimera',

  'survey.shelves': 'Estantes',
  'survey.shelves.drawer': 'Fondos por forrar',
  'survey.shelves.cupboard': 'Estantes por forrar',
  'survey.shelves.length': ({ number }, f) => `Estante ${f.number(number)}, largo`,
  'survey.shelves.depth': ({ number }, f) => `Estante ${f.number(number)}, fondo`,
  'survey.shelves.take-out': ({ number }, f) => `Quitar el estante ${f.number(number)}`,
  'survey.shelves.one-more': 'Uno más como el último',
  'survey.shelves.add': 'Añadir un estante',

  'survey.appliance.power': 'Potencia',
  'survey.appliance.power.empty': 'en su placa de datos',

  'survey.cooktop.kind': 'Clase de quemadores',
  'survey.cooktop.several': 'De varias clases',
  'survey.cooktop.between': '¿Qué hay entre los quemadores?',
  'survey.cooktop.each': 'Cada quemador',
  'survey.cooktop.add': 'Añadir un quemador',
  'survey.cooktop.called': 'Se llama',
  'survey.cooktop.power': ({ name }) => `Potencia, ${name}`,
  'survey.cooktop.across': ({ name }) => `Diámetro, ${name}`,
  'survey.cooktop.lamp': '¿Una luz muestra que sigue caliente?',
  'survey.cooktop.volts': ({ name }) => `Voltios en su placa de datos, ${name}`,
  'survey.cooktop.volts.empty': 'como su circuito',
  'survey.cooktop.senses': ({ name }) => `Detecta la olla, ${name}`,
  'survey.lamp.lamp': 'Una luz de calor residual',
  'survey.lamp.none': 'Sin luz',
  'survey.senses.no': 'No, o no se sabe',
  'survey.senses.yes': 'Sí: se limita solo, y puede no enrojecer sin olla',
  'survey.cooktop.burner-kind': 'Clase',
  'survey.cooktop.take-out': ({ name }) => `Quitar el quemador ${name}`,

  'survey.oven.cleaning': '¿Cómo se limpia solo?',
  'survey.oven.steam-trap':
    'La limpieza con vapor no kasheriza. El plan trata este horno como uno sin autolimpieza.',
  'survey.oven.catalytic-trap':
    'Un revestimiento catalítico no kasheriza. El plan trata este horno como uno sin autolimpieza.',
  'survey.oven.cycle': 'Duración del ciclo',
  'survey.oven.cycle.empty': 'según el manual',
  'survey.oven.racks': '¿Qué dice el manual de las rejillas?',
  'survey.oven.heated-by': 'Se calienta con',
  'survey.oven.range': 'En un mismo aparato con',
  'survey.oven.no-cooktop': 'Ninguna placa',
};
