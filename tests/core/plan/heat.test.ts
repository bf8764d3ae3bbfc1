import { describe, expect, it } from 'vitest';
import { message } from '../../../src/core/messages/index.ts';
import { coolToTouch, glowTime } from '../../../src/core/physics/index.ts';
import { buildPlan, checkPlan, type StageRole } from '../../../src/core/plan/index.ts';
import {
  endS,
  kitchenOf,
  noticeKeys,
  noticesText,
  only,
  planOfDemo,
  startS,
  step,
  stepsOf,
  withFixture,
  withMethod,
} from './support/plans.ts';

const flat = kitchenOf('flat-coils');
const plan = planOfDemo('flat-coils');

describe('a burner', () => {
  const glow = step(plan, 'glow-coil-front-left');
  const stage = (role: StageRole) => glow.stages.find((one) => one.role === role);

  it('goes from light over warm-up and glow to off', () => {
    expect(glow.stages.map(({ role }) => role)).toEqual(['light', 'warm-up', 'hold', 'off']);
    expect(stage('warm-up')?.say?.key).toBe('steps.glow.warm-up-say');
    expect(stage('hold')?.say).toBeUndefined();
    expect(stage('off')?.say?.key).toBe('steps.heat.say-off');
  });

  it('has the estimate of the physics and a limit of twice the latest it is expected', () => {
    const { timeS } = glowTime({ burner: 'electric-coil', ratedW: 2350 });
    const [expected, limit] = stage('warm-up')?.timers ?? [];
    expect(expected?.lengthS).toBeCloseTo(timeS.typical, 6);
    expect(limit).toMatchObject({ role: 'limit', purpose: 'at-most', fault: 'no-glow' });
    expect(limit?.lengthS).toBeCloseTo(2 * timeS.high, 6);
    expect(limit?.lengthS).toBeGreaterThan(3 * timeS.typical);
  });

  it('holds unbroken for the minutes of the custom, looked at every ten', () => {
    expect(stage('hold')?.timers).toMatchObject([
      { role: 'hold', purpose: 'unbroken', lengthS: 30 * 60 },
      { role: 'reminder', purpose: 'at-most', lengthS: 600, repeats: true },
    ]);
    expect(stage('hold')?.resumption).toBe('restart');
    expect(stage('warm-up')?.resumption).toBe('restart');
  });

  it('cools by a timer that starts by itself', () => {
    const cool = step(plan, 'cool-coil-front-left');
    expect(cool.startsBy).toBe('chain');
    const { altitudeM } = flat;
    const { timeS } = coolToTouch({ burner: 'electric-coil', ratedW: 2350, altitudeM });
    expect(cool.stages[0]?.timers[0]?.lengthS).toBeCloseTo(timeS.high, 6);
  });

  it('is called safe by a word only, after the clock: the drop on a coil, the lamp of hob glass', () => {
    const coil = step(plan, 'cool-coil-front-left').stages[0];
    expect(coil?.say?.key).toBe('steps.cool.say.drop');
    expect(coil?.detail.map(({ key }) => key)).toContain('steps.cool.test.drop');
    const glass = step(planOfDemo('flat-glass-230'), 'cool-zone-front-left').stages[0];
    expect(glass?.say?.key).toBe('steps.cool.say.lamp');
    expect(glass?.detail.map(({ key }) => key)).toContain('steps.cool.lamp-dead');
    const range = kitchenOf('flat-glass-230').fixtures.find(({ kind }) => kind === 'cooktop');
    const without = buildPlan(
      withFixture(kitchenOf('flat-glass-230'), range?.id ?? '', { residualHeatLamp: false }),
    );
    expect(step(without, 'cool-zone-front-left').stages[0]?.say?.key).toBe('steps.cool.say.drop');
    expect(step(plan, 'cool-oven').stages[0]?.say?.key).toBe('steps.cool.say.drop-in-oven');
  });

  it('that gets less than the volts on its plate glows later, and is told that it may stay dark', () => {
    const warmUp = (change: object) => {
      const range = flat.fixtures.find(({ id }) => id === 'range-top');
      if (range?.kind !== 'cooktop') throw new Error('no cooktop');
      const burners = range.burners.map((burner) => ({ ...burner, ...change }));
      const built = buildPlan(withFixture(flat, 'range-top', { burners }));
      expect(checkPlan(built)).toEqual([]);
      const [expected] = step(built, 'glow-coil-front-left').stages[1]?.timers ?? [];
      return {
        lengthS: expected?.lengthS ?? 0,
        dark: noticeKeys(built).includes('plan.notice.may-stay-dark'),
      };
    };
    const volts = flat.circuits.find(
      ({ id }) =>
        id ===
        flat.fixtures.flatMap((one) => (one.kind === 'cooktop' ? one.burners : []))[0]?.circuit,
    )?.voltsV;
    const full = warmUp({});
    expect(full.dark).toBe(false);
    const weak = warmUp({ ratedV: (volts ?? 240) * (240 / 208) });
    expect(weak.lengthS).toBeGreaterThan(1.4 * full.lengthS);
    expect(weak.dark).toBe(true);
    expect(warmUp({ sensing: true })).toEqual({ lengthS: full.lengthS, dark: true });
  });

  it('is lit with no more than one other, back pair before front pair', () => {
    const glows = stepsOf(plan, 'glow');
    for (const one of glows) {
      const together = glows.filter(
        ({ id }) =>
          startS(plan, id) <= startS(plan, one.id) && endS(plan, id) > startS(plan, one.id) + 1,
      );
      expect(together.length).toBeLessThanOrEqual(2);
    }
    for (const back of ['coil-back-left', 'coil-back-right'])
      for (const front of ['coil-front-left', 'coil-front-right'])
        expect(startS(plan, `glow-${front}`)).toBeGreaterThanOrEqual(
          endS(plan, `glow-${back}`) - 0.01,
        );
  });

  it('of induction does not glow: it is asked about and kept out of use', () => {
    const range = flat.fixtures.find(({ id }) => id === 'range-top');
    if (range?.kind !== 'cooktop') throw new Error('no cooktop');
    const burners = range.burners.map((burner) => ({ ...burner, type: 'induction' as const }));
    const induction = buildPlan(withFixture(flat, 'range-top', { burners }));
    expect(stepsOf(induction, 'glow')).toEqual([]);
    expect(induction.methods.find(({ fixture }) => fixture === 'range-top')?.method).toBe(
      'not-purged',
    );
    expect(induction.questions.some(({ fixture }) => fixture === 'range-top')).toBe(true);
    expect(noticeKeys(induction)).toContain('plan.notice.induction');
    expect(step(induction, 'mark-kitchen').stages[0]?.detail).toContainEqual(
      message('steps.mark.out-of-use', { fixture: range.name }),
    );
    expect(checkPlan(induction)).toEqual([]);
  });

  it('of induction that is poured by an answer is guarded as any pour', () => {
    const glass = kitchenOf('flat-glass-230');
    const range = glass.fixtures.find(({ kind }) => kind === 'cooktop');
    if (range?.kind !== 'cooktop') throw new Error('no cooktop');
    const burners = range.burners.map((burner) => ({ ...burner, type: 'induction' as const }));
    const answered = withMethod(withFixture(glass, range.id, { burners }), range.id, 'pour');
    const plan = buildPlan(answered);
    const poured = plan.steps.filter(
      ({ fixture, phase }) => fixture === range.id && phase === 'purge',
    );
    expect(poured).not.toEqual([]);
    for (const { gates, standing, after } of poured) {
      expect(gates).toEqual(
        expect.arrayContaining([
          'child-pet',
          'scald-dress',
          'pour-power',
          'pour-material',
          'cold-where',
        ]),
      );
      expect(standing).toEqual(expect.arrayContaining(['scald-carry', 'pour-stance', 'splash']));
      expect(after).toContain('wet-floor');
    }
  });

  it('follows the answer about its minutes', () => {
    const answered = {
      ...flat,
      household: {
        ...flat.household,
        overrides: [
          {
            fixture: 'range-top',
            method: 'glow',
            minutes: 15,
            saidBy: 'our rabbi',
            saidOn: '2026-03-01',
          } as const,
        ],
      },
    };
    const hold = step(buildPlan(answered), 'glow-coil-back-left').stages.find(
      ({ role }) => role === 'hold',
    );
    expect(hold?.timers[0]?.lengthS).toBe(900);
  });

  it('heated without a glow has no warm-up to watch for', () => {
    const warm = buildPlan(withMethod(flat, 'range-top', 'light-heat'));
    expect(step(warm, 'glow-coil-back-left').stages.map(({ role }) => role)).toEqual([
      'light',
      'hold',
      'off',
    ]);
    expect(checkPlan(warm)).toEqual([]);
  });
});

