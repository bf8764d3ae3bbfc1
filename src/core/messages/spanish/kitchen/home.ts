import type { TranslationOf } from '../../model/translation.ts';
import type { home as english } from '../../english/kitchen/home.ts';

/** The kitchens of this tablet, and the one that is open from above. */
export const home: TranslationOf<typeof english> = {
  'kitchen.welcome': 'Haga kosher su cocina, o prepárela para Pésaj',
  'kitchen.welcome.about':
    'Indique qué hay en ella. Reciba un plan por horas. La aplicación le guía, paso a paso.',
  'kitchen.welcome.no-ruling':
    'No dicta normas religiosas: decide su rabino. Los manuales de los fabricantes, las normas locales y los profesionales autorizados van primero.',
  'kitchen.welcome.begin': 'Describir su cocina',
  'kitchen.new-name': 'Mi cocina',

  'kitchen.demos': 'Empezar con una cocina',
  'kitchen.demos.first': 'O mire una como la suya',
  'kitchen.demos.another': 'Otra cocina',
  'kitchen.describe-new': 'Describir una cocina nueva',
  'kitchen.open-file': 'Abrir un archivo de cocina',
  'kitchen.demo.flat-coils.name': 'Piso con espirales',
  'kitchen.demo.flat-coils.tells': 'Espirales eléctricas, un fregadero de acero, 120 V',
  'kitchen.demo.mountain-gas.name': 'Casa de montaña',
  'kitchen.demo.mountain-gas.tells': (_, f) => `Gas a ${f.measure(2100, 'm')}, para Pésaj`,
  'kitchen.demo.flat-glass-230.name': 'Piso con placa de vidrio',
  'kitchen.demo.flat-glass-230.tells': 'Placa de vidrio, horno en columna, 230 V',
  'kitchen.demo.hall.name': 'Cocina de salón comunitario',
  'kitchen.demo.hall.tells': 'Ocho quemadores, dos hornos, un equipo de tres',

  'kitchen.problems.file': 'No se pudo leer este archivo',
  'kitchen.problems.file.note': 'No se cambió nada de lo que tenía.',
  'kitchen.problems.plan': 'Todavía no hay plan para esta cocina',
  'kitchen.problems.plan.note': 'La cocina está guardada. Cámbiela para arreglarlo.',
  'kitchen.problem.at': ({ path, line }) => `${path}, línea ${line}`,
  'kitchen.problem': ({ found, allowed, advice }, f) =>
    `Hay ${f.say(found)}. Permitido: ${f.say(allowed)}. ${f.say(advice)}`,

  'kitchen.yours': 'Su cocina',
  'kitchen.yours.demo':
    'Su cocina, como está en el ejemplo; el primer cambio la convierte en copia propia',
  'kitchen.save-file': 'Guardar en un archivo',
  'kitchen.change': 'Cambiarla',
  'kitchen.press-to-change': 'Pulse lo que quiera del dibujo para moverlo o cambiarlo.',
  'kitchen.see-plan': 'Ver el plan',
  'kitchen.empty': 'Todavía no hay nada en ella. Cámbiela para indicar lo que hay.',
  'kitchen.fixtures': 'Elementos',
  'kitchen.fixtures.heading': 'Qué hay en ella',
  'kitchen.fixtures.is': ({ what }, f) => f.capital(f.say(what)),
  'kitchen.fixtures.belongs': ({ what, to }, f) => `${f.capital(f.say(what))}, ${f.say(to)}`,
  'kitchen.belongs.meat': 'carne',
  'kitchen.belongs.dairy': 'lácteo',
  'kitchen.belongs.pareve': 'parve (neutro)',

  'kitchen.choices.why': 'Por qué',
  'kitchen.choices.custom': 'Costumbre',
  'kitchen.choices.lanes': 'Dirección del vertido',
  'kitchen.choices.pour-until': 'Verter hasta',
  'kitchen.choices.people': 'Personas que trabajan',
  'kitchen.choices.units': 'Unidades',
  'kitchen.units.metric': 'Métricas (cm, L, °C)',
  'kitchen.units.us-customary': 'EE. UU. (pulg, qt, °F)',
  'kitchen.purpose.new-kitchen': 'Cocina nueva',
  'kitchen.purpose.passover': 'Pésaj',
  'kitchen.purpose.mix-up': 'Tras una mezcla por error',
  'kitchen.lanes.back-to-front': 'De atrás hacia delante (costumbre)',
  'kitchen.lanes.shortest': 'El camino más corto',
  'kitchen.leaven-day.dawn-nightfall': 'Del alba al anochecer (la hora más temprana)',
  'kitchen.leaven-day.sunrise-sunset': 'De la salida a la puesta del sol',
  'kitchen.pour-until.reached': 'Llega a cada punto',
  'kitchen.pour-until.heated': 'Se calienta todo el espesor (ningún texto lo pide)',

  'kitchen.hardware.altitude': 'Altitud',
  'kitchen.hardware.altitude.value': ({ altitudeM }, f) => f.shortMeasure(altitudeM, 'm', 3),
  'kitchen.hardware.mains': 'Red eléctrica',
  'kitchen.hardware.mains.value': ({ supplyV }, f) => `${f.shortNumber(supplyV, 3)} V`,
  'kitchen.hardware.tap': 'Agua del grifo',
  'kitchen.hardware.tap.value': ({ tapColdC }, f) => f.shortMeasure(tapColdC, '°C', 3),
  'kitchen.hardware.vessel': ({ count, maxFillL, ratedW }, f) =>
    `${count > 1 ? `${f.number(count)} × ` : ''}${f.shortMeasure(maxFillL, 'L', 3)}${ratedW > 0 ? `, ${f.shortNumber(ratedW, 3)} W` : ''}`,
  'kitchen.hardware.vessel.on': ({ vessel, circuit }, f) => `${f.say(vessel)}, en ${circuit}`,
  'kitchen.hardware.circuit': ({ ratingA, voltsV }, f) =>
    `${f.shortNumber(ratingA, 3)} A a ${f.shortNumber(voltsV, 3)} V`,
  'kitchen.hardware.hood': 'Campana',
  'kitchen.hardware.hood.none': 'Sin campana',
  'kitchen.hardware.hood.unknown': 'sin indicar todavía: cuenta como ninguna',
  'kitchen.hardware.hood.vented': ({ flowLS }, f) =>
    `Campana al exterior, ${f.shortMeasure(flowLS, 'L/s', 3)}`,
  'kitchen.hardware.hood.recirculating': 'Campana de recirculación (no elimina ningún gas)',
  'kitchen.hardware.window': 'Ventana',
  'kitchen.hardware.window.not-told': 'sin indicar todavía: cuenta como ninguna',
  'kitchen.hardware.window.none': 'ninguna que se abra',
  'kitchen.hardware.window.opens': ({ areaM2 }, f) => `se abren ${f.shortMeasure(areaM2, 'm²', 3)}`,

  'kitchen.kept': 'Cocinas en esta tableta',
  'kitchen.kept.changed': ({ wallMs, zone }, f) => `cambiada ${f.dateTime(wallMs, zone)}`,
  'kitchen.kept.open': ({ wallMs, zone }, f) =>
    `abierta ahora, cambiada ${f.dateTime(wallMs, zone)}`,
  'kitchen.kept.failed': ({ why }, f) =>
    `El almacenamiento de esta tableta no respondió, y no se cambió nada. ${f.say(why)}`,
  'kitchen.kept.more': 'Más',
  'kitchen.kept.less': 'Menos',
  'kitchen.kept.for': ({ name }) => `para “${name}”`,
  'kitchen.kept.another-name': 'Otro nombre',
  'kitchen.kept.rename': 'Cambiar el nombre',
  'kitchen.kept.duplicate': 'Duplicar',
  'kitchen.kept.delete': 'Borrar',
  'kitchen.kept.sure': ({ name }) => `¿Borrar “${name}”?`,
  'kitchen.kept.keep': 'Conservarla',
  'kitchen.kept.delete-it': 'Borrarla',
  'kitchen.kept.deleted': ({ name }) =>
    `Se borró “${name}”. Se puede recuperar durante una semana.`,
  'kitchen.kept.put-back': 'Recuperar',
};
