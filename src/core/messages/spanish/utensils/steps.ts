import type { TranslationOf } from '../../model/translation.ts';
import type { utensilSteps as english } from '../../english/utensils/steps.ts';

/** Utensils as steps of the run: batches, pots, heat, soaking. */
export const utensilSteps: TranslationOf<typeof english> = {
  'utensils.all': 'Utensilios',

  'cautions.dip-pot.say':
    'Pinzas largas o red de mango largo, cara y brazos a un lado de la olla, baje despacio y no la deje sola mientras hierve: salpica, y su vapor escalda.',

  'utensils.step.clean': 'Lave los utensilios.',
  'utensils.step.clean-these': ({ items }, f) =>
    `Lave ${f.list(items.map((item) => f.say(item)))}.`,
  'utensils.step.joints':
    'Abra lo que se abra: fuera óxido, etiquetas, grasa y pegamento, también en los mangos.',
  'utensils.step.soak-first': ({ items }, f) =>
    `Una vez lavados, ponga estos en agua fría, por completo bajo el agua: ${f.list(items.map((item) => f.say(item)))}.`,
  'utensils.step.put-away': ({ items }, f) =>
    `Aquí no se kasheriza, aparte o reemplace: ${f.list(items.map((item) => f.say(item)))}.`,

  'utensils.step.boil': ({ vessel, group }, f) =>
    `Hierva agua nueva para utensilios, ${f.say(group)}: ${f.say(vessel)}.`,
  'utensils.step.lid':
    'Tapa puesta hasta que hierva; al quitarla, inclínela de modo que el vapor salga lejos de usted.',
  'utensils.step.boil-ask': '¿Hierve el agua a borbotones?',
  'utensils.step.overflow': ({ burner }) =>
    `Llene la olla hasta el borde, apague el quemador ${burner} y baje despacio dentro un acero limpio y caliente hasta que rebose por todo el borde.`,
  'utensils.step.overflow-hob':
    'Ahí mismo: nadie la lleva llena. Échese atrás, y seque la placa antes de encenderla otra vez.',
  'utensils.step.empty':
    'Saque el agua en pequeñas cantidades; nunca lleve la olla llena y caliente.',

  'utensils.step.batch': ({ number, of, group }, f) =>
    `Sumerja la tanda ${f.number(number)} de ${f.number(of)}: ${f.say(group)}.`,
  'utensils.step.top-up': ({ litres }, f) =>
    `Complete la olla hasta ${f.fill(litres)} y espere a que hierva a borbotones.`,
  'utensils.step.lower': 'Bájelo al agua hirviendo hasta que lo cubra por completo.',
  'utensils.step.under': 'Está bajo el agua',
  'utensils.step.under-ask': '¿Quedó todo por completo bajo el agua hirviendo?',
  'utensils.step.again': 'Déjelo bajo el agua hasta que vuelva a hervir.',
  'utensils.step.drop': ({ mixedC, recoverS }, f) =>
    `El agua baja a unos ${f.measure(mixedC, '°C', 1)} y vuelve a hervir tras ${f.about(recoverS.typical)}, como mucho ${f.about(recoverS.high)}.`,
  'utensils.step.again-say': 'Hierve de nuevo',
  'utensils.step.again-ask': '¿Volvió a hervir el agua con las cosas dentro?',
  'utensils.step.turn': 'Levántelo, gírelo en las pinzas y bájelo otra vez.',
  'utensils.step.other-half':
    'Levántelo, sujételo por la mitad que estuvo dentro y baje la otra, hasta pasar un poco el centro.',
  'utensils.step.one-by-one':
    'Uno por uno: bajo el agua hasta que hierva de nuevo, girar, y otra vez bajo el agua hasta que hierva de nuevo.',
  'utensils.step.each-cold': 'Cada uno pasa de la olla directamente al agua fría.',
  'utensils.step.all-twice': 'Todos entraron dos veces',
  'utensils.step.dips-expect': ({ isAhead }) =>
    isAhead ? 'Hasta sumergirlos todos (previsto)' : 'Todos sumergidos más o menos ahora',
  'utensils.step.cold': 'De la olla al agua fría, enseguida.',
  'utensils.step.next-batch': ({ burner }) =>
    `La próxima tanda sigue en la misma agua. Quien pare aquí apaga el quemador ${burner}.`,
  'utensils.step.off': ({ burner }) => `Apague el quemador ${burner}.`,
  'utensils.step.off-say': 'Está apagado',

  'utensils.step.own-rim': ({ name, piece, of }, f) =>
    `Kasherice haciendo rebosar: ${f.say(name)}${of > 1 ? `, ${piece} de ${of}` : ''}.`,
  'utensils.step.own-rim-fill': ({ burner }) =>
    `Llene hasta dos dedos por debajo del borde y encienda debajo el quemador ${burner}.`,
  'utensils.step.own-rim-safe': ({ burner }) =>
    `Apague el quemador ${burner} y deje la olla encima, sin moverla.`,
  'utensils.step.outside': 'Si su exterior tocó comida caliente, esto no basta: pregunte.',

  'utensils.step.glow-title': 'Caliente utensilios hasta que estén al rojo.',
  'utensils.step.light-title':
    'Caliente utensilios hasta que la paja se chamusque por el otro lado.',
  'utensils.step.glow': ({ burner }) =>
    `Uno por uno sobre el quemador ${burner} al máximo, hasta que cada parte haya estado al rojo.`,
  'utensils.step.light-heat': ({ burner }) =>
    `Uno por uno sobre el quemador ${burner}, hasta que paja o papel se chamusque por el otro lado.`,
  'utensils.step.fire-tongs':
    'Pinzas largas, guantes secos. Quema mucho tiempo después de perder el rojo: déjelo sobre acero o piedra, y no toque nada.',
  'utensils.step.glowed': 'Todos estuvieron al rojo',
  'utensils.step.scorched': 'Se chamuscó en todos',

  'utensils.step.soak': ({ day, of }) => `Remoje en agua fría: día ${day} de ${of}.`,
  'utensils.step.soak-under': 'Por completo bajo el agua; nada más en esa agua.',
  'utensils.step.soak-timer': ({ day, of }) => `En remojo, día ${day} de ${of}`,
  'utensils.step.change': 'Tire el agua y llene con agua fría nueva.',
  'utensils.step.change-say': 'Cambiada',
  'utensils.step.soaked': 'Sáquelos del agua y enjuáguelos.',
  'utensils.step.soaked-say': 'Enjuagados',
};
