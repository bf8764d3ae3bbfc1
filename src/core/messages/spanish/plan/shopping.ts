import type { TranslationOf } from '../../model/translation.ts';
import type { shopping as english } from '../../english/plan/shopping.ts';

/** What to buy and gather. */
export const shopping: TranslationOf<typeof english> = {
  /** What is bought, before how much of it. */
  'plan.buy.before-amount': ({ name }, f) => `${f.say(name)}:`,
  'plan.buy.kettle': ({ maxFillL, ratedW }, f) =>
    `Hervidor eléctrico, ${f.shortMeasure(maxFillL, 'L')}, ${f.number(ratedW)} W`,
  'plan.buy.kettle.why': 'La cocina no nombra ningún hervidor con el que se pueda verter.',
  'plan.buy.jugs': ({ jugL }, f) => `Jarras de agua fría de ${f.fill(jugL, true)}`,
  'plan.buy.jugs.why': ({ coldL }, f) =>
    `Unos ${f.measure(coldL, 'L')} de agua fría siguen al agua hirviendo.`,
  'plan.buy.mop': 'Fregona (trapeador), cubo y toallas para el suelo',
  'plan.buy.mop.why': 'El suelo se moja con cada hervidor.',
  'plan.buy.gloves': 'Guantes largos, impermeables y resistentes al calor',
  'plan.buy.gloves.why': 'Agua hirviendo y metal caliente.',
  'plan.buy.rubber-gloves': 'Guantes de goma y gafas protectoras',
  'plan.buy.rubber-gloves.why': 'Limpiadores.',
  'plan.buy.extinguisher': 'Extintor para cocinas, o manta ignífuga',
  'plan.buy.extinguisher.why': 'Calor al rojo y calor del horno.',
  'plan.buy.co-alarm': 'Alarma de CO, probada',
  'plan.buy.co-alarm.why': 'Las llamas y la grasa que arde dan monóxido de carbono.',
  'plan.buy.smoke-alarm': 'Alarma de humo, probada',
  'plan.buy.smoke-alarm.why': 'Se queda en su sitio, sin desactivar.',
  'plan.buy.ladder': 'Escalera de mano',
  'plan.buy.ladder.why': 'A lo alto se llega con una escalera, no con una silla.',
  'plan.buy.towels': 'Toallas limpias o una sábana',
  'plan.buy.towels.why': 'Lo limpio va encima hasta que estén hechas las encimeras.',
  'plan.buy.cleaning': 'Detergente para platos, cepillos, estropajos, aspiradora',
  'plan.buy.cleaning.why': 'Limpieza de arriba abajo.',
  'plan.buy.labels': 'Etiquetas o cinta en tres colores',
  'plan.buy.labels.why': 'Lugares de carne, de lácteos y neutros.',
  'plan.buy.stone': 'Pieza de acero lisa y limpia, y pinzas largas',
  'plan.buy.stone.why': 'Se calienta y se va pasando mientras se vierte agua hirviendo.',
  'plan.buy.parts': ({ parts }, f) => `Nuevo: ${f.list(parts.map((part) => f.say(part)))}`,
  'plan.buy.parts.why': ({ fixture }) =>
    `${fixture}: esto no se kasheriza. Mida antes las piezas viejas.`,
  'plan.buy.cover': ({ material }, f) => f.capital(f.say(material)),
  'plan.buy.cover.why': ({ fixtures }) => `Para ${fixtures.join(', ')}.`,
  'plan.amount.count': ({ count }, f) => f.number(count),
  'plan.amount.set': '1 juego',
  'plan.amount.pairs': ({ pairs }, f) =>
    `${f.number(pairs)} ${f.plural(pairs, { one: 'par', other: 'pares' })}`,
  'plan.amount.bowls': ({ bowls }, f) =>
    `para ${f.number(bowls)} ${f.plural(bowls, { one: 'seno', other: 'senos' })}`,
  'plan.amount.area': ({ areaM2 }, f) => f.shortMeasure(areaM2, 'm²'),
  'plan.amount.to-size': 'a medida',
};
