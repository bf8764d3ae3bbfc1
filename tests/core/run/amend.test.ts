import { asWritten } from '../../../src/core/messages/index.ts';
import { inEnglish as english } from '../../support/english.ts';
import { describe, expect, it } from 'vitest';
import type { Plan, Stage, Step } from '../../../src/core/plan/index.ts';
import { fold } from '../../../src/core/run/index.ts';
import { planOf, smallPlan } from './support/fixtures.ts';
import { Tablet } from './support/tablet.ts';

/** The small plan with cautions at its pours. */
const plan: Plan = planOf(
  smallPlan.steps.map((one) =>
    one.kind === 'pour' ? { ...one, standing: ['steam'], after: ['scald-first-aid'] } : one,
  ),
);

function of(id: string): Step {
  const step = plan.steps.find((one) => one.id === id);
  if (!step) throw new Error(`no step ${id}`);
  return step;
}

function running(): Tablet {
  const tablet = new Tablet(plan);
  tablet.does({ kind: 'start-run' });
  return tablet;
}

function amends(...steps: readonly Step[]): string | null {
  return running().tries({
    kind: 'amend-plan',
    steps,
    startS: {},
    reason: asWritten('It ran out.'),
  });
}

/** A third kettle as it should be added: boil and pour after the second. */
const boil3: Step = { ...of('boil-2'), id: 'boil-3', needs: [{ step: 'pour-2' }] };
const pour3: Step = {
  ...of('pour-2'),
  id: 'pour-3',
  needs: [{ step: 'boil-3', withinS: 300 }, { step: 'pour-2' }],
};

/** The step with one stage changed. */
function staged(step: Step, id: string, change: Partial<Stage>): Step {
  const stages = step.stages.map((one) => (one.id === id ? { ...one, ...change } : one));
  return { ...step, stages };
}

/** The step with the lengths of its timers changed. */
function timed(step: Step, change: (lengthS: number) => number): Step {
  const stages = step.stages.map((stage) => ({
    ...stage,
    timers: stage.timers.map((timer) => ({ ...timer, lengthS: change(timer.lengthS) })),
  }));
  return { ...step, stages };
}

