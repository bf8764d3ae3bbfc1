import type { TranslationOf } from '../../model/translation.ts';
import type { walls as english } from '../../english/survey/walls.ts';

/** Walls, doors and windows, and one wall seen from the front. */
export const walls: TranslationOf<typeof english> = {
  'survey.face': 'Vista',
  'survey.face.above': 'Desde arriba',
  'survey.face.far': 'Pared de enfrente',
  'survey.face.near': 'Pared de acá',
  'survey.face.left': 'Pared izquierda',
  'survey.face.right': 'Pared derecha',
  'survey.face.numbered': ({ wall, number }, f) => `${f.say(wall)} ${f.number(number)}`,
  'survey.face.push': ({ wall, length }, f) =>
    `Mover la pared: ${f.say(wall)}, de ${f.say(length)} de largo`,

  'survey.editor.keys': (_, f) =>
    `Las flechas mueven ${f.measure(5, 'cm')}; con Mayús cambian el tamaño. T gira, Supr quita, Intro va a los campos, Esc sale.`,
  'survey.editor.lengths': 'Medidas',
  'survey.editor.names': 'Nombres',
  'survey.editor.walls': 'Paredes',

  'survey.front.label': ({ wall }, f) => `${f.say(wall)}, vista de frente`,
  'survey.front.spoken': ({ name, left, from, to }, f) =>
    `${name}, a ${f.say(left)} de la izquierda, desde ${f.say(from)} hasta ${f.say(to)} sobre el suelo`,
  'survey.front.heights': ({ from, to }, f) => `${f.say(from)} – ${f.say(to)}`,
  'survey.front.untold':
    'Líneas discontinuas: nadie indicó su altura, así que se dibuja la habitual.',
  'survey.front.unhung': 'Sin dibujar todavía. Pulse para ponerlo en esta pared:',

  'survey.opening.door': 'Puerta',
  'survey.opening.door.tells': 'Con el lado hacia el que abre',
  'survey.opening.window': 'Ventana',
  'survey.opening.window.tells': 'Sobre una encimera o no',
  'survey.opening.passage': 'Paso',
  'survey.opening.passage.tells': 'Una abertura sin puerta',
  'survey.opening.spoken': ({ name, wall, left, width }, f) =>
    `${f.say(name)}, ${f.say(wall)}, a ${f.say(left)} de su extremo izquierdo, ${f.say(width)} de ancho`,
  'survey.opening.width': 'Ancho',
  'survey.opening.from-left': 'Desde el extremo izquierdo de la pared',
  'survey.opening.turn': 'Girar la puerta',
  'survey.offers.openings': 'En las paredes',
  'survey.wall-place': 'En la pared',
  'survey.heights.from': 'Borde inferior sobre el suelo',
  'survey.heights.to': 'Borde superior sobre el suelo',
  'survey.heights.hint': 'Solo para el dibujo.',

  'survey.done.walls': 'Paredes movidas',
  'survey.done.hung': ({ fixture }) => `Puesto en la pared: ${fixture}`,
  'survey.what.heights': 'alturas',
  'survey.what.wall-place': 'sitio en la pared',
};
