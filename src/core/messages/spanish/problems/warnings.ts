import type { TranslationOf } from '../../model/translation.ts';
import type { warnings as english } from '../../english/problems/warnings.ts';

/** What a household should look at although the file is used. */
export const warnings: TranslationOf<typeof english> = {
  'problems.load.one.found': ({ vessel, drawA }, f) =>
    `"${vessel}", que consume ${f.number(drawA, 1)} A`,
  'problems.load.one.allowed': ({ ratingA }) => `como mucho ${ratingA} A`,
  'problems.load.one.advice':
    'Haría saltar el interruptor automático: use otro circuito o uno menos potente.',
  'problems.load.several.found': ({ count, circuit, togetherA }, f) =>
    `${f.number(count)} en "${circuit}", ${f.number(togetherA, 1)} A en total`,
  'problems.load.several.allowed': ({ ratingA }) => `como mucho ${ratingA} A a la vez`,
  'problems.load.several.advice': 'Ahí no pueden hervir a la vez; el plan los alterna.',
  'problems.voltage.found': ({ ratedV, voltsV }) => `${ratedV} V en un circuito de ${voltsV} V`,
  'problems.voltage.allowed': ({ voltsV }) => `unos ${voltsV} V`,
  'problems.voltage.advice': 'Lea otra vez la placa de datos de debajo.',
  'problems.utensil-material.allowed': ({ materials }) => `uno de ${materials} para esta clase`,
  'problems.utensil-material.advice': 'Mírelo otra vez, o indíquelo como de otra clase.',
  'problems.utensil-mass.allowed': ({ mostKg }, f) =>
    `como mucho ${f.shortMeasure(mostKg, 'kg', 3, 'down')} para su tamaño`,
  'problems.utensil-mass.advice': 'La plata maciza pesaría menos: péselo o mídalo otra vez.',
  'problems.no-fixtures.allowed': 'al menos un elemento para el plan',
  'problems.no-fixtures.advice':
    'Describa lo que hay en la cocina; hasta entonces no hay nada que planificar.',
  'problems.no-vessels.allowed': 'al menos un hervidor, termo de agua u olla',
  'problems.no-vessels.advice': 'Describa con qué se hierve el agua, o no se podrá verter nada.',
  'problems.unplugged.found': 'nada',
  'problems.unplugged.allowed': 'la id de un circuito',
  'problems.unplugged.advice': 'Diga en qué circuito está enchufado, o no se vigila su carga.',
  'problems.hood-flow.allowed': 'el caudal en L/s de una campana al exterior',
  'problems.hood-flow.advice':
    'Lea el caudal en el manual; hasta entonces cuenta como sin campana.',
  'problems.hood-kind.found': ({ flowLS }, f) =>
    `"none" con un caudal de ${f.shortMeasure(flowLS, 'L/s', 3)}`,
  'problems.hood-kind.allowed': 'una clase de campana',
  'problems.hood-kind.advice': 'Diga "vented" o "recirculating", o quite el caudal.',
  'problems.room-small.found': ({ volumeM3 }, f) =>
    `un local de ${f.shortMeasure(volumeM3, 'm³', 1)}`,
  'problems.room-small.allowed': ({ leastM3 }, f) => `${f.measure(leastM3, 'm³', 0, 'up')} o más`,
  'problems.room-small.advice':
    'Mida de nuevo suelo y techo; en un local más pequeño no se calculan su calor ni su aire.',
  'problems.last-hot.zone.allowed': 'un último uso en caliente en una cocina que indica su lugar',
  'problems.last-hot.zone.advice':
    'Añada el lugar: hasta entonces nadie sabe qué momento es, y cada reposo cuenta desde su limpieza.',
  'problems.cycle.found': ({ cycleMin }) => `${cycleMin} para un horno sin autolimpieza`,
  'problems.cycle.allowed': 'ningún ciclo',
  'problems.cycle.advice': 'Quítelo, o diga "pyrolytic" si el horno tiene ese ciclo.',
  'problems.own-rests.found': ({ name, basedOn, followed }) =>
    `"${name}", copiada de ${basedOn}, mientras el hogar sigue ${followed}`,
  'problems.own-rests.advice': ({ basedOn }) =>
    `Se guarda y no se usa; siga otra vez ${basedOn} para usarla.`,
  'problems.unusual-answer.found': ({ method, fixture }) => `"${method}" para "${fixture}"`,
  'problems.unusual-answer.advice':
    'Pregunte otra vez si eso se quiso decir; el plan lo sigue hasta donde puede.',
};
