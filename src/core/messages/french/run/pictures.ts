import type { pictures as english } from '../../english/run/pictures.ts';
import type { TranslationOf } from '../../model/translation.ts';
import { crew } from './crew.ts';

/** Pictures, in words for those who do not see them, and the few words in them; what a fixture is and where it stands. */
export const pictures: TranslationOf<typeof english> = {
  ...crew,
  'common.fixture-phase.to-clean': 'à nettoyer',
  'common.fixture-phase.resting': 'au repos',
  'common.fixture-phase.ready': 'prêt',
  'common.fixture-phase.purging': 'en cours',
  'common.fixture-phase.hot': 'chaud',
  'common.fixture-phase.not-purged': 'non cachérisé',
  'common.fixture-phase.left-out': 'laissé de côté',
  'common.fixture-phase.done': 'fait',
  'common.fixture-phase.covered': 'couvert',

  'common.fixture-kind.counter': 'plan de travail',
  'common.fixture-kind.sink': 'évier',
  'common.fixture-kind.cooktop': 'plaque de cuisson',
  'common.fixture-kind.oven': 'four',
  'common.fixture-kind.table': 'table',
  'common.fixture-kind.cupboard': 'placard',
  'common.fixture-kind.drawer': 'tiroir',
  'common.fixture-kind.fridge': 'frigo',
  'common.fixture-kind.freezer': 'congélateur',
  'common.fixture-kind.microwave': 'micro-ondes',
  'common.fixture-kind.dishwasher': 'lave-vaisselle',
  'common.fixture-kind.warming-drawer': 'tiroir chauffant',
  'common.fixture-kind.hood': 'hotte',

  'run.picture.kitchen': ({ fixtures }, f) =>
    `Cuisine vue d’en haut. ${fixtures.map((one) => f.say(one)).join(' ; ')}.`,
  'run.picture.fixture': ({ name, phase }, f) => `${name} : ${f.say(phase)}`,
  'run.picture.burner': ({ name }) => `Foyer ${name}`,
  'run.picture.kettle': ({ litres, markLitres }, f) =>
    `Remplissez à ${f.fill(litres)} ; le repère est à ${f.fill(markLitres)}`,
  'run.picture.kettle.litres': ({ litres }, f) => f.fill(litres, true),
  'run.picture.batch': ({ items }, f) =>
    `Dans la marmite : ${f.list(items.map((item) => f.say(item)))}`,
  'run.picture.batch.count': ({ count }, f) => `${f.number(count)} ×`,
  'run.batches': 'Lots',
  'run.batches.line': ({ done, of }, f) =>
    `Lots : ${f.number(done)} sur ${f.number(of)} ${f.plural(done, { one: 'fait', other: 'faits' })}`,
  'run.batches.state.done': 'fait',
  'run.batches.state.now': 'maintenant',
  'run.batches.state.next': 'le suivant',
  'run.batches.state.to-come': 'à venir',
  'run.batches.state.left-out': 'laissé de côté',
  'run.picture.lanes': ({ kettles }, f) =>
    `Bandes de versement du fond vers l’avant, en ${f.number(kettles)} ${f.plural(kettles, { one: 'bouilloire', other: 'bouilloires' })}.`,
  'run.picture.lanes-of': ({ kettles, kettle }, f) =>
    `Bandes de versement du fond vers l’avant, en ${f.number(kettles)} ${f.plural(kettles, { one: 'bouilloire', other: 'bouilloires' })} ; la bouilloire ${f.number(kettle)} est marquée.`,
  'run.picture.sink': 'Ordre du versement, du haut vers le bas',
  'run.picture.sink.kettle': ({ kettle }, f) => `bouilloire ${f.number(kettle)}`,
  'run.picture.oven.stage': ({ name, lengthS }, f) => `${f.say(name)} ${f.duration(lengthS)}`,
  'run.picture.oven': ({ stages }, f) => stages.map((one) => f.say(one)).join(', '),
  'run.picture.oven.now': 'maintenant',
  'run.pour.left': ({ litres }, f) => `reste ${f.fill(litres, true)}`,
  'run.pour.pace': ({ cmPerS }, f) => `environ ${f.measure(cmPerS, 'cm')} par seconde`,
  'run.picture.stand': 'Vous êtes ici',
  'run.picture.time': ({ lengthS }, f) => f.duration(lengthS),
};
