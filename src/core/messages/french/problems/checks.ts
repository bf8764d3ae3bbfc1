import type { checks as english } from '../../english/problems/checks.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Fields that are each in order and do not fit together. */
export const checks: TranslationOf<typeof english> = {
  'problems.mains.found': ({ country }) => `rien, et pas de tension usuelle pour "${country}"`,
  'problems.mains.allowed': ({ least, most, countries }) =>
    `un nombre de ${least} à ${most}, ou l’un des pays ${countries}`,
  'problems.mains.advice': 'Écrivez la tension du secteur, comme 120 ou 230.',
  'problems.vessel-power.none': 'aucune puissance (0 ou absente)',
  'problems.vessel-power.allowed': ({ leastW }) => `au moins ${leastW} W pour une électrique`,
  'problems.vessel-power.advice': 'Lisez les watts sur la plaque dessous.',

  'problems.reference.circuit.none': 'l’id d’un circuit ; ce fichier n’en a pas',
  'problems.reference.burner.none': 'l’id d’un foyer ; ce fichier n’en a pas',
  'problems.reference.cooktop.none': 'l’id d’une plaque de cuisson ; ce fichier n’en a pas',
  'problems.reference.part.none': 'une pièce de l’élément ; celui-ci n’en a pas',
  'problems.reference.part.describe': 'Omettez la pièce : la réponse vaut pour tout l’élément.',
  'problems.reference.part.allowed': ({ ids }, f) => `une pièce de l’élément : ${f.say(ids)}`,
  'problems.reference.fixture.none': 'l’id d’un élément ; ce fichier n’en a pas',
  'problems.reference.circuit.describe': 'Décrivez d’abord le circuit.',
  'problems.reference.burner.describe': 'Décrivez d’abord le foyer.',
  'problems.reference.cooktop.describe': 'Décrivez d’abord la plaque de cuisson.',
  'problems.reference.fixture.describe': 'Décrivez d’abord l’élément.',
  'problems.reference.circuit.allowed': ({ ids }, f) => `l’id d’un circuit : ${f.say(ids)}`,
  'problems.reference.burner.allowed': ({ ids }, f) => `l’id d’un foyer : ${f.say(ids)}`,
  'problems.reference.cooktop.allowed': ({ ids }, f) =>
    `l’id d’une plaque de cuisson : ${f.say(ids)}`,
  'problems.reference.fixture.allowed': ({ ids }, f) => `l’id d’un élément : ${f.say(ids)}`,
  'problems.reference.use-one': 'Utilisez l’un de ces id.',

  'problems.id-twice.found': ({ id, earlier }) => `"${id}", que ${earlier} porte déjà`,
  'problems.id-twice.allowed': 'un id que rien d’autre n’a dans le fichier',
  'problems.id-twice.advice': ({ example }) => `Donnez un autre id, comme "${example}".`,

  'problems.stove.burners': ({ ids }, f) => `l’id du foyer où elle est posée : ${f.say(ids)}`,
  'problems.stove.no-burners': 'l’id du foyer où elle est posée : aucun n’est décrit',
  'problems.stove.name': 'Nommez le foyer qui la chauffe.',
  'problems.stove.circuit': ({ kind }) => `un circuit pour un récipient de feu (${kind})`,
  'problems.stove.no-circuit': 'aucun circuit',
  'problems.stove.advice': 'Retirez le circuit, ou faites-en "electric-kettle" ou "urn".',
  'problems.electric.burner': ({ kind }) => `un foyer pour un récipient électrique (${kind})`,
  'problems.electric.no-burner': 'aucun foyer',
  'problems.electric.advice': 'Retirez le foyer, ou faites-en "stove-kettle" ou "pot".',

  'problems.answers.found': ({ fixture, earlier }) =>
    `une seconde réponse sur "${fixture}" (la première est overrides[${earlier}])`,
  'problems.answers.allowed': 'une réponse par élément',
  'problems.answers.advice': 'Gardez seulement la plus récente.',

  'problems.own-row.sephardic': ({ rows }, f) =>
    `une ligne de la coutume séfarade : ${f.say(rows)}`,
  'problems.own-row.ashkenazic': ({ rows }, f) =>
    `une ligne de la coutume ashkénaze : ${f.say(rows)}`,
  'problems.own-row.use-one': 'Utilisez l’une de ces lignes.',
  'problems.own-row.use-method': 'Utilisez l’une de ces méthodes pour cette ligne.',
  'problems.own-row-twice.found': ({ row, earlier }) =>
    `"${row}" une seconde fois (la première est changedRows[${earlier}])`,
  'problems.own-row-twice.allowed': 'chaque ligne une fois',
  'problems.own-row-twice.advice': 'Gardez seulement le changement le plus récent.',
  'problems.own-cover.allowed': ({ method }) => `true à côté de la méthode "${method}"`,
  'problems.own-cover.advice': 'Retirez "cover", ou choisissez une autre méthode.',

  'problems.corner-twice.found': ({ corner, next }) => `coins ${corner} et ${next} au même endroit`,
  'problems.corner-twice.allowed': 'chaque coin une fois',
  'problems.corner-twice.closes': 'Retirez le dernier coin : le contour se ferme seul.',
  'problems.corner-twice.take-out': ({ corner }) => `Retirez le coin ${corner}.`,
  'problems.spike.found': ({ corner }) => `un contour qui revient sur lui-même au coin ${corner}`,
  'problems.spike.allowed': 'des coins listés une fois autour de la surface',
  'problems.spike.advice': ({ corner }) => `Regardez le coin ${corner} et ses voisins.`,
  'problems.crossing.found': ({ first, second }) =>
    `des bords partant des coins ${first} et ${second} qui se croisent ou se touchent`,
  'problems.crossing.allowed': 'un contour qui ne se croise pas',
  'problems.crossing.advice':
    'Listez les coins dans l’ordre où vous les rencontrez en faisant le tour.',
  'problems.surface.found': ({ surfaceM2 }, f) => `une surface de ${f.measure(surfaceM2, 'm²', 4)}`,
  'problems.surface.allowed': ({ leastM2 }, f) =>
    `au moins ${f.shortMeasure(leastM2, 'm²', 4, 'up')}`,
  'problems.surface.advice':
    'Les longueurs sont en mètres, et les coins font une fois le tour de la surface.',

  'problems.box': ({ xMinM, xMaxM, yMinM, yMaxM }, f) =>
    `x de ${f.tape(xMinM, { decimals: 3, isShort: true })} à ${f.tape(xMaxM, { decimals: 3, isShort: true })}, y de ${f.tape(yMinM, { decimals: 3, isShort: true })} à ${f.tape(yMaxM, { decimals: 3, isShort: true })}`,
  'problems.hole.found': ({ box }, f) => `une découpe à ${f.say(box)}`,
  'problems.hole.allowed': ({ box }, f) => `dans le contour du plan de travail (${f.say(box)})`,
  'problems.hole.advice': 'Mesurez-la depuis le même coin que le plan de travail.',
  'problems.holes-overlap.found': ({ earlier }) => `une découpe par-dessus holes[${earlier}]`,
  'problems.holes-overlap.allowed': 'des découpes séparées',
  'problems.holes-overlap.advice': 'Dessinez une seule découpe pour les deux.',
  'problems.back-edge.corners': ({ last }) => `numéros de coin de 0 à ${last}`,
  'problems.back-edge.first': 'Le premier coin du contour est 0.',
  'problems.back-edge.neighbours': 'deux coins voisins du contour',
  'problems.back-edge.next': ({ from, next }) => `Après le coin ${from} vient le coin ${next}.`,
  'problems.bowls.found': ({ bowlsM2 }, f) =>
    `des cuves de ${f.measure(bowlsM2, 'm²', 2)} ensemble`,
  'problems.bowls.allowed': ({ outlineM2 }, f) =>
    `pas plus que le contour de l’évier, ${f.measure(outlineM2, 'm²', 2)}`,
  'problems.bowls.advice': 'Remesurez cuves et contour, en mètres.',
  'problems.burner-place.allowed': ({ box }, f) => `un point sur la plaque (${f.say(box)})`,
  'problems.burner-place.advice':
    'Mesurez le milieu du foyer dans la même vue de dessus que la plaque.',
  'problems.heights.allowed': ({ fromM }, f) => `plus de ${f.tape(fromM)}, son bord inférieur`,
  'problems.heights.advice': 'Mesurez les deux bords depuis le sol.',
  'problems.wall.needs-outline': 'un mur de room.outline, qui n’est pas indiqué',
  'problems.wall.tell-outline':
    'Indiquez les coins de la pièce dans room.outline, ou omettez ceci.',
  'problems.wall.fits': ({ leftM, lengthM, atM }, f) =>
    `au plus ${f.tape(leftM)} : le mur est long de ${f.tape(lengthM)}, et ceci commence à ${f.tape(atM)}`,
  'problems.wall.shorten':
    'Mesurez depuis le bout gauche du mur, tel que vous le voyez de la pièce.',

  'problems.lon-zone.found': ({ lonDeg, zone }) => `${lonDeg} avec le fuseau "${zone}"`,
  'problems.lon-zone.allowed': 'une longitude dans son fuseau, est positif, ouest négatif',
  'problems.lon-zone.advice': ({ meaning }, f) =>
    `${f.say(meaning)} Vérifiez son signe et le fuseau.`,
  'problems.lon-zone.wrong-hour': 'Les jours chômés commenceraient à une heure fausse.',
  'problems.lon-zone.sabbath': ({ wallMs, zone }, f) =>
    `Le Chabbat commencerait ${f.shortMoment(wallMs, zone)}.`,
};
