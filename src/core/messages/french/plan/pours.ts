import type { pours as english } from '../../english/plan/pours.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { Formatter } from '../../model/message.ts';

type Amount = { litres: number; kettles: number };

function amount(
  { litres, kettles }: Amount,
  f: Pick<Formatter, 'number' | 'shortMeasure'>,
): string {
  return `${f.shortMeasure(litres, 'L', 1)}, ${f.number(kettles)} ${kettles === 1 ? 'bouilloire' : 'bouilloires'}`;
}

/** What boiling water does where it is poured, and what the litres rest on. */
export const pours: TranslationOf<typeof english> = {
  'plan.section.pours': 'Ce que fait l’eau',
  'plan.pour.reached': ({ fixture, firstTouchC, mostC, surfaceC }, f) =>
    `${fixture} : même au point le plus mal placé, le jet arrive à environ ${f.measure(firstTouchC, '°C')}, plus que l’avis le plus élevé sur la chaleur qui fait retirer la main (yad soledet bo, ${f.measure(mostC, '°C')}) ; la surface elle-même monte à environ ${f.measure(surfaceC, '°C')}.`,
  'plan.pour.reached-by-some': ({ fixture, lowC, leastC, mostC, surfaceC }, f) =>
    `${fixture} : au point le plus mal placé, le jet arrive à environ ${f.measure(lowC, '°C')}, parmi les avis sur la chaleur qui fait retirer la main (yad soledet bo, ${f.first(leastC, '°C')} à ${f.measure(mostC, '°C')}) et pas au-dessus du plus élevé : demandez lequel vous suivez ; la surface monte à environ ${f.measure(surfaceC, '°C')}.`,
  'plan.pour.heated': ({ fixture, surfaceC, firstTouchC }, f) =>
    `${fixture} : la surface a le temps de suivre l’eau, jusqu’à environ ${f.measure(surfaceC, '°C')} même au point le plus mal placé, que le jet touche d’abord à environ ${f.measure(firstTouchC, '°C')}.`,
  'plan.pour.amounts': ({ reached, heated, until }, f) =>
    `Jusqu’à ce que chaque point soit atteint : ${f.say(reached)}. Jusqu’à ce qu’il soit chauffé à cœur : ${f.say(heated)}. Prévu : ${f.say(until)}.`,
  'plan.pour.amount': (of, f) => amount(of, f),
  'plan.pour.until.reached': 'jusqu’à atteindre',
  'plan.pour.until.heated': 'jusqu’à chauffer à cœur',
  'plan.pour.wet': ({ wetFirstTouchC }, f) =>
    `Séchez d’abord : où il reste de l’eau, le jet touche à environ ${f.measure(wetFirstTouchC, '°C')}.`,
  'plan.pour.run-off': ({ runOffC, belowC }, f) =>
    `L’eau qui s’écoule ne suffit pas : elle quitte le jet à environ ${f.measure(runOffC, '°C')} et porte ce qui est plus bas à environ ${f.measure(belowC, '°C')}.`,
  'plan.pour.moves': 'Ce qui fait varier ces chiffres (tout ce qui est versé) :',
  'plan.pour.move': ({ what, less, more }, f) =>
    `${f.say(what)} : ${f.say(less)} ou ${f.say(more)}`,
  'plan.pour.move.flow': (_, f) =>
    `Jet de ${f.first(1.5, 'L', 1)} ou ${f.measure(2.5, 'L', 1)}/min`,
  'plan.pour.move.fall': (_, f) => `Versé de ${f.first(10, 'cm')} ou de ${f.measure(50, 'cm')}`,
  'plan.pour.move.thickness': 'Tôle ou dalle la plus mince ou la plus épaisse qui existe',
  'plan.pour.move.overlap': 'Chaque bande couvre 5 ou 30 % de la précédente',
  'plan.pour.move.loss': 'Rien, ou 15 % éclabousse et reste dans la bouilloire',
  'plan.pour.move.fresh': (_, f) => `Versé aussitôt, ou après une perte de ${f.measure(5, 'K')}`,
  'plan.pour.move.touch': (_, f) =>
    `La main se retire à ${f.first(45, '°C')} ou à ${f.measure(71, '°C')}`,
  'plan.pour.move.wet': 'Sec, ou un millimètre d’eau resté dessus',
};
