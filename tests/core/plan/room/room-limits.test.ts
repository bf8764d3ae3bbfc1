import { describe, expect, it } from 'vitest';
import type { Kitchen, Room } from '../../../../src/core/kitchen/index.ts';
import { buildPlan, burnersNeedOf, gravityOf, type Plan } from '../../../../src/core/plan/index.ts';
import { GRAVE } from '../../../../src/core/plan/build/gravity.ts';
import { english } from '../../../../src/core/messages/english/index.ts';
import { inEnglish } from '../../../support/english.ts';
import {
  endS,
  kitchenOf,
  noticeKeys,
  noticesText,
  only,
  startS,
  step,
  withFixture,
} from '../support/plans.ts';

const coils = kitchenOf('flat-coils');
const gas = kitchenOf('mountain-gas');

function inRoom(kitchen: Kitchen, change: Partial<Room>): Kitchen {
  return { ...kitchen, room: { ...kitchen.room, ...change } };
}

function withoutWindow(kitchen: Kitchen, hood: Room['hood']): Kitchen {
  const { window: _, ...room } = kitchen.room;
  return { ...kitchen, room: { ...room, hood } };
}

const at = (date: string): number => Date.parse(`${date}T12:00:00Z`);

/** Burners lit together at the busiest moment. */
function mostLit(plan: Plan): number {
  const lit = plan.steps.filter(({ demands }) => demands['burners-lit'] !== undefined);
  return Math.max(
    ...lit.map(
      ({ id }) =>
        lit.filter(
          (other) =>
            startS(plan, other.id) <= startS(plan, id) &&
            endS(plan, other.id) > startS(plan, id) + 1,
        ).length,
    ),
  );
}

/** Notices about how the room bears the burners. */
function roomNotices(plan: Plan): readonly string[] {
  return noticeKeys(plan).filter((key) =>
    /\.(room-|burners-at-once|no-air|air-not-told)/.test(key),
  );
}

describe('the air outside', () => {
  it('of a hot day lets one coil be lit where a spring day lets two', () => {
    expect(burnersNeedOf(coils, at('2026-03-15')).atOnce).toBe(2);
    expect(burnersNeedOf(coils, at('2026-07-20')).atOnce).toBe(1);
    expect(burnersNeedOf(inRoom(coils, { outdoorC: 30 }), at('2026-03-15')).atOnce).toBe(1);
    expect(burnersNeedOf(inRoom(coils, { outdoorC: 12 }), at('2026-07-20')).atOnce).toBe(2);
  });

  it('is taken as at the height of summer where no day is told, and as in spring for Passover', () => {
    const outdoor = (kitchen: Kitchen, date?: string) =>
      burnersNeedOf(kitchen, date === undefined ? undefined : at(date)).outdoorC.typical;
    expect(outdoor(coils)).toBeCloseTo(outdoor(coils, '2026-07-23'), 1);
    expect(outdoor(gas)).toBeLessThan(outdoor(gas, '2026-07-23') - 5);
  });

  it('of the south is warm in January', () => {
    const sydney = {
      ...coils,
      place: { latDeg: -33.9, lonDeg: 151.2, zone: 'Australia/Sydney', land: 'diaspora' },
    } as const;
    const [january, july] = ['2026-01-20', '2026-07-20'].map(
      (date) => burnersNeedOf(sydney, at(date)).outdoorC.typical,
    );
    expect(january).toBeGreaterThan((july ?? 99) + 8);
  });
});

describe('what heats the room beside the burners', () => {
  const day = at('2026-05-01');
  const peak = (kitchen: Kitchen) => burnersNeedOf(kitchen, day).peakC?.typical ?? Number.NaN;

  it('counts the self-clean that ends as they are lit', () => {
    const steamed = withFixture(coils, 'oven', { cleaning: 'steam', heat: 'gas' });
    expect(peak(coils)).toBeGreaterThan(peak(steamed) + 1);
  });

  it('counts the kettles on the boil', () => {
    const dry = only(coils, 'range-top');
    const poured = only(coils, 'range-top', 'counter-right');
    expect(peak(poured)).toBeGreaterThan(peak(dry) + 0.2);
  });
});

