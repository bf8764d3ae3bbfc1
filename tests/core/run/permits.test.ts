import { asWritten } from '../../../src/core/messages/index.ts';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Request } from '../../../src/core/run/index.ts';
import { perform } from '../../../src/core/run/index.ts';
import { purgePlan, smallPlan } from './support/fixtures.ts';
import { glowing, resting, Tablet } from './support/tablet.ts';

/** What the comments at the statuses say: status → the requests after "Permits:". */
function documented(type: string): Record<string, string[]> {
  const path = join(import.meta.dirname, '../../../src/core/run/model/statuses.ts');
  const text = readFileSync(path, 'utf8');
  const part = text.slice(text.indexOf(`export type ${type} =`)).split(/(?<=');\n/)[0] ?? '';
  const found: Record<string, string[]> = {};
  for (const [, list = '', name = ''] of part.matchAll(
    /Permits: ([^.]*)\.(?:(?!Permits)[^|])*\| '([a-z-]+)'/g,
  ))
    found[name] = (list.match(/[a-z][a-z-]+/g) ?? []).filter((one) => one !== 'nothing').toSorted();
  return found;
}

/** Runs of every kind of trouble; together they bring about every status. */
const MAKERS: readonly (() => Tablet)[] = [
  () => new Tablet(purgePlan),
  () => {
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' });
    tablet.opens('burner-clear', 'glow#1');
    tablet.opens('air');
    return tablet;
  },
  () => resting(smallPlan),
  () => {
    const tablet = resting(smallPlan);
    tablet.sleeps(8 * 3600);
    return tablet;
  },
  () => {
    // Over, and nobody has looked yet.
    const tablet = resting(smallPlan);
    tablet.unseen(25 * 3600);
    return tablet;
  },
  () => glowing(purgePlan),
  () => {
    const tablet = glowing(purgePlan);
    tablet.passes(610);
    return tablet;
  },
  () => {
    const tablet = glowing(purgePlan);
    tablet.unseen(700);
    tablet.does({ kind: 'tick' });
    return tablet;
  },
  () => {
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    tablet.says('boil-1');
    tablet.passes(310);
    return tablet;
  },
  () => {
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'report-fault', fault: 'flame-out', step: 'glow' });
    return tablet;
  },
  () => {
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'report-fault', fault: 'flame-out', step: 'glow' });
    tablet.passes(310);
    return tablet;
  },
  () => {
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Off.' });
    return tablet;
  },
  () => {
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Off.' });
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    tablet.passes(2000);
    return tablet;
  },
  () => {
    // Something hot, while another clock that has ended calls.
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Off.' });
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    tablet.passes(2000);
    return tablet;
  },
  () => {
    // A clock that stays in doubt after a person's word.
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    tablet.restarts(30);
    tablet.does({
      kind: 'answer-review',
      question: tablet.view.review[0]?.id ?? '',
      answer: 'unknown',
    });
    return tablet;
  },
  () => {
    // A night of which a person said that the clock was set.
    const tablet = resting(smallPlan);
    tablet.sleeps(8 * 3600);
    tablet.does({ kind: 'answer-clock', right: true, passed: false });
    return tablet;
  },
  () => {
    // A rest whose stage a person ends, so that it stands due.
    const steps = smallPlan.steps.map((one) =>
      one.kind === 'rest'
        ? { ...one, stages: one.stages.map((stage) => ({ ...stage, say: asWritten('Rested') })) }
        : one,
    );
    const tablet = resting({ ...smallPlan, steps });
    tablet.passes(24 * 3600 + 20);
    return tablet;
  },
  () => {
    const steps = smallPlan.steps.map((one) =>
      one.kind === 'rest'
        ? { ...one, stages: one.stages.map((stage) => ({ ...stage, say: asWritten('Rested') })) }
        : one,
    );
    const tablet = resting({ ...smallPlan, steps });
    tablet.unseen(25 * 3600);
    tablet.does({ kind: 'tick' });
    return tablet;
  },
];

const WAYS: readonly ((tablet: Tablet) => void)[] = [
  () => undefined,
  (tablet) => void tablet.tries({ kind: 'pause' }),
  (tablet) => void tablet.tries({ kind: 'report-fault', fault: 'unwell' }),
  (tablet) => void tablet.tries({ kind: 'report-fault', fault: 'undefined' }),
  (tablet) => void tablet.tries({ kind: 'report-fault', fault: 'cracked' }),
  (tablet) => {
    tablet.tries({ kind: 'report-fault', fault: 'cracked' });
    tablet.tries({ kind: 'pause' });
  },
  (tablet) => {
    tablet.tries({ kind: 'report-fault', fault: 'undefined' });
    for (const { id } of tablet.view.faults) tablet.tries({ kind: 'clear-fault', faultId: id });
  },
  (tablet) => void tablet.tries({ kind: 'report-recheck', fixture: 'sink', text: 'Used.' }),
  (tablet) => {
    tablet.tries({ kind: 'pause' });
    tablet.tries({ kind: 'report-recheck', fixture: 'sink', text: 'Used.' });
  },
  (tablet) => {
    tablet.tries({ kind: 'report-fault', fault: 'unwell' });
    tablet.tries({ kind: 'report-recheck', fixture: 'sink', text: 'Used.' });
  },
  (tablet) => {
    tablet.restarts(400);
    tablet.tries({ kind: 'report-recheck', fixture: 'sink', text: 'Used.' });
  },
  (tablet) => tablet.restarts(400),
  (tablet) => tablet.restarts(0),
  (tablet) => void tablet.tries({ kind: 'stop-run', reason: 'Enough.' }),
];

