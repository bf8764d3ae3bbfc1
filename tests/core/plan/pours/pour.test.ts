import { describe, expect, it } from 'vitest';
import { LIMITS, type Vessel } from '../../../../src/core/kitchen/index.ts';
import { message, type Message } from '../../../../src/core/messages/index.ts';
import { kettleBody, kettleCooling } from '../../../../src/core/physics/index.ts';
import { buildPlan, checkPlan, pourNeedOf } from '../../../../src/core/plan/index.ts';
import { handworkS } from '../../../../src/core/plan/context/work-times.ts';
import {
  kitchenOf,
  noticeKeys,
  noticesText,
  only,
  planOfDemo,
  step,
  stepsOf,
  withFixture,
  withMethod,
} from '../support/plans.ts';

const range = (from: number, to: number): readonly number[] =>
  Array.from({ length: to - from + 1 }, (_, at) => from + at);

const flat = kitchenOf('flat-coils');
const plan = planOfDemo('flat-coils');

describe('a pour', () => {
  const pours = stepsOf(plan, 'pour', 'sink');

  it('is boiling water and then cold, each confirmed by a person', () => {
    for (const pour of pours) {
      expect(pour.stages.map(({ role }) => role)).toEqual(['pour', 'cold']);
      expect(pour.stages.every(({ say }) => say !== undefined)).toBe(true);
    }
  });

  it('ends while the last drop has lost no more than 5 K', () => {
    const [kettle] = flat.vessels as readonly [Vessel];
    const body = kettleBody(kettle.body);
    const standing = {
      volumeL: kettle.maxFillL,
      lossWK: body.lossWK.high,
      evaporationW: body.evaporationW.high,
      bodyWaterL: body.bodyWaterL,
      roomC: 20,
      dropK: 5,
      altitudeM: flat.altitudeM,
    };
    // A slow hand empties it in 1.7 L at 1.5 L/min.
    const { timeS } = kettleCooling({ ...standing, pourS: (60 * kettle.maxFillL) / 1.5 });
    expect(timeS).toBeLessThan(kettleCooling(standing).timeS);
    for (const pour of pours) {
      const need = pour.needs.find(({ withinS }) => withinS !== undefined);
      expect(step(plan, need?.step ?? '')).toMatchObject({
        kind: 'boil',
        fixture: 'sink',
        work: { kettle: pour.work.on === 'kettle' ? pour.work.kettle : 0, of: pours.length },
      });
      expect(need?.withinS).toBe(Math.floor(timeS));
      const begins = plan.timetable.startS[pour.id] ?? NaN;
      const boiled = step(plan, need?.step ?? '');
      const boils = (plan.timetable.startS[boiled.id] ?? NaN) + boiled.durationS.typical;
      const lastDropS = begins - boils + pour.durationS.high - handworkS('cold').high;
      expect(lastDropS).toBeLessThanOrEqual(timeS + 1);
    }
  });

  it('is boiled again and poured at once', () => {
    const { stages } = step(plan, 'boil-sink-1');
    const again = stages
      .flatMap(({ detail }) => detail)
      .find(({ key }) => key === 'steps.boil.again');
    // 1.7 L and a steel body, 5 K, 1500 W: about 27 s.
    expect(again?.params['againS']).toBeGreaterThan(25);
    expect(again?.params['againS']).toBeLessThan(32);
  });

  it('comes to a dry place: swabbed tops, an open drain, a wiped floor', () => {
    const lines = (fixture: string) =>
      stepsOf(plan, 'pour', fixture)[0]?.stages[0]?.detail.map(({ key }) => key);
    expect(lines('sink')).toEqual(
      expect.arrayContaining(['steps.pour.drain-open', 'steps.pour.wipe-floor']),
    );
    expect(lines('counter-left')).toContain('steps.pour.dry-first');
    expect(plan.questions.map(({ id }) => id)).toContain('ask-sink-pour-order');
  });

  it('is preceded by its rest, its boil, and the pour before it', () => {
    expect(step(plan, 'boil-sink-2').needs.map((need) => need.step)).toEqual(
      expect.arrayContaining(['rest-sink', 'boil-over-kettle', 'pour-sink-1']),
    );
    expect(step(plan, 'pour-sink-2').needs.map((need) => need.step)).toContain('pour-sink-1');
  });

  it('takes as many kettles as the reckoning says, and covers every part once', () => {
    const need = pourNeedOf(flat, 'sink');
    expect(pours).toHaveLength(need?.kettles.typical ?? Number.NaN);
    const picture = pours[0]?.picture;
    if (picture?.kind !== 'sink') throw new Error('no sink picture');
    const parts = picture.parts.map(({ name: { key, params } }) =>
      key === 'steps.sink.shared' ? (params['part'] as Message).key : key,
    );
    expect([...new Set(parts)]).toEqual([
      'steps.sink.spout-and-tap',
      'steps.sink.handles',
      'steps.sink.deck',
      'steps.sink.rim',
      'steps.sink.wall',
      'steps.sink.floor',
    ]);
    const kettles = picture.parts.map(({ kettle }) => kettle);
    expect(kettles.toSorted((a, b) => a - b)).toEqual(kettles);
    expect(new Set(kettles).size).toBe(pours.length);
  });

  it('draws the lanes of a counter, back before front, the whole in kettles', () => {
    const counter = stepsOf(plan, 'pour', 'counter-right');
    const picture = counter[0]?.picture;
    if (picture?.kind !== 'lanes') throw new Error('no lanes');
    expect(new Set(picture.stretches.map(({ kettle }) => kettle)).size).toBe(counter.length);
    const poured = picture.stretches.reduce((sum, { litres }) => sum + litres, 0);
    expect(poured).toBeCloseTo(pourNeedOf(flat, 'counter-right')?.litres.typical ?? Number.NaN, 6);
    const each = counter.map((_, at) =>
      picture.stretches
        .filter(({ kettle }) => kettle === at + 1)
        .reduce((sum, { litres }) => sum + litres, 0),
    );
    for (const litres of each) expect(litres).toBeLessThanOrEqual(1.7 + 1e-9);
    // The wall is at y = 2.40.
    expect(picture.stretches[0]?.points[0]?.[1]).toBeGreaterThan(
      picture.stretches.at(-1)?.points[0]?.[1] ?? 9,
    );
  });
});

