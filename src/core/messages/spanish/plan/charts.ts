import type { Formatter } from '../../model/message.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { charts as english } from '../../english/plan/charts.ts';

function litText(burners: number, f: Formatter): string {
  return burners === 1 ? 'un quemador encendido' : `${f.number(burners)} quemadores encendidos`;
}

/** Courses of heat and air, drawn on the page of the plan. */
export const charts: TranslationOf<typeof english> = {
  'plan.chart.unit.temperature': (_, f) => f.unitName('°C'),
  'plan.chart.unit.concentration': 'mg/m³',
  'plan.chart.moment.off': 'apagado',
  'plan.chart.moment.lit': 'quemadores encendidos',

  'plan.chart.boil.title': ({ vessel }, f) => `Hervor: ${f.say(vessel)}`,
  'plan.chart.boil.says': ({ litres }, f) =>
    `${f.fill(litres, true)} del grifo al hervor a borbotones.`,
  'plan.chart.boil.says-calibrated': ({ litres }, f) =>
    `${f.fill(litres, true)} del grifo al hervor a borbotones. La línea está calculada; los momentos son de su último trabajo.`,
  'plan.chart.boil.water': 'Agua',
  'plan.chart.boil.boils-here': 'Aquí hierve',
  'plan.chart.boil.soonest': 'como pronto',
  'plan.chart.boil.about': 'aprox.',
  'plan.chart.boil.latest': 'como tarde',

  'plan.chart.after-boil.title': ({ vessel }, f) => `Después de hervir: ${f.say(vessel)}`,
  'plan.chart.after-boil.says': ({ dropK }, f) =>
    `Su última gota cae antes de que haya perdido ${f.measure(dropK, 'K')}. El plan cuenta con la más rápida de las dos líneas; un hervidor que se vacía se enfría antes que estos, que siguen llenos.`,
  'plan.chart.after-boil.loses-much': 'Un hervidor que pierde mucho',
  'plan.chart.after-boil.loses-little': 'Un hervidor que pierde poco',
  'plan.chart.after-boil.boil-again': 'Por debajo, hervir de nuevo',
  'plan.chart.after-boil.pour-by': 'última gota antes de',

  'plan.chart.glow.title': ({ burnerType }, f) => `Al rojo y enfriamiento: ${f.say(burnerType)}`,
  'plan.chart.glow.says': ({ visible, holdS }, f) =>
    `${f.say(visible)} Los ${f.duration(holdS)} al rojo empiezan cuando usted dice que está al rojo; en el dibujo empiezan con el calor máximo.`,
  'plan.chart.glow.line': 'Lo que está al rojo',
  'plan.chart.glow.first-red': 'Primer rojo a oscuras',
  'plan.chart.glow.seen': 'rojo visto',
  'plan.chart.burner.electric-coil': 'espiral eléctrica',
  'plan.chart.burner.solid-plate': 'disco macizo',
  'plan.chart.burner.radiant-glass': 'vitrocerámica radiante',
  'plan.chart.burner.gas-sealed': 'gas sellado',
  'plan.chart.burner.gas-open': 'gas abierto',
  'plan.chart.burner.gas-wok': 'gas wok',
  'plan.chart.burner.commercial-open': 'industrial abierto',
  'plan.chart.burner.portable-plate': 'placa portátil',

  'plan.chart.room.title': 'La cocina, tal como se siente',
  'plan.chart.room.outside': ({ burners, outdoorC, oven }, f) =>
    `Con ${litText(burners, f)} a la vez, uno tras otro, campana y ventana como se indicaron, ${f.measure(outdoorC, '°C')} fuera${oven ? ', después del calor del horno' : ''}. Temperatura y humedad juntas (índice de calor).`,
  'plan.chart.room.planned': ({ burners }, f) => `Según el plan: ${litText(burners, f)}`,
  'plan.chart.room.bad-end': 'Según el plan, en el peor caso',
  'plan.chart.room.one-more': 'Un quemador más',
  'plan.chart.room.shut': 'Campana apagada, ventana cerrada',
  'plan.chart.room.extreme-caution': 'Precaución extrema',
  'plan.chart.room.danger': 'Peligro',
  'plan.chart.air.title': 'Dióxido de nitrógeno del gas',
  'plan.chart.co.title': 'Monóxido de carbono del gas',
  'plan.chart.air.by-bad-end': ({ burners }, f) =>
    `Con ${litText(burners, f)} a la vez, uno tras otro. El plan se guía por el peor caso: llama sucia, campana floja, aire quieto. Una línea por encima del límite una hora entera es demasiado; la aplicación nunca dice que el aire es seguro.`,
  'plan.chart.air.limit': 'Límite para la media de una hora',
};
