import { describe, expect, it } from 'vitest';
import { personName } from '../../../../src/core/kitchen/index.ts';
import { crewNow, signed } from '../../../../src/core/run/crew/index.ts';
import { simulateRun, type RunView } from '../../../../src/core/run/index.ts';
import { inEnglish } from '../../../support/english.ts';
import { kitchenOf, planOfDemo } from '../../plan/support/plans.ts';

const plan = planOfDemo('hall');
/** Looks at a whole run of the hall, one view for each moment at which somebody looked. */
const views: readonly RunView[] = (() => {
  const all: RunView[] = [];
  simulateRun(plan, {
    script: (seen) => {
      if (seen.status === 'running') all.push(seen);
      return [];
    },
  });
  return all;
})();

const idOf = (one: { readonly step: { readonly id: string } } | undefined) => one?.step.id;

describe('who does what now', () => {
  it('has a line for each of those who work, at every moment of a run', () => {
    expect(views.length).toBeGreaterThan(100);
    for (const seen of views) expect(crewNow(seen).map(({ person }) => person)).toEqual([0, 1, 2]);
  });

  it('gives each thing to one person, leaves out nothing that has begun, and nobody two in the hands', () => {
    for (const seen of views) {
      const crew = crewNow(seen);
      const told = crew.flatMap(({ step, watches }) =>
        [step, ...watches].flatMap((one) => idOf(one) ?? []),
      );
      expect(new Set(told).size).toBe(told.length);
      const begun = seen.currentSteps.filter(({ status }) =>
        ['active', 'checking', 'unwinding'].includes(status),
      );
      for (const one of begun) expect(told).toContain(one.step.id);
      for (const { step, watches } of crew)
        expect(
          [step, ...watches].filter(
            (one) => one?.step.attention === 'hands' && one.status === 'active',
          ).length,
        ).toBeLessThan(2);
    }
  });

  it('lets nobody stand idle while something can be begun, and tells the idle what comes', () => {
    let idle = 0;
    for (const seen of views) {
      const crew = crewNow(seen);
      const offered = new Set(crew.flatMap(({ step }) => idOf(step) ?? []));
      for (const { state, step } of crew) {
        expect(step === undefined).toBe(state === 'free');
        if (state !== 'free') continue;
        idle += 1;
        const left = seen.currentSteps.filter(
          (one) => one.status === 'ready' && !offered.has(one.step.id),
        );
        expect(left.map(idOf)).toEqual([]);
      }
    }
    expect(idle).toBeGreaterThan(0);
  });

  it('leaves with whom it is what was handed on, by whatever the plan says', () => {
    const seen = views.find((one) => crewNow(one).every(({ step }) => step !== undefined));
    if (!seen) throw new Error('The three are never busy at once.');
    const [first] = crewNow(seen);
    const id = idOf(first?.step) ?? '';
    const after = crewNow(seen, { [id]: 2 });
    expect(idOf(after[2]?.step)).toBe(id);
    expect(idOf(after[0]?.step)).not.toBe(id);
    // Nobody of that number works here: it is as planned.
    expect(crewNow(seen, { [id]: 7 })).toEqual(crewNow(seen));
  });
});

describe('a press that is signed', () => {
  it('names the one at whose card its step is, and nobody for what is at no card', () => {
    const seen = views.find((one) => crewNow(one).every(({ step }) => step !== undefined));
    if (!seen) throw new Error('The three are never busy at once.');
    const people = crewNow(seen);
    for (const { person, step, watches } of people)
      for (const one of [step, ...watches]) {
        const begin = { kind: 'start-step', step: idOf(one) ?? '' } as const;
        expect(signed(begin, people)).toEqual({ ...begin, person });
      }
    const nobody = { kind: 'confirm', step: 'no such step', stage: 'work' } as const;
    expect(signed(nobody, people)).toBe(nobody);
    const pause = { kind: 'pause' } as const;
    expect(signed(pause, people)).toBe(pause);
  });
});

describe('what they are called', () => {
  it('is their name, or their place in the crew', () => {
    const { household } = kitchenOf('hall');
    const called = (names: readonly string[] | undefined) =>
      [0, 1, 2].map((at) =>
        inEnglish.say(personName({ ...household, ...(names && { names }) }, at)),
      );
    expect(called(undefined)).toEqual(['Noa', 'Eli', 'Tamar']);
    expect(called(['Ruth'])).toEqual(['Ruth', 'Helper 1', 'Helper 2']);
    expect(called([])).toEqual(['You', 'Helper 1', 'Helper 2']);
  });
});