describe('a sink of many bowls', () => {
  const BOWL = { lengthM: 0.35, widthM: 0.3, depthM: 0.2 };
  const sinkOf = (bowls: number) =>
    withFixture(only(flat, 'sink'), 'sink', {
      outline: [
        [0, 0],
        [0.4 * bowls, 0],
        [0.4 * bowls, 0.4],
        [0, 0.4],
      ],
      bowls: Array.from({ length: bowls }, () => BOWL),
    });

  it.each(range(1, LIMITS.bowls.most))(
    'of %i is poured bowl by bowl, every part named',
    (bowls) => {
      const built = buildPlan(sinkOf(bowls));
      const pours = stepsOf(built, 'pour', 'sink');
      const picture = pours[0]?.picture;
      if (picture?.kind !== 'sink') throw new Error('no sink picture');
      const parts = picture.parts.map(({ name }) =>
        name.key === 'steps.sink.shared' ? (name.params['part'] as Message) : name,
      );
      for (const part of ['rim', 'wall', 'floor']) {
        const own = parts.filter(
          ({ key }) => key === `steps.sink.${bowls > 1 ? 'bowl.' : ''}${part}`,
        );
        const named = new Set(own.map(({ params }) => params['bowl']));
        expect(named).toEqual(new Set(bowls > 1 ? range(1, bowls) : [undefined]));
      }
      const litres = pours.map(({ work }) => (work.on === 'kettle' ? work.litres : Number.NaN));
      expect(litres.reduce((sum, l) => sum + l, 0)).toBeCloseTo(built.totals.hotL.typical, 6);
      for (const l of litres) expect(l).toBeLessThanOrEqual(1.7 + 1e-9);
      expect(checkPlan(built)).toEqual([]);
    },
  );
});

describe('a top for which no lanes can be drawn', () => {
  it('is poured in alike shares, and each pour says why', () => {
    const outline = [
      [0, 0],
      [2, 0],
      [2, 0.6],
      [0, 0.6],
    ] as const;
    const frame = withFixture(only(flat, 'counter-left'), 'counter-left', {
      outline,
      holes: [outline],
      backEdges: [[2, 3]],
    });
    const pours = stepsOf(buildPlan(frame), 'pour', 'counter-left');
    expect(pours.length).toBeGreaterThan(0);
    for (const { picture, stages, work } of pours) {
      expect(picture).toBeUndefined();
      expect(stages[0]?.detail).toContainEqual(
        message('steps.pour.not-drawn', { why: message('steps.pour.not-drawn.all-cut-away') }),
      );
      expect(work).toMatchObject({ on: 'kettle', of: pours.length });
    }
  });
});

