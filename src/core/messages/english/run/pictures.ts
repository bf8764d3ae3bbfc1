import type { Message, Section } from '../../model/message.ts';
import { crew } from './crew.ts';

/** Pictures, in words for those who do not see them, and the few words in them; what a fixture is and where it stands. */
export const pictures = {
  ...crew,
  'common.fixture-phase.to-clean': 'to clean',
  'common.fixture-phase.resting': 'resting',
  'common.fixture-phase.ready': 'ready',
  'common.fixture-phase.purging': 'in work',
  'common.fixture-phase.hot': 'hot',
  'common.fixture-phase.not-purged': 'not purged',
  'common.fixture-phase.left-out': 'left out',
  'common.fixture-phase.done': 'done',
  'common.fixture-phase.covered': 'covered',

  'common.fixture-kind.counter': 'counter',
  'common.fixture-kind.sink': 'sink',
  'common.fixture-kind.cooktop': 'cooktop',
  'common.fixture-kind.oven': 'oven',
  'common.fixture-kind.table': 'table',
  'common.fixture-kind.cupboard': 'cupboard',
  'common.fixture-kind.drawer': 'drawer',
  'common.fixture-kind.fridge': 'fridge',
  'common.fixture-kind.freezer': 'freezer',
  'common.fixture-kind.microwave': 'microwave',
  'common.fixture-kind.dishwasher': 'dishwasher',
  'common.fixture-kind.warming-drawer': 'warming drawer',
  'common.fixture-kind.hood': 'hood',

  'run.picture.kitchen': ({ fixtures }: { fixtures: readonly Message[] }, f) =>
    `Kitchen from above. ${fixtures.map((one) => f.say(one)).join('; ')}.`,
  'run.picture.fixture': ({ name, phase }: { name: string; phase: Message }, f) =>
    `${name}: ${f.say(phase)}`,
  'run.picture.burner': ({ name }: { name: string }) => `Burner ${name}`,
  'run.picture.kettle': ({ litres, markLitres }: { litres: number; markLitres: number }, f) =>
    `Fill ${f.fill(litres)}; the mark is at ${f.fill(markLitres)}`,
  'run.picture.kettle.litres': ({ litres }: { litres: number }, f) => f.fill(litres, true),
  'run.picture.batch': ({ items }: { items: readonly Message[] }, f) =>
    `In the pot: ${f.list(items.map((item) => f.say(item)))}`,
  'run.picture.batch.count': ({ count }: { count: number }, f) => `${f.number(count)} ×`,
  'run.batches': 'Batches',
  'run.batches.line': ({ done, of }: { done: number; of: number }, f) =>
    `Batches: ${f.number(done)} of ${f.number(of)} done`,
  'run.batches.state.done': 'done',
  'run.batches.state.now': 'now',
  'run.batches.state.next': 'next',
  'run.batches.state.to-come': 'to come',
  'run.batches.state.left-out': 'left out',
  'run.picture.lanes': ({ kettles }: { kettles: number }, f) =>
    `Pouring lanes from back to front in ${f.number(kettles)} ${f.plural(kettles, { one: 'kettle', other: 'kettles' })}.`,
  'run.picture.lanes-of': ({ kettles, kettle }: { kettles: number; kettle: number }, f) =>
    `Pouring lanes from back to front in ${f.number(kettles)} ${f.plural(kettles, { one: 'kettle', other: 'kettles' })}; kettle ${f.number(kettle)} is marked.`,
  'run.picture.sink': 'Order of the pour, high before low',
  'run.picture.sink.kettle': ({ kettle }: { kettle: number }, f) => `kettle ${f.number(kettle)}`,
  'run.picture.oven.stage': ({ name, lengthS }: { name: Message; lengthS: number }, f) =>
    `${f.say(name)} ${f.duration(lengthS)}`,
  'run.picture.oven': ({ stages }: { stages: readonly Message[] }, f) =>
    stages.map((stage) => f.say(stage)).join(', '),
  'run.picture.oven.now': 'now',
  'run.pour.left': ({ litres }: { litres: number }, f) => `${f.fill(litres, true)} left`,
  'run.pour.pace': ({ cmPerS }: { cmPerS: number }, f) =>
    `about ${f.measure(cmPerS, 'cm')} a second`,
  'run.picture.stand': 'You stand here',
  'run.picture.time': ({ lengthS }: { lengthS: number }, f) => f.duration(lengthS),
} satisfies Section;