describe('the room', () => {
  it('lets one burner be lit where two pass a limit', () => {
    const small = {
      ...kitchenOf('mountain-gas'),
      room: {
        floorAreaM2: 5,
        heightM: 2.3,
        hood: { kind: 'none', flowLS: 0 },
        window: { areaM2: 0, heightM: 0 },
      } as const,
    };
    const gas = buildPlan(small);
    expect(gas.resources.find(({ kind }) => kind === 'burners-lit')?.capacity).toBe(1);
    expect(noticesText(gas)).toContain('One burner at a time, for the');
    expect(noticesText(gas)).toContain('neither a hood to the outside nor a window');
  });
});

describe('an oven', () => {
  const clean = step(plan, 'heat-oven');

  it('with self-clean goes through one unbroken cycle of the manual’s length', () => {
    expect(clean.kind).toBe('self-clean');
    expect(clean.stages.map(({ role }) => role)).toEqual(['start', 'cycle', 'cool', 'open']);
    const cycle = clean.stages[1];
    expect(cycle?.timers[0]).toMatchObject({
      role: 'hold',
      purpose: 'unbroken',
      lengthS: 240 * 60,
    });
    expect(cycle?.timers[1]).toMatchObject({ role: 'reminder', lengthS: 3600, repeats: true });
    expect(cycle?.resumption).toBe('restart');
  });

  it('waits for the open lock by the slow end: never less than the manuals’ hour', () => {
    const unlock = clean.stages.find(({ role }) => role === 'cool')?.timers[0];
    expect(unlock?.lengthS).toBeGreaterThanOrEqual(3600);
  });

  it('locks out the burners of its own range while it runs', () => {
    expect(clean.demands['range-range-top']).toBe(4);
    for (const glow of stepsOf(plan, 'glow')) {
      const apart =
        startS(plan, glow.id) >= endS(plan, clean.id) - 0.01 ||
        endS(plan, glow.id) <= startS(plan, clean.id) + 0.01;
      expect(apart, glow.id).toBe(true);
    }
  });

  it('without it is held at its highest for the custom’s time after it is hot', () => {
    const gas = step(planOfDemo('mountain-gas'), 'heat-oven');
    expect(gas.kind).toBe('high-heat');
    expect(gas.stages.map(({ role }) => role)).toEqual(['start', 'warm-up', 'hold', 'off']);
    expect(gas.stages[2]?.timers[0]?.lengthS).toBe(120 * 60);
    expect(gas.demands['burners-lit']).toBe(1);
  });

  it('with a steam clean is told apart from self-clean', () => {
    const steam = buildPlan(withFixture(flat, 'oven', { cleaning: 'steam' }));
    expect(step(steam, 'heat-oven').kind).toBe('high-heat');
    expect(noticeKeys(steam)).toContain('plan.notice.clean-not-purge.steam');
  });

  it('that draws more than its circuit bears is named, and takes the whole circuit', () => {
    const weak = {
      ...flat,
      circuits: flat.circuits.map((one) =>
        one.id === 'range-supply' ? { ...one, ratingA: 10 } : one,
      ),
    };
    const built = buildPlan(weak);
    expect(noticeKeys(built)).toContain('plan.notice.circuit-overloaded');
    expect(checkPlan(built)).toEqual([]);
  });
});

describe('other purges', () => {
  it.each(['immerse', 'boil-over', 'steam', 'glow', 'self-clean', 'light-heat'] as const)(
    'an answer of %s for a fixture without a builder of its own is still planned and guarded',
    (method) => {
      const built = buildPlan(withMethod(only(flat, 'microwave', 'fridge'), 'fridge', method));
      expect(checkPlan(built)).toEqual([]);
      expect(stepsOf(built, 'rest', 'fridge')).toHaveLength(1);
    },
  );

  it('the microwave is steamed as long as the row says', () => {
    const steam = step(plan, 'purge-microwave');
    expect(steam.stages[1]?.timers[0]).toMatchObject({ purpose: 'unbroken', lengthS: 1200 });
    expect(steam.demands['circuit-sockets-left']).toBeCloseTo(1500 / 120, 6);
  });
});
