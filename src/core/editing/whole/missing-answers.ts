import { isGas, standsOnStove, type Fixture, type Kitchen } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';

/** Something the plan would have to guess. */
export type MissingAnswer = {
  /** Where the answer goes: `fixtures.sink.material`. */
  readonly path: string;
  readonly fixture?: string;
  readonly ask: Message;
  readonly why: Message;
};

/** Appliances whose lining decides what is done with them. */
const LINED: readonly Fixture['kind'][] = ['microwave', 'dishwasher', 'warming-drawer'];

function about(fixture: Fixture, field: string, ask: Message, why: Message): MissingAnswer {
  return { path: `fixtures.${fixture.id}.${field}`, fixture: fixture.id, ask, why };
}

function* surfaces(fixture: Fixture): Generator<MissingAnswer> {
  const told = { fixture: fixture.name };
  if ('material' in fixture && fixture.material === 'unknown') {
    const lined = LINED.includes(fixture.kind);
    if ('condition' in fixture) {
      yield about(
        fixture,
        'material',
        message('survey.ask.material', told),
        message('survey.ask.material.why'),
      );
    } else if (lined) {
      yield about(
        fixture,
        'material',
        message('survey.ask.lining', told),
        message('survey.ask.lining.why'),
      );
    }
  }
  if ('condition' in fixture && fixture.condition === 'unknown') {
    yield about(
      fixture,
      'condition',
      message('survey.ask.condition', told),
      message('survey.ask.condition.why'),
    );
  }
}

/** Without a wall it may stand free or against something: nobody but the household knows. */
function* sides(fixture: Fixture): Generator<MissingAnswer> {
  if (fixture.kind !== 'counter' || fixture.backEdges.length > 0 || fixture.openSides) return;
  yield about(
    fixture,
    'openSides',
    message('survey.ask.open-sides', { fixture: fixture.name }),
    message('survey.ask.open-sides.why'),
  );
}

function* heat(fixture: Fixture): Generator<MissingAnswer> {
  const told = { fixture: fixture.name };
  if (fixture.kind === 'oven' && fixture.cleaning === 'pyrolytic' && fixture.cycleMin === undefined)
    yield about(
      fixture,
      'cycleMin',
      message('survey.ask.cycle', told),
      message('survey.ask.cycle.why'),
    );
  const electricTop =
    fixture.kind === 'cooktop' &&
    fixture.burners.some(({ type, circuit }) => !isGas(type) && circuit === undefined);
  const electricOven =
    fixture.kind === 'oven' && fixture.heat === 'electric' && fixture.circuit === undefined;
  if (electricTop || electricOven)
    yield about(
      fixture,
      electricTop ? 'burners' : 'circuit',
      message('survey.ask.circuit', told),
      message('survey.ask.circuit.why'),
    );
}

function* hardware(kitchen: Kitchen): Generator<MissingAnswer> {
  if (kitchen.vessels.length === 0)
    yield {
      path: 'vessels',
      ask: message('survey.ask.vessels'),
      why: message('survey.ask.vessels.why'),
    };
  for (const vessel of kitchen.vessels) {
    const stove = standsOnStove(vessel);
    if (stove ? vessel.burner !== undefined : vessel.circuit !== undefined) continue;
    yield {
      path: `vessels.${vessel.id}.${stove ? 'burner' : 'circuit'}`,
      ask: stove
        ? message('survey.ask.burner', { vessel: vessel.name })
        : message('survey.ask.sockets', { vessel: vessel.name }),
      why: stove ? message('survey.ask.burner.why') : message('survey.ask.sockets.why'),
    };
  }
}

/** Is there anything that heats the room? */
function heated({ fixtures }: Kitchen): boolean {
  return fixtures.some(({ kind }) => kind === 'cooktop' || kind === 'oven');
}

function* rooms(kitchen: Kitchen): Generator<MissingAnswer> {
  if (kitchen.place === undefined)
    yield {
      path: 'place',
      ask: message('survey.ask.place'),
      why: message('survey.ask.place.why'),
    };
  const { kind, flowLS } = kitchen.room.hood;
  const hood = kitchen.fixtures.find((fixture) => fixture.kind === 'hood');
  if (hood && (kind === 'none' || kind === 'unknown'))
    yield {
      path: 'room.hood.kind',
      fixture: hood.id,
      ask: message('survey.ask.hood', { hood: hood.name }),
      why: message('survey.ask.hood.why'),
    };
  else if (kind === 'unknown' && heated(kitchen))
    yield {
      path: 'room.hood.kind',
      ask: message('survey.ask.any-hood'),
      why: message('survey.ask.hood.why'),
    };
  if (kitchen.room.window === undefined && heated(kitchen))
    yield {
      path: 'room.window',
      ask: message('survey.ask.window'),
      why: message('survey.ask.window.why'),
    };
  if (kind === 'vented' && flowLS === 0)
    yield {
      path: 'room.hood.flowLS',
      ...(hood && { fixture: hood.id }),
      ask: message('survey.ask.hood-flow'),
      why: message('survey.ask.hood-flow.why'),
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
      ? kitchen.fixtures.flatMap((fixture) => [
          ...surfaces(fixture),
          ...sides(fixture),
          ...heat(fixture),
        ])
      : [
          {
            path: 'fixtures',
            ask: message('survey.ask.fixtures'),
            why: message('survey.ask.fixtures.why'),
          },
        ];
  return [...rooms(kitchen), ...fixtures, ...hardware(kitchen)];
}
