import type { Formatter } from '../../model/message.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { pours as english } from '../../english/plan/pours.ts';

type Amount = { litres: number; kettles: number };

function amount({ litres, kettles }: Amount, f: Formatter): string {
  return `${f.shortMeasure(litres, 'L', 1)}, ${f.number(kettles)} ${f.plural(kettles, { one: 'hervidor', other: 'hervidores' })}`;
}

/** What boiling water does where it is poured, and what the litres rest on. */
export const pours: TranslationOf<typeof english> = {
  'plan.section.pours': 'Qué hace el agua',
  'plan.pour.reached': ({ fixture, firstTouchC, surfaceC, mostC }, f) =>
    `${fixture}: el chorro llega hasta al punto peor situado a unos ${f.measure(firstTouchC, '°C')}, por encima de la opinión más alta sobre el calor del que la mano se retira (yad soledet bo, ${f.measure(mostC, '°C')}); la superficie misma llega a unos ${f.measure(surfaceC, '°C')}.`,
  'plan.pour.reached-by-some': ({ fixture, lowC, surfaceC, leastC, mostC }, f) =>
    `${fixture}: el chorro llega al punto peor situado a unos ${f.measure(lowC, '°C')}, dentro de las opiniones sobre el calor del que la mano se retira (yad soledet bo, de ${f.first(leastC, '°C')} a ${f.measure(mostC, '°C')}) y no por encima de la más alta: pregunte cuál sigue; la superficie misma llega a unos ${f.measure(surfaceC, '°C')}.`,
  'plan.pour.heated': ({ fixture, surfaceC, firstTouchC }, f) =>
    `${fixture}: la superficie tiene tiempo de seguir al agua, hasta unos ${f.measure(surfaceC, '°C')} incluso en el punto peor situado, al que el chorro llega primero a unos ${f.measure(firstTouchC, '°C')}.`,
  'plan.pour.amounts': ({ until, reached, heated }, f) =>
    `Hasta llegar a cada punto: ${f.say(reached)}. Hasta calentar todo el espesor: ${f.say(heated)}. Planificado: ${f.say(until)}.`,
  'plan.pour.amount': (of, f) => amount(of, f),
  'plan.pour.until.reached': 'hasta llegar a cada punto',
  'plan.pour.until.heated': 'hasta calentar todo el espesor',
  'plan.pour.wet': ({ wetFirstTouchC }, f) =>
    `Séquelo antes: donde queda agua, el chorro llega primero a unos ${f.measure(wetFirstTouchC, '°C')}.`,
  'plan.pour.run-off': ({ runOffC, belowC }, f) =>
    `El agua que escurre no basta: deja el chorro a unos ${f.measure(runOffC, '°C')} y lleva lo de más abajo a unos ${f.measure(belowC, '°C')}.`,
  'plan.pour.moves': 'Qué cambia estas cifras (todo lo que se vierte):',
  'plan.pour.move': ({ what, less, more }, f) => `${f.say(what)}: ${f.say(less)} o ${f.say(more)}`,
  'plan.pour.move.flow': (_, f) =>
    `Chorro de ${f.first(1.5, 'L', 1)} o de ${f.measure(2.5, 'L', 1)}/min`,
  'plan.pour.move.fall': (_, f) =>
    `Vertido desde ${f.first(10, 'cm')} o desde ${f.measure(50, 'cm')}`,
  'plan.pour.move.thickness': 'Chapa o losa tan fina o tan gruesa como se fabrica',
  'plan.pour.move.overlap': 'Cada franja cubre un 5 o un 30 % de la anterior',
  'plan.pour.move.loss': 'Nada o un 15 % salpica y queda en el hervidor',
  'plan.pour.move.fresh': (_, f) => `Vertido enseguida, o cuando ha perdido ${f.measure(5, 'K')}`,
  'plan.pour.move.touch': (_, f) =>
    `La mano se retira a ${f.first(45, '°C')} o a ${f.measure(71, '°C')}`,
  'plan.pour.move.wet': 'Seco, o con un milímetro de agua encima',
};