describe('a room that does not bear the burners', () => {
  const airless = inRoom(gas, {
    hood: { kind: 'none', flowLS: 0 },
    window: { areaM2: 0, heightM: 0 },
  });
  const untold = withoutWindow(gas, { kind: 'unknown', flowLS: 0 });

  it.each([
    ['airless', airless],
    ['not told', untold],
    ['too hot', inRoom(coils, { outdoorC: 35 })],
    ['tiny', inRoom(gas, { floorAreaM2: 1, heightM: 2 })],
    ['good', gas],
  ])('says so in one notice: %s', (_, kitchen) => {
    const plan = buildPlan(kitchen);
    expect(roomNotices(plan)).toHaveLength(1);
    expect(mostLit(plan)).toBe(1);
  });

  it('comes first, and is graver than the rest', () => {
    const plan = buildPlan(airless);
    const [first] = plan.notices;
    expect(first && gravityOf(first)).toBe('stop');
    expect(first && inEnglish.say(first)).toMatch(/^There is neither a hood/);
  });

  it('keeps what is not told apart from what is not there', () => {
    expect(noticesText(buildPlan(untold))).toContain('Nobody has told yet');
    expect(noticesText(buildPlan(untold))).not.toContain('There is neither');
    expect(noticesText(buildPlan(airless))).not.toContain('Nobody has told yet');
  });

  it('of 2 m³ is told and not reckoned as a larger one', () => {
    const tiny = inRoom(gas, { floorAreaM2: 1, heightM: 2 });
    expect(noticesText(buildPlan(tiny))).toContain('The kitchen is told as 2\u00a0m³');
    expect(burnersNeedOf(tiny).peakC).toBeUndefined();
  });

  it('has a vented hood of no told flow count as none', () => {
    const noFlow = inRoom(gas, { hood: { kind: 'vented', flowLS: 0 } });
    const none = inRoom(gas, { hood: { kind: 'none', flowLS: 0 } });
    expect(burnersNeedOf(noFlow).peakC).toEqual(burnersNeedOf(none).peakC);
  });
});

describe('gates about air', () => {
  const asked = (kitchen: Kitchen): string =>
    buildPlan(kitchen)
      .gates.map(({ ask, say }) => `${inEnglish.say(ask)} ${inEnglish.say(say)}`)
      .join('\n');

  it('never ask about a window that nobody told of', () => {
    for (const kitchen of [gas, coils]) {
      const untold = withoutWindow(kitchen, { kind: 'vented', flowLS: 120 });
      expect(asked(untold)).not.toMatch(/window/i);
      expect(asked(kitchen)).toMatch(/window/i);
    }
  });

  it('ask for a way out where neither was told, and still hold the burners', () => {
    const untold = withoutWindow(gas, { kind: 'unknown', flowLS: 0 });
    expect(asked(untold)).toMatch(/A way for the air to the outside/);
    expect(step(buildPlan(untold), 'glow-gas-front-left').gates).toContain('burner-air');
  });
});

describe('limits by country and size', () => {
  it('a kettle of 3 kW on a 13 A fuse is used as everybody there does', () => {
    const british: Kitchen = {
      ...kitchenOf('flat-glass-230'),
      country: 'GB',
      circuits: kitchenOf('flat-glass-230').circuits.map((one) =>
        one.id.startsWith('sockets') ? { ...one, ratingA: 13 } : one,
      ),
    };
    expect(noticeKeys(buildPlan(british))).not.toContain('plan.notice.circuit-overloaded');
    const weak = {
      ...british,
      circuits: british.circuits.map((one) => ({ ...one, ratingA: Math.min(one.ratingA, 11) })),
    };
    expect(noticeKeys(buildPlan(weak))).toContain('plan.notice.circuit-overloaded');
  });

  it('a counter of 12 m² gets advice', () => {
    const counter = coils.fixtures.find(({ id }) => id === 'counter-left');
    if (counter?.kind !== 'counter') throw new Error('no counter');
    const huge = withFixture(only(coils, 'counter-left'), 'counter-left', {
      outline: [
        [0, 0],
        [6, 0],
        [6, 2],
        [0, 2],
      ],
      backEdges: [[2, 3]],
    });
    const text = noticesText(buildPlan(huge));
    expect(text).toMatch(/A great deal of water: .*\d+ kettles/);
    expect(text).toMatch(/urn.*second kettle.*helper.*covered/);
    expect(noticeKeys(buildPlan(coils))).not.toContain('plan.notice.much-water');
  }, 60_000);
});

it('every notice with a gravity is in the catalogue', () => {
  for (const key of Object.keys(GRAVE)) expect(Object.keys(english)).toContain(key);
});
