import type { TranslationOf } from '../../model/translation.ts';
import type { choices as english } from '../../english/survey/choices.ts';

/**
 * What a household chooses among, and how to know each by eye, fingernail or
 * magnet; most names are in the common section. Common practice, no published source.
 */
export const choices: TranslationOf<typeof english> = {
  'survey.material.stainless-steel': 'Metal gris por todas partes; suena al golpearlo.',
  'survey.material.cast-iron': 'Negro, pesado, áspero; el imán se pega fuerte.',
  'survey.material.enamelled-steel':
    'Capa vítrea sobre metal; el imán se pega, los desconchados muestran metal oscuro.',
  'survey.material.porcelain': 'Blanca, vítrea y gruesa; el imán no se pega.',
  'survey.material.ceramic': 'Barro cocido con esmalte; un desconchado muestra un interior mate.',
  'survey.material.glass': 'Claro o de color, frío a la mano, canto verde.',
  'survey.material.glass-ceramic': 'Vidrio plano y oscuro de una placa.',
  'survey.material.granite': 'Piedra moteada, sin dos puntos iguales; una llave no la raya.',
  'survey.material.marble': 'Piedra veteada; pierde brillo donde hubo jugo de limón.',
  'survey.material.soapstone': 'Gris y sedosa; la uña casi la marca.',
  'survey.material.concrete': 'Gris, con poros finos; absorbe agua si no está sellado.',
  'survey.material.quartz-composite':
    'Granos iguales en resina; por debajo es liso y del mismo material.',
  'survey.material.acrylic': 'Tibio a la mano, sin juntas, se lija como plástico duro.',
  'survey.material.laminate': 'Lámina impresa fina sobre tablero; una línea marrón en el canto.',
  'survey.material.wood': 'Barnizada o aceitada; una gota de agua queda encima.',
  'survey.material.raw-wood': 'Una gota de agua entra y deja una mancha oscura.',
  'survey.material.tile': 'Cuadros esmaltados con líneas de junta entre ellos.',
  'survey.material.plastic': 'Ligero, tibio a la mano, cede bajo la uña.',
  'survey.material.silicone': 'Blanda y gomosa.',
  'survey.material.unknown': 'El plan toma el modo más estricto y anota la pregunta.',

  'survey.condition.smooth': 'Al pasar la uña no se engancha nunca.',
  'survey.condition.scratched': 'La uña se engancha en líneas que se ven.',
  'survey.condition.cracked': 'Una línea entra hondo, o falta un trozo.',
  'survey.condition.porous': 'Una gota de agua la oscurece en un minuto.',
  'survey.condition.unknown': 'Mírelo antes del plan: puede cambiar el modo.',

  'survey.burner-type.electric-coil': 'Una espiral descubierta que se pone roja.',
  'survey.burner-type.solid-plate': 'Un disco de hierro cerrado; no se pone rojo.',
  'survey.burner-type.radiant-glass': 'Se ve rojo a través de un vidrio oscuro.',
  'survey.burner-type.induction':
    'Nunca se pone al rojo; calienta solo ollas en las que se pega un imán.',
  'survey.burner-type.gas-sealed': 'Llama sobre una superficie cerrada.',
  'survey.burner-type.gas-open': 'Se puede mirar hacia abajo junto al quemador.',
  'survey.burner-type.gas-wok': 'Un aro grande, a menudo dos llamas una dentro de otra.',
  'survey.burner-type.commercial-open': 'Cabezas pesadas de hierro, de una cocina industrial.',
  'survey.burner-type.portable-plate': 'Va sobre la encimera, con su propio enchufe.',

  'survey.cleaning.pyrolytic.name': 'Autolimpieza con calor',
  'survey.cleaning.pyrolytic.tell': (_, f) =>
    `Bloquea la puerta y calienta horas; el manual dice “pirolítico” o “autolimpieza”, unos ${f.measure(450, '°C')} o más.`,
  'survey.cleaning.steam.name': 'Limpieza con vapor',
  'survey.cleaning.steam.tell':
    'Agua en el suelo, media hora, sin bloqueo. La limpieza con vapor no kasheriza.',
  'survey.cleaning.catalytic.name': 'Revestimiento catalítico',
  'survey.cleaning.catalytic.tell':
    'Paredes grises y ásperas que “se limpian solas” al hornear. Tampoco kasheriza.',
  'survey.cleaning.none.name': 'Ninguna',
  'survey.cleaning.none.tell': 'Se limpia solo a mano.',

  'survey.hood.none.name': 'Sin campana',
  'survey.hood.none.tell': 'Nada aspira sobre los quemadores.',
  'survey.hood.recirculating.name': 'De recirculación',
  'survey.hood.recirculating.tell':
    'Devuelve el aire al local por un filtro. No elimina ni gas ni calor.',
  'survey.hood.vented.name': 'Al exterior',
  'survey.hood.vented.tell': 'Un conducto sale fuera; en un día frío se nota en la pared.',

  'survey.vessel-kind.electric-kettle': 'Hervidor eléctrico',
  'survey.vessel-kind.stove-kettle': 'Hervidor de fogón',
  'survey.vessel-kind.urn': 'Termo de agua',
  'survey.vessel-kind.pot': 'Olla',

  'survey.body.steel': 'Acero',
  'survey.body.plastic': 'Plástico',
  'survey.body.glass': 'Vidrio',
  'survey.body.double-wall': 'Doble pared',
  'survey.body.enamel': 'Esmalte',

  'survey.surface.metal': 'Metal',
  'survey.surface.enamel': 'Esmalte',
  'survey.surface.glass-ceramic': 'Vidrio',

  'survey.purpose.new-kitchen': 'No era kosher, o nadie lo sabe.',
  'survey.purpose.passover': 'Es kosher y se prepara para la fiesta.',
  'survey.purpose.mix-up': 'Se juntaron carne y lácteo, o se cocinó algo dudoso.',

  'survey.heat.electric': 'Electricidad',
  'survey.heat.gas': 'Gas',
  'survey.racks.out': 'Se sacan',
  'survey.racks.in': 'Pueden quedar dentro',
  'survey.turn.left': 'girar a la izquierda',
  'survey.turn.straight': 'seguir recto',
  'survey.turn.right': 'girar a la derecha',
  'survey.land.israel': 'la tierra de Israel',
  'survey.land.diaspora': 'la diáspora',
  'survey.rest-days.yes': 'Ni trabajo ni sonido',
  'survey.rest-days.no': 'Planificar también en ellos',
  'survey.yes': 'Sí',
  'survey.no': 'No',
};
