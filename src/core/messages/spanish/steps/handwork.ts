import type { Formatter, Message } from '../../model/message.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { handwork as english } from '../../english/steps/handwork.ts';

function untilText(until: Message | undefined, f: Pick<Formatter, 'say'>): string {
  return until ? ` hasta ${f.say(until)}` : '';
}

/** A time of day, filled in by a view that knows it. */
export const handwork: TranslationOf<typeof english> = {
  'steps.clean.title': ({ name }, f) => `Limpie: ${f.say(name)}.`,
  'steps.clean.title-vessel': ({ name }, f) => `Limpie y quite la cal: ${f.say(name)}.`,
  'steps.clean.cold-only': 'Solo agua fría, nada de vapor: ya está en reposo.',
  'steps.clean.sand': 'Lije todos los cortes y rayas hasta quitarlos.',
  'steps.clean.rinse-vessel': 'Enjuáguelo bien, también la tapa y el pico.',
  'steps.clean.say': 'Está limpio',

  'steps.unplug.title': ({ name }, f) => `Vacíe y desenchufe: ${f.say(name)}.`,
  'steps.unplug.food':
    'La comida, a una nevera portátil con acumuladores de frío; mantenga la tapa cerrada.',
  'steps.unplug.plug': 'Manos secas, enchufe fuera, colgado donde no corra agua.',
  'steps.unplug.towels': 'Toallas y una bandeja debajo.',
  'steps.unplug.say': 'Está desenchufado',
  'steps.thaw.title': ({ name }, f) => `Deje que se derrita el hielo: ${f.say(name)}.`,
  'steps.thaw.open': 'Puerta abierta; escurra las toallas de vez en cuando.',
  'steps.thaw.no-tools': 'Quite el hielo solo con la mano: ni cuchillo, ni llama, ni calefactor.',
  'steps.thaw.say': 'Ya no hay hielo',
  'steps.thaw.timer': ({ name }, f) => `Mire el hielo: ${f.say(name)}`,
  'steps.switch-on.title': ({ name }, f) => `Encienda de nuevo: ${f.say(name)}.`,
  'steps.switch-on.dry': 'Séquelo por dentro, séquese las manos y después enchufe.',
  'steps.switch-on.chilled': (_, f) =>
    `La comida vuelve cuando un termómetro dentro marque ${f.measure(5, '°C')} o menos.`,
  'steps.switch-on.frozen': (_, f) =>
    `La comida vuelve cuando un termómetro dentro marque ${f.measure(-15, '°C')} o menos.`,
  'steps.switch-on.say': 'Funciona',

  'steps.rest.title-nothing-hot': ({ name, until }, f) =>
    `${f.say(name)}: nada caliente dentro ni encima${untilText(until, f)}.`,
  'steps.rest.title-sink': ({ name, until }, f) =>
    `${f.say(name)}: solo agua fría${untilText(until, f)}.`,
  'steps.rest.label': ({ until }, f) =>
    `Ponga un cartel: EN REPOSO, no calentar${untilText(until, f)}.`,
  'steps.rest.detail':
    'Ningún uso en caliente ni limpieza caliente hasta que se cumpla el tiempo. Si duda, dígalo: el reposo empieza de nuevo.',
  'steps.rest.from-last-hot': ({ wallMs, zone }, f) =>
    `Planificado desde su último uso en caliente, ${f.moment(wallMs, zone)}: confírmelo durante el trabajo. Hasta entonces, todo el reposo cuenta desde su limpieza.`,
  'steps.rest.timer': ({ name }, f) => `Reposo: ${f.say(name)}`,
  'steps.rest.timer-short': 'Reposo',

  'steps.cool.title': ({ name }, f) => `Deje enfriar sin tocar: ${f.say(name)}.`,
  'steps.cool.wait': ({ name }, f) => `Hasta que se pueda tocar: ${f.say(name)}`,
  'steps.cool.wait-short': 'Caliente: hasta que se pueda tocar',
  'steps.cool.slow-end': 'El reloj cuenta lo máximo que puede tardar. Por sí solo no prueba nada.',
  'steps.cool.test.lamp':
    'Después mire la luz de calor residual de la placa: debe estar apagada. Acerque el dorso de la mano por encima, sin apoyarla.',
  'steps.cool.test.drop':
    'Después acerque el dorso de la mano por encima, sin apoyarla. Deje caer una gota de agua: no debe chisporrotear.',
  'steps.cool.test.drop-in-oven':
    'Después abra la puerta, hágase a un lado y acerque el dorso de la mano al interior sin tocar. Deje caer una gota de agua en el suelo del horno: no debe chisporrotear.',
  'steps.cool.not-over':
    'No mientras un quemador de delante esté encendido o caliente: pruebe primero ese.',
  'steps.cool.lamp-dead':
    'Una luz que nunca se encendió no prueba nada: deje caer una gota de agua en el vidrio, no debe chisporrotear. Escriba una nota.',
  'steps.cool.still-hot.lamp':
    '¿Luz encendida, o se nota calor? Añada tiempo al reloj y no lo toque.',
  'steps.cool.still-hot.drop':
    '¿Chisporrotea, o se nota calor? Añada tiempo al reloj y no lo toque.',
  'steps.cool.say.lamp': 'Luz apagada, no se nota calor',
  'steps.cool.say.drop': 'No chisporrotea, no se nota calor',
  'steps.cool.say.drop-in-oven': 'No chisporrotea, no se nota calor dentro',

  'steps.parts.take-out': ({ parts }, f) =>
    `Fuera para siempre, al final van nuevos: ${f.list(parts.map((part) => f.say(part)))}.`,
  'steps.parts.until-new': ({ part }, f) =>
    `Limpio y de vuelta para el calor, nuevo después: ${f.say(part)}.`,
  'steps.parts.pour-over': ({ part }, f) => `Junto con esto: ${f.say(part)}.`,
  'steps.parts.into-cycle': ({ part, fixture }, f) =>
    `Meta, si el fabricante lo permite: ${f.say(part)} (${fixture}).`,
  'steps.parts.heat': ({ part, fixture, lengthS }, f) =>
    `Caliente al máximo, ${f.duration(lengthS)}: ${f.say(part)} (${fixture}).`,
  'steps.parts.fire': ({ part, fixture, lengthS }, f) =>
    `Ponga al rojo con fuego y mantenga ${f.duration(lengthS)}: ${f.say(part)} (${fixture}).`,
  'steps.parts.boiling': ({ part, fixture }, f) =>
    `Agua hirviendo sobre cada punto: ${f.say(part)} (${fixture}).`,
  'steps.parts.title': ({ fixture }) => `Ponga las piezas nuevas: ${fixture}.`,
  'steps.parts.title-cover': ({ fixture }) => `Cubra el resto: ${fixture}.`,
  'steps.parts.new': ({ part }, f) => `Nuevo: ${f.say(part)}.`,
  'steps.parts.cover': ({ part }, f) => `Cubra: ${f.say(part)}.`,
  'steps.parts.cold': 'Solo cuando todo esté frío al tacto.',
  'steps.parts.say': 'Ya están puestas',

  'steps.cover.title': ({ fixture }) => `Cubra: ${fixture}.`,
  'steps.line.title': ({ fixture }) => `Forre: ${fixture}.`,
  'steps.cover.with': ({ material }, f) => `Con ${f.say(material)}.`,
  'steps.cover.with-area': ({ material, areaM2 }, f) =>
    `Con ${f.say(material)}. Unos ${f.shortMeasure(areaM2, 'm²')}.`,
  'steps.cover.put-in': 'Antes, limpio, seco y frío.',
  'steps.cover.taped':
    'Antes, limpio, seco y frío; pegue los bordes con cinta para que nada se meta debajo.',
  'steps.cover.say': 'Está cubierto',

  'steps.mark.title': 'Marque los lugares de carne, de lácteos y neutros.',
  'steps.mark.meat': ({ fixture }) => `${fixture}: carne`,
  'steps.mark.dairy': ({ fixture }) => `${fixture}: lácteo`,
  'steps.mark.pareve': ({ fixture }) => `${fixture}: parve (neutro)`,
  'steps.mark.undecided': ({ fixture }) => `${fixture}: ¿carne, lácteo o neutro?`,
  'steps.mark.out-of-use': ({ fixture }) => `${fixture}: no usar hasta haber preguntado`,
  'steps.mark.say': 'Todo está marcado',

  'steps.open-question': ({ ask, untilThen }, f) =>
    `Sin respuesta todavía: ${f.say(ask)} Hasta entonces: ${f.say(untilThen)}`,
};
