import type { TranslationOf } from '../../model/translation.ts';
import type { pictures as english } from '../../english/run/pictures.ts';
import { crew } from './crew.ts';

/** Pictures, in words for those who do not see them, and the few words in them; what a fixture is and where it stands. */
export const pictures: TranslationOf<typeof english> = {
  ...crew,
  'common.fixture-phase.to-clean': 'por limpiar',
  'common.fixture-phase.resting': 'en reposo',
  'common.fixture-phase.ready': 'a punto',
  'common.fixture-phase.purging': 'en curso',
  'common.fixture-phase.hot': 'caliente',
  'common.fixture-phase.not-purged': 'sin kasherizar',
  'common.fixture-phase.left-out': 'fuera del plan',
  'common.fixture-phase.done': 'hecho',
  'common.fixture-phase.covered': 'con cubierta',

  'common.fixture-kind.counter': 'encimera',
  'common.fixture-kind.sink': 'fregadero',
  'common.fixture-kind.cooktop': 'placa de cocción',
  'common.fixture-kind.oven': 'horno',
  'common.fixture-kind.table': 'mesa',
  'common.fixture-kind.cupboard': 'armario',
  'common.fixture-kind.drawer': 'cajón',
  'common.fixture-kind.fridge': 'refrigerador',
  'common.fixture-kind.freezer': 'congelador',
  'common.fixture-kind.microwave': 'microondas',
  'common.fixture-kind.dishwasher': 'lavavajillas',
  'common.fixture-kind.warming-drawer': 'cajón calientaplatos',
  'common.fixture-kind.hood': 'campana',

  'run.picture.kitchen': ({ fixtures }, f) =>
    `Cocina vista desde arriba. ${fixtures.map((one) => f.say(one)).join('; ')}.`,
  'run.picture.fixture': ({ name, phase }, f) => `${name}: ${f.say(phase)}`,
  'run.picture.burner': ({ name }) => `Quemador ${name}`,
  'run.picture.kettle': ({ litres, markLitres }, f) =>
    `Llene ${f.fill(litres)}; la marca está en ${f.fill(markLitres)}`,
  'run.picture.kettle.litres': ({ litres }, f) => f.fill(litres, true),
  'run.picture.batch': ({ items }, f) => `En la olla: ${f.list(items.map((item) => f.say(item)))}`,
  'run.picture.batch.count': ({ count }, f) => `${f.number(count)} ×`,
  'run.batches': 'Tandas',
  'run.batches.line': ({ done, of }, f) =>
    `Tandas: ${f.number(done)} de ${f.number(of)} ${f.plural(done, { one: 'hecha', other: 'hechas' })}`,
  'run.batches.state.done': 'hecha',
  'run.batches.state.now': 'ahora',
  'run.batches.state.next': 'la próxima',
  'run.batches.state.to-come': 'por hacer',
  'run.batches.state.left-out': 'omitida',
  'run.picture.lanes': ({ kettles }, f) =>
    `Franjas de vertido de atrás hacia delante en ${f.number(kettles)} ${f.plural(kettles, { one: 'hervidor', other: 'hervidores' })}.`,
  'run.picture.lanes-of': ({ kettles, kettle }, f) =>
    `Franjas de vertido de atrás hacia delante en ${f.number(kettles)} ${f.plural(kettles, { one: 'hervidor', other: 'hervidores' })}; está marcado el hervidor ${f.number(kettle)}.`,
  'run.picture.sink': 'Orden del vertido, lo alto antes que lo bajo',
  'run.picture.sink.kettle': ({ kettle }, f) => `hervidor ${f.number(kettle)}`,
  'run.picture.oven.stage': ({ name, lengthS }, f) => `${f.say(name)} ${f.duration(lengthS)}`,
  'run.picture.oven': ({ stages }, f) => stages.map((stage) => f.say(stage)).join(', '),
  'run.picture.oven.now': 'ahora',
  'run.pour.left': ({ litres }, f) => `quedan ${f.fill(litres, true)}`,
  'run.pour.pace': ({ cmPerS }, f) => `unos ${f.measure(cmPerS, 'cm')} por segundo`,
  'run.picture.stand': 'Usted se pone aquí',
  'run.picture.time': ({ lengthS }, f) => f.duration(lengthS),
};