describe('a plan amended in the run', () => {
  it('takes new steps that are guarded as their siblings, and waits for them', () => {
    // Verifies: I-11, I-17
    const tablet = running();
    const cover = { ...of('cover-sink'), needs: [{ step: 'pour-2' }, { step: 'pour-3' }] };
    const asked = { kind: 'amend-plan', startS: {}, reason: asWritten('It ran out.') } as const;
    tablet.does({ ...asked, steps: [boil3, pour3, cover] });
    expect(fold(tablet.facts)).toEqual(tablet.state);
    expect(tablet.step('pour-3').status).toBe('waiting');
    expect(tablet.tries({ kind: 'start-step', step: 'boil-3' })).toBe('needs-unmet');
    expect(tablet.step('cover-sink').blockedBy.map(english.say)).toContain('First: “pour-2”.');
    expect(tablet.step('pour-3').gates.map(({ gate }) => gate.id)).toEqual(['scald-dress']);
    // Less water, other words and another guess are nobody's loss.
    expect(amends({ ...of('pour-1'), title: asWritten('Kettle 1 of 3') })).toBeNull();
    const guess = timed(of('boil-1'), (lengthS) => lengthS / 2);
    expect(amends(guess)).toBeNull();
    // Guarding more is always taken: a longer wait, an earlier alarm.
    expect(amends(of('glow'))).toBeNull();
    expect(amends(timed(of('glow'), (s) => (s === 600 ? 900 : s === 720 ? 500 : s)))).toBeNull();
    expect(
      amends({ ...of('pour-1'), gates: ['scald-dress', 'air'], standing: ['steam', 'floor'] }),
    ).toBeNull();
    expect(amends({ ...of('pour-1'), needs: [{ step: 'boil-1', withinS: 200 }] })).toBeNull();
    const dry: Stage = {
      id: 'dry',
      role: 'do',
      title: asWritten('Dry it.'),
      detail: [],
      timers: [],
      resumption: 'continue',
      hazards: [],
      say: asWritten('Dry'),
    };
    expect(amends({ ...of('pour-1'), stages: [...of('pour-1').stages, dry] })).toBeNull();
  });

  it('loses no gate, caution, need or stage, by name', () => {
    // Verifies: I-11, I-17, I-18
    const cases: [Step, string][] = [
      [{ ...of('pour-1'), gates: [] }, 'amendment-drops-gate'],
      [{ ...of('pour-1'), standing: [] }, 'amendment-drops-caution'],
      [{ ...of('pour-1'), after: [] }, 'amendment-drops-caution'],
      [{ ...of('pour-1'), needs: [] }, 'amendment-drops-need'],
      [{ ...of('pour-1'), needs: [{ step: 'boil-1' }] }, 'amendment-drops-need'],
      [{ ...of('pour-1'), needs: [{ step: 'boil-1', withinS: 900 }] }, 'amendment-drops-need'],
      [{ ...of('pour-1'), stages: of('pour-1').stages.slice(0, 1) }, 'amendment-drops-stage'],
      [{ ...of('pour-1'), stages: of('pour-1').stages.toReversed() }, 'amendment-drops-stage'],
    ];
    for (const [step, code] of cases) expect(amends(step), code).toBe(code);
  });

  it('guards no less than before: hazards, waits, limits, hands and making safe', () => {
    // Verifies: I-07, I-17
    const { makeSafe: _, ...unsafe } = of('pour-1');
    const cases: Step[] = [
      timed(of('rest-sink'), () => 60),
      timed(of('glow'), (lengthS) => (lengthS === 720 ? 7200 : lengthS)),
      staged(of('glow'), 'hold', { timers: [] }),
      staged(of('glow'), 'hold', { hazards: [] }),
      staged(of('glow'), 'hold', { resumption: 'continue' }),
      staged(of('rest-sink'), 'rest', { say: asWritten('Enough') }),
      { ...of('pour-1'), demands: { kettle: 1 } },
      unsafe,
    ];
    for (const step of cases) expect(amends(step), step.id).toBe('amendment-weakens');
    // A purpose turned about, a repetition or a fault lost: each alone.
    const reminders = of('glow').stages.flatMap(({ timers }) => timers);
    const without = (id: string, change: object): Step => ({
      ...of('glow'),
      stages: of('glow').stages.map((stage) => ({
        ...stage,
        timers: stage.timers.map((timer) => (timer.id === id ? { ...timer, ...change } : timer)),
      })),
    });
    expect(reminders.map(({ id }) => id)).toEqual(['expect', 'limit', 'hold', 'look']);
    for (const step of [
      without('hold', { purpose: 'at-least' }),
      without('look', { repeats: false }),
      without('limit', { fault: 'smoke' }),
      without('limit', { role: 'reminder' }),
    ])
      expect(amends(step)).toBe('amendment-weakens');
  });

  it('does not turn a step into other work, nor add work that has no like in the plan', () => {
    const cases: [Step, string][] = [
      [{ ...of('pour-1'), fixture: 'hob' }, 'amendment-changes-work'],
      [{ ...of('pour-1'), kind: 'cover' }, 'amendment-changes-work'],
      [{ ...of('pour-1'), phase: 'clean' }, 'amendment-changes-work'],
      [{ ...of('pour-1'), startsBy: 'chain' }, 'amendment-changes-work'],
      [{ ...of('glow'), attention: 'none' }, 'amendment-changes-work'],
      [{ ...pour3, needs: [{ step: 'pour-2' }], fixture: 'hob' }, 'amendment-without-sibling'],
      [{ ...of('glow'), id: 'torch', kind: 'high-heat' }, 'amendment-without-sibling'],
    ];
    for (const [step, code] of cases) expect(amends(step), step.id).toBe(code);
  });

  it('adds no step with less than its siblings have', () => {
    // Verifies: I-11, I-18
    const cases: [Step, string][] = [
      [{ ...pour3, gates: [] }, 'amendment-drops-gate'],
      [{ ...pour3, standing: [] }, 'amendment-drops-caution'],
      [{ ...pour3, stages: pour3.stages.slice(0, 1) }, 'amendment-drops-stage'],
      [{ ...pour3, needs: [{ step: 'boil-3' }] }, 'amendment-drops-need'],
      [{ ...pour3, demands: {} }, 'amendment-weakens'],
      [{ ...pour3, startsBy: 'chain' }, 'amendment-changes-work'],
      [{ ...pour3, phase: 'cover' }, 'amendment-changes-work'],
    ];
    for (const [step, code] of cases) expect(amends(boil3, step), code).toBe(code);
  });

  it('adds water as fresh as the least fresh of its siblings', () => {
    // Verifies: I-11
    const tablet = running();
    const sooner = { ...of('pour-2'), needs: [{ step: 'boil-2', withinS: 200 }] };
    const third = (withinS: number): Step => ({
      ...pour3,
      needs: [{ step: 'boil-3', withinS }, { step: 'pour-2' }],
    });
    const asked = { kind: 'amend-plan', startS: {}, reason: asWritten('It ran out.') } as const;
    tablet.does({ ...asked, steps: [sooner] });
    expect(tablet.tries({ ...asked, steps: [boil3, third(301)] })).toBe('amendment-drops-need');
    expect(tablet.tries({ ...asked, steps: [boil3, third(250)] })).toBeNull();
  });

  it('leaves an order: nothing may need itself', () => {
    // Verifies: I-13
    const boil1 = { ...of('boil-1'), needs: [{ step: 'rest-sink' }, { step: 'pour-2' }] };
    expect(amends(boil1)).toBe('amendment-cycle');
    expect(amends({ ...boil3, needs: [{ step: 'boil-3' }] })).toBe('amendment-cycle');
  });

  it('says what is wrong with it, and touches nothing that has begun', () => {
    // Verifies: I-12, I-04
    expect(amends()).toBe('bad-amendment');
    expect(amends(of('pour-1'), of('pour-1'))).toBe('bad-amendment');
    expect(amends({ ...pour3, needs: [{ step: 'boil-9', withinS: 300 }] })).toBe('bad-amendment');
    expect(amends({ ...of('pour-1'), gates: ['scald-dress', 'moon'] })).toBe('bad-amendment');
    expect(amends({ ...of('pour-1'), demands: { hands: 1, kettle: 1, crane: 1 } })).toBe(
      'bad-amendment',
    );
    const tablet = running();
    const asked = { kind: 'amend-plan', steps: [of('clean-sink')], startS: {} } as const;
    expect(tablet.tries({ ...asked, reason: asWritten('') })).toBe('reason-missing');
    tablet.does({ kind: 'start-step', step: 'clean-sink' });
    expect(tablet.tries({ ...asked, reason: asWritten('Dirty.') })).toBe('already-begun');
    tablet.says('clean-sink');
    expect(tablet.tries({ ...asked, reason: asWritten('Dirty.') })).toBe('already-begun');
  });
});