function asked(tablet: Tablet): Request[] {
  const { view } = tablet;
  const fixture = 'sink';
  const steps = purgePlan.steps.filter(({ id }) => id === 'pour-2');
  const unbegun = view.plan.steps.filter(({ id }) => id === 'pour-2');
  return [
    { kind: 'start-run' },
    { kind: 'pause' },
    { kind: 'resume' },
    { kind: 'answer-gate', gate: 'scald-dress', scopeKey: 'run', answer: 'yes' },
    { kind: 'override-gate', gate: 'scald-dress', scopeKey: 'run', reason: 'Apron.' },
    { kind: 'report-fault', fault: 'cracked' },
    ...view.faults.map(({ id }) => ({ kind: 'clear-fault', faultId: id }) as const),
    { kind: 'stop-run', reason: 'Enough.' },
    ...view.review.map(
      ({ id }) => ({ kind: 'answer-review', question: id, answer: 'went-on' }) as const,
    ),
    { kind: 'answer-clock', right: true, passed: true },
    { kind: 'withdraw-clock-answer' },
    ...view.reviewAnswers.map(
      ({ id }) => ({ kind: 'withdraw-review-answer', question: id }) as const,
    ),
    { kind: 'report-recheck', fixture, text: 'Used.' },
    { kind: 'withdraw-recheck', fixture: view.usedToTakeBack ?? fixture },
    {
      kind: 'amend-plan',
      steps: unbegun.length > 0 ? unbegun : steps,
      startS: {},
      reason: asWritten('Out.'),
    },
    { kind: 'note', text: 'Well.' },
    ...view.steps.flatMap((one) => stepRequests(one.step.id, one.step.stages[one.stage]?.id ?? '')),
    ...view.timers.flatMap(({ id }) => timerRequests(id, tablet)),
  ];
}

function stepRequests(step: string, stage: string): Request[] {
  return [
    { kind: 'start-step', step },
    { kind: 'confirm', step, stage },
    { kind: 'skip-step', step, reason: 'r' },
    { kind: 'stop-step', step, reason: 'r' },
    { kind: 'repeat-step', step, reason: 'r' },
    { kind: 'confirm-safe', step },
  ];
}

function timerRequests(timer: string, tablet: Tablet): Request[] {
  const started = tablet.state.timers[timer]?.startedWallMs ?? 0;
  return [
    { kind: 'acknowledge-timer', timer },
    { kind: 'extend-timer', timer, byS: 60 },
    { kind: 'correct-time', timer, sinceWallMs: started - 1000, reason: 'r' },
  ];
}

function accepted(tablet: Tablet, request: Request): boolean {
  return 'facts' in perform(tablet.state, request, tablet.readings());
}

type Found = Record<string, Set<string>>;

function gather(found: Found, status: string, tablet: Tablet, requests: readonly Request[]): void {
  const set = (found[status] ??= new Set());
  for (const request of requests) if (accepted(tablet, request)) set.add(request.kind);
}

function listed(found: Found): Record<string, string[]> {
  return Object.fromEntries(
    Object.entries(found).map(([status, kinds]) => [status, [...kinds].toSorted()]),
  );
}

describe('the comment at each status', () => {
  // Verifies: I-12
  const runs: Found = {};
  const steps: Found = {};
  const timers: Found = {};
  for (const make of MAKERS) {
    for (const way of WAYS) {
      const tablet = make();
      way(tablet);
      const { view } = tablet;
      gather(runs, view.status, tablet, asked(tablet));
      for (const clock of view.timers)
        gather(timers, clock.status, tablet, timerRequests(clock.id, tablet));
      for (const { status, stage, step } of view.steps)
        gather(steps, status, tablet, stepRequests(step.id, step.stages[stage]?.id ?? ''));
    }
  }

  it('of a run lists what the engine accepts, and nothing else', () => {
    const said = documented('RunStatus');
    expect(Object.keys(said)).toHaveLength(7);
    expect(listed(runs)).toEqual(said);
  });

  it('of a step lists what can be asked about it, and nothing else', () => {
    const said = documented('StepStatus');
    expect(Object.keys(said)).toHaveLength(7);
    expect(listed(steps)).toEqual(said);
  });

  it('of a clock lists what may be asked of it, and nothing else', () => {
    const { void: never, closed, ...said } = documented('TimerStatus');
    expect(never).toEqual([]);
    expect(closed).toEqual([]);
    expect(listed(timers)).toEqual(said);
  });
});