describe('the kettles', () => {
  it('two of them take turns', () => {
    const two = { ...flat, vessels: flat.vessels.map((one) => ({ ...one, count: 2 })) };
    const boils = stepsOf(buildPlan(two), 'boil');
    const units = boils.map(({ work }) => (work.on === 'kettle' ? work.vessel.unit : ''));
    expect(new Set(units)).toEqual(new Set(['kettle-1', 'kettle-2']));
    for (const { demands, work } of boils)
      expect(demands[`vessel-${work.on === 'kettle' ? work.vessel.unit : ''}`]).toBe(1);
    expect(checkPlan(buildPlan(two))).toEqual([]);
  });

  it('two on one circuit never boil together', () => {
    const tight = {
      ...flat,
      circuits: flat.circuits.map((one) => ({ ...one, ratingA: Math.min(one.ratingA, 15) })),
      vessels: flat.vessels.map((one) => ({ ...one, count: 2 })),
    };
    const both = buildPlan(only(tight, 'counter-left', 'sink'));
    expect(checkPlan(both)).toEqual([]);
    expect(noticeKeys(both)).toContain('plan.notice.circuit-shared');
    const amps = stepsOf(both, 'boil').map(({ demands }) => demands['circuit-sockets-right'] ?? 0);
    for (const amp of amps) expect(2 * amp).toBeGreaterThan(15);
  });

  it('an urn and a pot do not pour, and the plan says so', () => {
    const hall = planOfDemo('hall');
    expect(stepsOf(hall, 'boil').some(({ demands }) => 'vessel-urn' in demands)).toBe(false);
    expect(noticesText(hall)).toMatch(/^.*Not poured from: .*urn/i);
  });

  it('without one, the plan buys one and does not purge it', () => {
    const none = buildPlan({ ...flat, vessels: [] });
    expect(none.shopping.some(({ id }) => id === 'kettle')).toBe(true);
    expect(stepsOf(none, 'boil-over')).toEqual([]);
    expect(checkPlan(none)).toEqual([]);
  });

  it('one that can never boil here is not used, and the plan says so', () => {
    const weak = {
      ...flat,
      vessels: [
        ...flat.vessels,
        ...flat.vessels.map((one) => ({ ...one, id: 'weak', name: 'Travel kettle', ratedW: 120 })),
      ],
    };
    const built = buildPlan(weak);
    expect(stepsOf(built, 'boil').some(({ demands }) => 'vessel-weak' in demands)).toBe(false);
    expect(noticesText(built)).toContain('Not used: Travel kettle');
    expect(checkPlan(built)).toEqual([]);
  });

  it('one on the stove waits for its burner to be purged and cold', () => {
    const gas = planOfDemo('mountain-gas');
    expect(step(gas, 'boil-counter-corner-1').needs.map((need) => need.step)).toContain(
      'cool-gas-front-left',
    );
    expect(step(gas, 'boil-counter-corner-1').demands).toMatchObject({
      'burners-lit': 1,
      'range-range-top': 1,
    });
  });
});

describe('what is not poured', () => {
  it('a shelf that an answer wants poured is work by hand, and said so', () => {
    const answered = buildPlan(withMethod(flat, 'wall-cupboard', 'pour'));
    expect(checkPlan(answered)).toEqual([]);
    expect(noticeKeys(answered)).toContain('plan.notice.by-hand');
    const purge = step(answered, 'purge-wall-cupboard');
    expect(purge.kind).toBe('boil-over');
    expect(purge.title.key).toBe('steps.by-hand.pour');
    expect(purge.stages.map(({ role }) => role)).toEqual(['pour', 'cold']);
  });

  it('pourNeedOf knows only surfaces', () => {
    expect(pourNeedOf(flat, 'fridge')).toBeUndefined();
    expect(pourNeedOf(flat, 'nothing')).toBeUndefined();
  });
});

describe('the direction of lanes', () => {
  const planned = (laneDirection?: 'back-to-front' | 'shortest') => {
    const kitchen = only(kitchenOf('hall'), 'counter-cook-left');
    return buildPlan({
      ...kitchen,
      // Lanes across the counter end at its wall: a long arm reaches there.
      household: { ...kitchen.household, armM: 0.8, ...(laneDirection && { laneDirection }) },
    });
  };
  const lanes = (plan: ReturnType<typeof planned>) =>
    plan.steps.flatMap(({ picture }) => (picture?.kind === 'lanes' ? [picture.stretches] : []))[0];

  it('is back to front unless the household lets the shorter one be used', () => {
    expect(lanes(planned())).toEqual(lanes(planned('back-to-front')));
    const metres = (plan: ReturnType<typeof planned>): number =>
      (lanes(plan) ?? []).reduce((sum, { lengthM }) => sum + lengthM, 0);
    expect(metres(planned('shortest'))).toBeLessThan(metres(planned()));
  });
});
