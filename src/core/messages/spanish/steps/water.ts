import type { TranslationOf } from '../../model/translation.ts';
import type { water as english } from '../../english/steps/water.ts';

/** `isAhead`: what is expected has not come yet. */
export const water: TranslationOf<typeof english> = {
  'steps.vessel.new': 'Hervidor eléctrico nuevo',
  'steps.vessel.unit': ({ name, number }) => `${name} ${number}`,
  'steps.vessel.fill-on-burner': ({ vessel, litres, burner }, f) =>
    `Llene hasta ${f.fill(litres)} y encienda debajo el quemador ${burner}: ${f.say(vessel)}.`,
  'steps.vessel.fill-plugged': ({ vessel, litres }, f) =>
    `Llene hasta ${f.fill(litres)} y encienda: ${f.say(vessel)}.`,
  'steps.vessel.plug-into': ({ circuit }) =>
    `Enchúfelo directamente en ${circuit}; ahí solo funciona lo que dice el plan.`,
  'steps.vessel.plug-anywhere':
    'Enchúfelo directamente en una toma de la pared que no use nada más.',
  'steps.vessel.safe-on-burner': ({ burner, vessel }, f) =>
    `Apague el quemador ${burner} y deje encima, sin moverlo: ${f.say(vessel)}.`,
  'steps.vessel.safe-plugged': ({ vessel }, f) =>
    `Apague y deje donde nadie pueda golpearlo: ${f.say(vessel)}.`,

  'steps.boil.title': ({ kettle, of, fixture, vessel }, f) =>
    `Hierva el hervidor ${kettle} de ${of} para ${fixture}: ${f.say(vessel)}.`,
  'steps.boil.fill-mark': 'Nunca por encima de la marca.',
  'steps.boil.wait': 'Espere a que hierva a borbotones.',
  'steps.boil.wait-here': ({ boilingC }, f) =>
    `Espere a que hierva a borbotones, aquí a ${f.measure(boilingC, '°C', 1)}.`,
  'steps.boil.wait-low': ({ boilingC }, f) =>
    `Espere a que hierva a borbotones. Aquí el agua hierve a ${f.measure(boilingC, '°C')}; eso es hervir, y no se calienta más.`,
  'steps.boil.again': ({ againS }, f) =>
    `Enciéndalo otra vez justo antes de levantarlo: vuelve a los borbotones en ${f.about(againS)}. Entonces vierta enseguida.`,
  'steps.boil.burner-off': ({ burner }) =>
    `Apague el quemador ${burner} al levantarlo, recién hervido, y vierta enseguida.`,
  'steps.boil.say': 'Hierve',
  'steps.boil.ask': '¿Hirvió a borbotones el hervidor, y sigue caliente el agua?',
  'steps.boil.expect': ({ isAhead }) =>
    isAhead ? 'Hasta que hierva (previsto)' : 'Hierve más o menos ahora',

  'steps.boil-over.title': ({ vessel }, f) => `Kasherice el recipiente mismo: ${f.say(vessel)}.`,
  'steps.boil-over.overflow-on-burner': ({ burner }) =>
    `Apague el quemador ${burner}. En el fregadero, baje despacio un acero limpio y caliente dentro del hervidor hasta que rebose por todo el borde.`,
  'steps.boil-over.overflow-plugged':
    'Desenchúfelo, póngalo en el fregadero y baje despacio dentro un acero limpio y caliente hasta que rebose por todo el borde.',
  'steps.boil-over.steel':
    'Con pinzas largas y el brazo estirado: una pieza de acero, calentada mientras tanto en un quemador. Ninguna piedra de la calle: puede estallar.',
  'steps.boil-over.base': 'Su base queda lejos del agua.',
  'steps.boil-over.spout':
    'Un pico o un cuello estrecho no se alcanza así: pregunte, o compre un hervidor nuevo.',
  'steps.boil-over.overflow-say': 'Rebosó',
  'steps.boil-over.overflow-ask': '¿Rebosó el agua hirviendo por todo el borde?',
  'steps.boil-over.cold': 'Vacíelo y enjuáguelo con agua fría.',
  'steps.cold.say-rinsed': 'Enjuagado con agua fría',

  'steps.dry.title': ({ fixture }) => `Seque por completo: ${fixture}.`,
  'steps.dry.reason':
    'El agua que queda encima enfría el chorro antes de llegar a la superficie: se vierte sobre seco.',
  'steps.dry.seams': 'También juntas y esquinas.',
  'steps.dry.kettle-away':
    'El hervidor y su base van en otro sitio, en una toma adonde no llegue ninguna salpicadura.',
  'steps.dry.drain': 'También alrededor del grifo. Deje abierto el desagüe.',
  'steps.dry.clear-to': ({ names, to }, f) =>
    `Quite de ahí ${f.list(names.map((name) => f.say(name)))}. Páselo a este lugar: ${to}. Ahí queda hasta que esto esté seco de nuevo.`,
  'steps.dry.clear': ({ names }, f) =>
    `Quite de ahí ${f.list(names.map((name) => f.say(name)))} y sáquelo de la cocina; queda fuera hasta que esto esté seco de nuevo.`,
  'steps.dry.say': 'Seco',
  'steps.air-dry.title': ({ fixture }) => `Pase un paño y deje secar sin cubrir: ${fixture}.`,
  'steps.air-dry.reason':
    'Una cubierta sobre agua queda mojada, resbala y levanta la madera de debajo.',
  'steps.air-dry.timer': ({ name }, f) => `Secando: ${f.say(name)}`,
  'steps.air-dry.timer-short': 'Secando',

  'steps.pour.title': ({ kettle, of, fixture }) =>
    `Vierta el hervidor ${kettle} de ${of} sobre ${fixture}.`,
  'steps.pour.pour': ({ kettle, of, fixture }) =>
    `Vierta el hervidor ${kettle} de ${of} sobre ${fixture}: el chorro llega a cada punto.`,
  'steps.pour.line': ({ kettle }) =>
    `Hervidor ${kettle}: la parte azul, de la marca ${kettle} a la marca ${kettle + 1}.`,
  'steps.pour.line-to-end': ({ kettle }) =>
    `Hervidor ${kettle}: la parte azul, de la marca ${kettle} hasta el final.`,
  'steps.pour.dry-first': 'Seque lo que falta por verter: el agua que queda enfría el chorro.',
  'steps.pour.drain-open': 'Desagüe abierto, para que se vaya el agua que se adelanta.',
  'steps.pour.wipe-floor': 'Entre hervidores, seque paredes y fondo antes de que llegue el chorro.',
  'steps.pour.way.back-to-front':
    'Del borde de atrás hacia delante, franja por franja; deje que el agua caiga por delante.',
  'steps.pour.way.shortest':
    'Franja por franja como en el dibujo: el camino más corto, elegido por usted; deje que el agua caiga por delante.',
  'steps.pour.way.far-to-near': 'Franja por franja hacia usted, primero la más lejana.',
  'steps.pour.stand': ({ sides }, f) =>
    `Póngase donde están dibujados los pies: ${sides.map((side) => f.say(side)).join(', después ')}.`,
  'steps.pour.side.far': 'el lado de enfrente',
  'steps.pour.side.near': 'el lado de acá',
  'steps.pour.side.left': 'el lado izquierdo',
  'steps.pour.side.right': 'el lado derecho',
  'steps.pour.unreached':
    'El punto rayado no se alcanza desde donde puede ponerse: no tiene hervidor en el plan. Vea los avisos del plan.',
  'steps.pour.round': ({ round, rounds }) => `Vez ${round} de ${rounds} sobre toda la superficie.`,
  'steps.pour.stone':
    'Con pinzas largas, mueva el acero caliente dentro del chorro, sobre cada punto.',
  'steps.pour.say': 'Vertido',
  'steps.pour.ask': '¿Se vertió este hervidor hasta el final?',
  'steps.pour.expect': ({ isAhead }) =>
    isAhead ? 'Hasta que esté vacío (previsto)' : 'Vacío más o menos ahora',
  'steps.pour.cold': 'Vierta enseguida agua fría sobre el mismo lugar.',
  'steps.pour.cold-where': 'Solo donde cayó el agua hirviendo.',
  'steps.pour.swab': 'Seque lo que falta por verter.',
  'steps.pour.cold-say': 'Agua fría vertida',
  'steps.pour.cold-ask': '¿Se vertió agua fría encima?',
  'steps.pour.cold-timer': 'Ahora agua fría',
  'steps.pour.safe': 'Deje el hervidor donde nadie pueda golpearlo.',

  'steps.ran-out': ({ kettle }) =>
    `El hervidor ${kettle} se acabó antes; lo que queda se reparte de nuevo.`,

  'steps.pour.not-drawn': ({ why }, f) =>
    `No se puede dibujar por dónde va cada hervidor (${f.say(why)}): el agua se reparte por igual. Compruebe usted que llega a cada punto.`,

  'steps.sink.spout-and-tap': 'Caño y grifo',
  'steps.sink.handles': ({ count }, f) => f.plural(count, { one: 'Manija', other: 'Manijas' }),
  'steps.sink.deck': 'Alrededor de los senos',
  'steps.sink.deck-and-drainboard': 'Alrededor y escurridor',
  'steps.sink.rim': 'Borde',
  'steps.sink.wall': 'Paredes',
  'steps.sink.floor': 'Fondo',
  'steps.sink.bowl.rim': ({ bowl }) => `Seno ${bowl}: borde`,
  'steps.sink.bowl.wall': ({ bowl }) => `Seno ${bowl}: paredes`,
  'steps.sink.bowl.floor': ({ bowl }) => `Seno ${bowl}: fondo`,
  'steps.sink.shared': ({ part, pieces }, f) =>
    `${f.say(part)} (${pieces.map((piece) => f.say(piece)).join(', ')})`,
  'steps.sink.the-rest': ({ part }, f) => `${f.say(part)}, el resto`,
  'steps.sink.piece.back': 'atrás',
  'steps.sink.piece.right': 'derecha',
  'steps.sink.piece.front': 'delante',
  'steps.sink.piece.left': 'izquierda',
  'steps.sink.piece.lane': ({ number }) => `franja ${number}`,
  'steps.sink.piece.handle': ({ number }) =>
    ['primera', 'segunda', 'tercera', 'cuarta'][number - 1] ?? String(number),
};
