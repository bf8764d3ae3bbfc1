import { boundingBox } from '../../../src/core/geometry/index.ts';
import { describe, expect, it } from 'vitest';
import { type Fixture, type Kitchen } from '../../../src/core/kitchen/index.ts';
import * as survey from '../../../src/core/editing/index.ts';
import { inEnglish } from '../../support/english.ts';

const countries = ['US', 'GB', 'IL', 'FR', 'JP'] as const;

function add(kitchen: Kitchen, ...offers: readonly string[]): Kitchen {
  return offers.reduce((now, offer) => survey.addFixture(now, offer, inEnglish).kitchen, kitchen);
}
function get(kitchen: Kitchen, id: string): Fixture {
  const found = kitchen.fixtures.find((fixture) => fixture.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
}

describe('newKitchen', () => {
  // Volts: IEC 60038 systems. 20 A: NFPA 70, 210.11(C)(1). 32 A ring: BS 7671, appendix 15.
  // Kettle watts and the 16 A: common practice, no published source. All from memory.
  it.each([
    ['US', 120, 1500, 20],
    ['GB', 230, 3000, 32],
    ['DE', 230, 2200, 16],
    ['IL', 230, 2200, 16],
  ])('%s has %d V, a kettle of %d W and circuits of %d A', (country, volts, watts, amperes) => {
    const kitchen = survey.newKitchen({ name: 'Ours', country }, inEnglish);
    expect(kitchen.supplyV).toBe(volts);
    expect(kitchen.vessels.map(({ ratedW }) => ratedW)).toEqual([watts]);
    expect(kitchen.circuits.map(({ ratingA }) => ratingA)).toEqual([amperes, amperes]);
  });

  it('is a good file before its first fixture', () => {
    const kitchen = survey.newKitchen({ name: 'Ours', country: 'IL' }, inEnglish);
    expect(survey.problemsOf(kitchen)).toEqual([]);
    expect(survey.problemsOf(add(kitchen, 'counter'))).toEqual([]);
    expect(survey.missingAnswers(kitchen).map(({ path }) => path)).toEqual(['place', 'fixtures']);
  });

  it('tells a nameless kitchen in the words of the reader', () => {
    const nameless = add(survey.newKitchen({ name: ' ', country: 'IL' }, inEnglish), 'counter');
    expect(survey.problemsOf(nameless).map(({ path }) => path)).toEqual(['name']);
  });
});

describe('addFixture', () => {
  it.each(countries)('every offer makes a good kitchen by itself in %s', (country) => {
    const empty = survey.newKitchen({ name: 'Ours', country }, inEnglish);
    for (const offer of survey.OFFERS) {
      const { kitchen, id } = survey.addFixture(empty, offer.id, inEnglish);
      expect(get(kitchen, id).kind).toBe(offer.kind);
      expect(survey.problemsOf(kitchen)).toEqual([]);
    }
  });

  it.each(countries)('cuts sink and cooktop into one counter in %s, clear of each other', (c) => {
    const kitchen = add(
      survey.newKitchen({ name: 'Ours', country: c }, inEnglish),
      'counter',
      'sink-1',
      'gas-4',
    );
    const [counter, sink, top] = kitchen.fixtures;
    if (counter?.kind !== 'counter' || sink?.kind !== 'sink' || top?.kind !== 'cooktop')
      throw new Error('not what was added');
    expect(counter.holes).toEqual([sink.outline, top.outline]);
    expect(boundingBox(sink.outline).xMaxM).toBeLessThanOrEqual(boundingBox(top.outline).xMinM);
    const back = boundingBox(counter.outline).yMaxM;
    const fromWall = (name: string) =>
      back - (top.burners.find((burner) => burner.name === name)?.at[1] ?? Number.NaN);
    expect(fromWall('front left')).toBeGreaterThan(fromWall('back left'));
    const x = (name: string) => top.burners.find((b) => b.name === name)?.at[0] ?? Number.NaN;
    expect(x('front left')).toBeLessThan(x('front right'));
  });

  it('puts an oven under its cooktop, the next one by itself', () => {
    const empty = survey.newKitchen({ name: 'Ours', country: 'US' }, inEnglish);
    const kitchen = add(empty, 'counter', 'gas-4', 'oven-pyrolytic', 'oven-none');
    expect(get(kitchen, 'oven')).toMatchObject({ sharesRangeWith: 'cooktop', heat: 'gas' });
    expect('sharesRangeWith' in get(kitchen, 'oven-2')).toBe(false);
  });

  it('takes the counter that is named, and the place that is told', () => {
    const kitchen = add(
      survey.newKitchen({ name: 'Ours', country: 'FR' }, inEnglish),
      'counter',
      'island',
    );
    const { kitchen: next, id } = survey.addFixture(kitchen, 'sink-2', inEnglish, {
      into: 'island',
    });
    const island = get(next, 'island');
    const sink = get(next, id);
    if (island.kind !== 'counter' || sink.kind !== 'sink') throw new Error('not what was added');
    expect(island.holes).toEqual([sink.outline]);
    const { kitchen: told } = survey.addFixture(kitchen, 'table', inEnglish, { at: [7, 8] });
    expect(get(told, 'table')).toMatchObject({
      outline: [
        [7, 8],
        [8.4, 8],
        [8.4, 8.8],
        [7, 8.8],
      ],
    });
  });

  it('says by an empty id that there is no such offer', () => {
    const empty = survey.newKitchen({ name: 'Ours', country: 'FR' }, inEnglish);
    expect(survey.addFixture(empty, 'moat', inEnglish)).toEqual({ kitchen: empty, id: '' });
  });
});

describe('taking out', () => {
  const full = add(
    survey.newKitchen({ name: 'Ours', country: 'IL' }, inEnglish),
    'counter',
    'sink-1',
    'gas-4',
    'coil-4',
    'oven-none',
  );

  it('closes the cut-out and drops what named it', () => {
    const answered: Kitchen = {
      ...survey.addVessel(full, 'pot', inEnglish).kitchen,
      household: {
        ...full.household,
        overrides: [
          { fixture: 'cooktop', method: 'glow', saidBy: 'our rabbi', saidOn: '2026-03-01' },
        ],
      },
    };
    const pot = answered.vessels.find(({ id }) => id === 'pot');
    expect(pot?.burner).toBe('cooktop-front-left');
    const next = survey.removeFixture(answered, 'cooktop');
    expect(next.household.overrides).toEqual([]);
    expect('sharesRangeWith' in get(next, 'oven')).toBe(false);
    expect(next.vessels.find(({ id }) => id === 'pot')?.burner).toMatch(/^cooktop-2-/);
    const counter = get(next, 'counter');
    expect(counter.kind === 'counter' && counter.holes.length).toBe(1);
    expect(survey.problemsOf(next)).toEqual([]);
  });

  it('a circuit leaves nothing plugged into it', () => {
    const plugged = survey.changeBurner(full, 'cooktop-2', 'cooktop-2-front-left', {
      circuit: 'sockets-1',
    });
    const next = survey.removeCircuit(plugged, 'sockets-1');
    expect(JSON.stringify(next)).not.toContain('sockets-1');
    expect(survey.problemsOf(next)).toEqual([]);
    expect(survey.missingAnswers(next).map(({ path }) => path)).toContain('vessels.kettle.circuit');
  });

  it('a pot without a burner is asked about, and takes the next cooktop', () => {
    const potted = survey.addVessel(
      add(survey.newKitchen({ name: 'Ours', country: 'IL' }, inEnglish), 'counter'),
      'pot',
      inEnglish,
    ).kitchen;
    expect(survey.missingAnswers(potted).map(({ path }) => path)).toContain('vessels.pot.burner');
    expect(survey.problemsOf(add(potted, 'gas-4'))).toEqual([]);
  });
});

describe('changing and copying', () => {
  const full = add(
    survey.newKitchen({ name: 'Ours', country: 'IL' }, inEnglish),
    'counter',
    'sink-1',
    'gas-4',
  );

  it('changes own fields only', () => {
    const next = survey.changeFixture(full, 'sink', {
      material: 'granite',
      id: 'x',
      kind: 'table',
      outline: [],
      burners: [],
    });
    expect(get(next, 'sink')).toEqual({ ...get(full, 'sink'), material: 'granite' });
    expect(survey.changeFixture(full, 'sink', { id: 'x' })).toBe(full);
  });

  it('a copy has ids of its own and lies in the counter too', () => {
    const long = survey.resizeFixture(full, 'counter', 3.4, 0.6);
    const { kitchen, id } = survey.copyFixture(long, 'sink');
    expect(id).toBe('sink-2');
    expect(get(kitchen, id).name).toBe('Sink 2');
    const counter = get(kitchen, 'counter');
    expect(counter.kind === 'counter' && counter.holes.length).toBe(3);
    expect(survey.problemsOf(survey.copyFixture(full, 'cooktop').kitchen)).toEqual([]);
  });

  it('another kind of vessel brings another source of heat', () => {
    const pot = survey.changeVessel(full, 'kettle', { kind: 'pot' });
    expect(pot.vessels[0]).toMatchObject({ kind: 'pot', burner: 'cooktop-front-left' });
    expect(pot.vessels[0]).not.toHaveProperty('circuit');
    const again = survey.changeVessel(pot, 'kettle', { kind: 'urn' });
    expect(again.vessels[0]).not.toHaveProperty('burner');
    expect(survey.problemsOf(again)).toEqual([]);
  });

  it('asks until everything is told', () => {
    let kitchen = full;
    for (const { path } of survey.missingAnswers(kitchen)) {
      const [list, id, field] = path.split('.');
      if (list !== 'fixtures' || !id || !field) continue;
      const value = field === 'material' ? 'granite' : 'smooth';
      kitchen = survey.changeFixture(kitchen, id, { [field]: value });
    }
    expect(survey.missingAnswers(kitchen).map(({ path }) => path)).toEqual([
      'place',
      'room.hood.kind',
      'room.window',
    ]);
  });
});

describe('air that is not told', () => {
  const empty = survey.newKitchen({ name: 'Empty', country: 'GB' }, inEnglish);

  it('is not "none": a new kitchen has neither hood nor window chosen', () => {
    expect(empty.room.hood.kind).toBe('unknown');
    expect(empty.room.window).toBeUndefined();
  });

  it('a hood that is added takes "no hood" back and asks where it blows', () => {
    const none = { ...empty, room: { ...empty.room, hood: { kind: 'none' as const, flowLS: 0 } } };
    const { kitchen } = survey.addFixture(none, 'hood', inEnglish);
    expect(kitchen.fixtures.map(({ kind }) => kind)).toEqual(['hood']);
    expect(kitchen.room.hood.kind).toBe('unknown');
    expect(survey.missingAnswers(kitchen).map(({ path }) => path)).toContain('room.hood.kind');
  });

  it('a hood that was told stays as it was told', () => {
    const told = {
      ...empty,
      room: { ...empty.room, hood: { kind: 'vented' as const, flowLS: 90 } },
    };
    expect(survey.addFixture(told, 'hood', inEnglish).kitchen.room.hood.kind).toBe('vented');
  });

  it('a British kettle is rated at 240 V, so it draws 2.75 kW and not 3', () => {
    const [kettle] = empty.vessels;
    expect(kettle).toMatchObject({ ratedW: 3000, ratedV: 240 });
  });
});
