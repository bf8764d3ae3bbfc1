import type { charts as english } from '../../english/plan/charts.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { Formatter } from '../../model/message.ts';

function litText(burners: number, f: Formatter): string {
  return burners === 1 ? 'un foyer allumé' : `${f.number(burners)} foyers allumés`;
}

/** Courses of heat and air, drawn on the page of the plan. */
export const charts: TranslationOf<typeof english> = {
  'plan.chart.unit.temperature': (_, f) => f.unitName('°C'),
  'plan.chart.unit.concentration': 'mg/m³',
  'plan.chart.moment.off': 'éteint',
  'plan.chart.moment.lit': 'foyers allumés',

  'plan.chart.boil.title': ({ vessel }, f) => `Ébullition : ${f.say(vessel)}`,
  'plan.chart.boil.says': ({ litres }, f) =>
    `${f.fill(litres, true)}, du robinet aux gros bouillons.`,
  'plan.chart.boil.says-calibrated': ({ litres }, f) =>
    `${f.fill(litres, true)}, du robinet aux gros bouillons. La courbe est calculée ; les moments viennent de votre dernier chantier.`,
  'plan.chart.boil.water': 'Eau',
  'plan.chart.boil.boils-here': 'Bout ici',
  'plan.chart.boil.soonest': 'au plus tôt',
  'plan.chart.boil.about': 'environ',
  'plan.chart.boil.latest': 'au plus tard',

  'plan.chart.after-boil.title': ({ vessel }, f) => `Après l’ébullition : ${f.say(vessel)}`,
  'plan.chart.after-boil.says': ({ dropK }, f) =>
    `Sa dernière goutte tombe avant une perte de ${f.measure(dropK, 'K')}. Le plan compte avec la plus rapide des deux ; une bouilloire qui se vide refroidit plus vite que celles-ci, qui restent pleines.`,
  'plan.chart.after-boil.loses-much': 'Une bouilloire qui perd beaucoup',
  'plan.chart.after-boil.loses-little': 'Une bouilloire qui perd peu',
  'plan.chart.after-boil.boil-again': 'En dessous, refaire bouillir',
  'plan.chart.after-boil.pour-by': 'dernière goutte avant',

  'plan.chart.glow.title': ({ burnerType }, f) => `Rouge et refroidissement : ${f.say(burnerType)}`,
  'plan.chart.glow.says': ({ visible, holdS }, f) =>
    `${f.say(visible)} Le maintien de ${f.duration(holdS)} commence quand vous dites qu’il est rouge ; le dessin le commence à pleine chaleur.`,
  'plan.chart.glow.line': 'Ce qui rougit',
  'plan.chart.glow.first-red': 'Premier rouge, dans le noir',
  'plan.chart.glow.seen': 'rouge vu',
  'plan.chart.burner.electric-coil': 'spirale électrique',
  'plan.chart.burner.solid-plate': 'plaque de fonte',
  'plan.chart.burner.radiant-glass': 'radiant sous verre',
  'plan.chart.burner.gas-sealed': 'gaz, fermé',
  'plan.chart.burner.gas-open': 'gaz, ouvert',
  'plan.chart.burner.gas-wok': 'gaz, wok',
  'plan.chart.burner.commercial-open': 'professionnel ouvert',
  'plan.chart.burner.portable-plate': 'plaque portable',

  'plan.chart.room.title': 'La cuisine, chaleur ressentie',
  'plan.chart.room.outside': ({ burners, outdoorC, oven }, f) =>
    `Avec ${litText(burners, f)} à la fois, l’un après l’autre, hotte et fenêtre comme indiqué, ${f.measure(outdoorC, '°C')} dehors${oven ? ', après la chaleur du four' : ''}. Température et humidité ensemble (indice de chaleur).`,
  'plan.chart.room.planned': ({ burners }, f) => `Prévu : ${litText(burners, f)}`,
  'plan.chart.room.bad-end': 'Prévu, au pire',
  'plan.chart.room.one-more': 'Un foyer de plus',
  'plan.chart.room.shut': 'Hotte arrêtée, fenêtre fermée',
  'plan.chart.room.extreme-caution': 'Prudence extrême',
  'plan.chart.room.danger': 'Danger',
  'plan.chart.air.title': 'Dioxyde d’azote du gaz',
  'plan.chart.co.title': 'Monoxyde de carbone du gaz',
  'plan.chart.air.by-bad-end': ({ burners }, f) =>
    `Avec ${litText(burners, f)} à la fois, l’un après l’autre. Le plan suit le pire : flamme sale, mauvaise hotte, air immobile. Une courbe au-dessus de la limite une heure entière est de trop ; rien ici ne dit que l’air est sûr.`,
  'plan.chart.air.limit': 'Limite, moyenne sur une heure',
};
