import type { warnings as english } from '../../english/problems/warnings.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What a household should look at although the file is used. */
export const warnings: TranslationOf<typeof english> = {
  'problems.load.one.found': ({ vessel, drawA }, f) =>
    `"${vessel}", qui demande ${f.number(drawA, 1)} A`,
  'problems.load.one.allowed': ({ ratingA }) => `au plus ${ratingA} A`,
  'problems.load.one.advice':
    'Cela ferait sauter le disjoncteur : prenez un autre circuit ou un appareil plus faible.',
  'problems.load.several.found': ({ count, circuit, togetherA }, f) =>
    `${f.number(count)} sur "${circuit}", ${f.number(togetherA, 1)} A ensemble`,
  'problems.load.several.allowed': ({ ratingA }) => `au plus ${ratingA} A à la fois`,
  'problems.load.several.advice': 'Ils ne peuvent y bouillir en même temps ; le plan les alterne.',
  'problems.voltage.found': ({ ratedV, voltsV }) => `${ratedV} V sur un circuit de ${voltsV} V`,
  'problems.voltage.allowed': ({ voltsV }) => `environ ${voltsV} V`,
  'problems.voltage.advice': 'Relisez la plaque dessous.',
  'problems.utensil-material.allowed': ({ materials }) => `l’une de ${materials} pour ce genre`,
  'problems.utensil-material.advice': 'Regardez encore, ou indiquez un autre genre.',
  'problems.utensil-mass.allowed': ({ mostKg }, f) =>
    `au plus ${f.shortMeasure(mostKg, 'kg', 3, 'down')} pour sa taille`,
  'problems.utensil-mass.advice': 'De l’argent massif pèserait moins : repesez ou remesurez.',
  'problems.no-fixtures.allowed': 'au moins un élément à planifier',
  'problems.no-fixtures.advice':
    'Décrivez ce qu’il y a dans la cuisine ; d’ici là il n’y a rien à planifier.',
  'problems.no-vessels.allowed': 'au moins une bouilloire, fontaine à eau chaude ou marmite',
  'problems.no-vessels.advice':
    'Décrivez ce qui fait bouillir l’eau, sinon on ne peut rien verser.',
  'problems.unplugged.found': 'rien',
  'problems.unplugged.allowed': 'l’id d’un circuit',
  'problems.unplugged.advice':
    'Dites sur quel circuit elle est branchée, sinon sa charge n’est pas surveillée.',
  'problems.hood-flow.allowed': 'le débit d’une hotte vers l’extérieur en L/s',
  'problems.hood-flow.advice': 'Lisez le débit dans la notice ; d’ici là elle compte comme aucune.',
  'problems.hood-kind.found': ({ flowLS }, f) =>
    `"none" avec un débit de ${f.shortMeasure(flowLS, 'L/s', 3)}`,
  'problems.hood-kind.allowed': 'un genre de hotte',
  'problems.hood-kind.advice': 'Dites "vented" ou "recirculating", ou retirez le débit.',
  'problems.room-small.found': ({ volumeM3 }, f) =>
    `une pièce de ${f.shortMeasure(volumeM3, 'm³', 1)}`,
  'problems.room-small.allowed': ({ leastM3 }, f) => `${f.measure(leastM3, 'm³', 0, 'up')} ou plus`,
  'problems.room-small.advice':
    'Remesurez sol et plafond ; pour une pièce plus petite, chaleur et air ne sont pas calculés.',
  'problems.last-hot.zone.allowed':
    'un dernier usage à chaud dans une cuisine qui indique son lieu',
  'problems.last-hot.zone.advice':
    'Ajoutez le lieu : d’ici là personne ne sait quel moment c’est, et chaque repos compte depuis son nettoyage.',
  'problems.cycle.found': ({ cycleMin }) => `${cycleMin} pour un four qui ne se nettoie pas`,
  'problems.cycle.allowed': 'aucun cycle',
  'problems.cycle.advice': 'Retirez-le, ou dites "pyrolytic" si le four a un tel cycle.',
  'problems.own-rests.found': ({ name, basedOn, followed }) =>
    `"${name}", copiée de ${basedOn}, alors que la maisonnée suit ${followed}`,
  'problems.own-rests.advice': ({ basedOn }) =>
    `Elle est gardée sans être utilisée ; suivez de nouveau ${basedOn} pour l’utiliser.`,
  'problems.unusual-answer.found': ({ method, fixture }) => `"${method}" pour "${fixture}"`,
  'problems.unusual-answer.advice':
    'Redemandez si c’était bien voulu ; le plan la suit autant qu’il peut.',
};
