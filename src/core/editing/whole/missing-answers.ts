import type { Fixture, Kitchen } from '../../kitchen/index.ts';
import { standsOnStove } from '../fixtures/stove-pots.ts';

/** Something the plan would have to guess. */
export type MissingAnswer = {
  /** Where the answer goes: `fixtures.sink.material`. */
  readonly path: string;
  readonly fixture?: string;
  readonly ask: string;
  readonly why: string;
};

const ELECTRIC: readonly string[] = [
  'electric-coil',
  'solid-plate',
  'radiant-glass',
  'induction',
  'portable-plate',
];
/** Appliances whose lining decides what is done with them. */
const LINED: readonly Fixture['kind'][] = ['microwave', 'dishwasher', 'warming-drawer'];

function about(fixture: Fixture, field: string, ask: string, why: string): MissingAnswer {
  return { path: `fixtures.${fixture.id}.${field}`, fixture: fixture.id, ask, why };
}

function* surfaces(fixture: Fixture): Generator<MissingAnswer> {
  const { name } = fixture;
  if ('material' in fixture && fixture.material === 'unknown') {
    const lined = LINED.includes(fixture.kind);
    if ('condition' in fixture) {
      yield about(
        fixture,
        'material',
        `What is ${name} made of?`,
        'Whether it can be purged at all, and how, depends on it.',
      );
    } else if (lined) {
      yield about(
        fixture,
        'material',
        `What is ${name} lined with inside?`,
        'Whether it can be purged at all depends on it.',
      );
    }
  }
  if ('condition' in fixture && fixture.condition === 'unknown') {
    yield about(
      fixture,
      'condition',
      `Is ${name} smooth under a fingernail?`,
      'Water does not reach into cracks and deep scratches; the plan asks until it is told.',
    );
  }
}

function* heat(fixture: Fixture): Generator<MissingAnswer> {
  const { name } = fixture;
  if (fixture.kind === 'oven' && fixture.cleaning === 'pyrolytic' && fixture.cycleMin === undefined)
    yield about(
      fixture,
      'cycleMin',
      `How many minutes does the cleaning cycle of ${name} take?`,
      'It stands in the manual; until then a usual length is planned.',
    );
  const electricTop =
    fixture.kind === 'cooktop' &&
    fixture.burners.some(({ type, circuit }) => ELECTRIC.includes(type) && circuit === undefined);
  const electricOven =
    fixture.kind === 'oven' && fixture.heat === 'electric' && fixture.circuit === undefined;
  if (electricTop || electricOven)
    yield about(
      fixture,
      electricTop ? 'burners' : 'circuit',
      `Which circuit feeds ${name}?`,
      'Its load is not watched until the breaker is known.',
    );
}

function* hardware(kitchen: Kitchen): Generator<MissingAnswer> {
  if (kitchen.vessels.length === 0)
    yield {
      path: 'vessels',
      ask: 'What boils the water?',
      why: 'Nothing can be poured without a kettle, urn or pot.',
    };
  for (const vessel of kitchen.vessels) {
    const stove = standsOnStove(vessel);
    if (stove ? vessel.burner !== undefined : vessel.circuit !== undefined) continue;
    yield {
      path: `vessels.${vessel.id}.${stove ? 'burner' : 'circuit'}`,
      ask: stove
        ? `Which burner does ${vessel.name} stand on?`
        : `Which sockets is ${vessel.name} plugged into?`,
      why: stove
        ? 'It boils only as fast as its burner heats.'
        : 'Two strong kettles on one breaker trip it.',
    };
  }
}

function* rooms(kitchen: Kitchen): Generator<MissingAnswer> {
  if (kitchen.place === undefined)
    yield {
      path: 'place',
      ask: 'Where is the kitchen?',
      why: 'Water boils cooler in the mountains, and the day has its times.',
    };
  const { kind, flowLS } = kitchen.room.hood;
  const hood = kitchen.fixtures.find((fixture) => fixture.kind === 'hood');
  if (hood && kind === 'none')
    yield {
      path: 'room.hood.kind',
      fixture: hood.id,
      ask: `Does ${hood.name} blow outside?`,
      why: 'How many burners may glow at once depends on the air; until then it counts as no hood.',
    };
  if (kind === 'vented' && flowLS === 0)
    yield {
      path: 'room.hood.flowLS',
      ...(hood && { fixture: hood.id }),
      ask: 'How much air does the hood move?',
      why: 'It stands in the manual; until then it counts as no hood.',
    };
}

/**
 * What is still to be told, in the order it is met; empty when the plan stands
 * on told facts. A usual size or rating that was filled in is not listed: the
 * file does not know that nobody measured it.
 */
export function missingAnswers(kitchen: Kitchen): readonly MissingAnswer[] {
  const fixtures =
    kitchen.fixtures.length > 0
      ? kitchen.fixtures.flatMap((fixture) => [...surfaces(fixture), ...heat(fixture)])
      : [
          {
            path: 'fixtures',
            ask: 'What stands in the kitchen?',
            why: 'There is nothing to purge yet.',
          },
        ];
  return [...rooms(kitchen), ...fixtures, ...hardware(kitchen)];
}
