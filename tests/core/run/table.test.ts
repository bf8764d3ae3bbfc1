import { asWritten } from '../../../src/core/messages/index.ts';
import { describe, expect, it } from 'vitest';
import type { Observation, Request, RunStatus } from '../../../src/core/run/index.ts';
import { perform } from '../../../src/core/run/index.ts';
import { purgePlan } from './support/fixtures.ts';
import { glowing, Tablet } from './support/tablet.ts';

/** A run in each status, with as much in it as the status can hold. */
const RUNS: Readonly<Record<RunStatus, () => Tablet>> = {
  drafting: () => new Tablet(purgePlan),
  running: () => glowing(purgePlan),
  held: () => {
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'pause' });
    return tablet;
  },
  suspended: () => {
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'report-fault', fault: 'power-cut' });
    return tablet;
  },
  reviewing: () => {
    const tablet = glowing(purgePlan);
    tablet.restarts(400);
    return tablet;
  },
  closing: () => {
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'stop-run', reason: 'Enough.' });
    return tablet;
  },
  closed: () => {
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'stop-run', reason: 'Enough.' });
    return tablet;
  },
};

/** Refused by this name wherever it could be asked. */
function nothingBefore(code: string, closing = 'run-closing'): readonly string[] {
  return ['run-drafting', code, code, code, code, closing, 'run-closed'];
}

/** Every kind of request and observation, asked as sensibly as the run allows. */
function everything(tablet: Tablet): (Request | Observation)[] {
  const { view } = tablet;
  const timer = view.timers[0]?.id ?? 'none';
  return [
    { kind: 'start-run' },
    { kind: 'start-step', step: 'boil-1' },
    { kind: 'confirm', step: 'glow', stage: 'hold' },
    { kind: 'answer-gate', gate: 'scald-dress', scopeKey: 'run', answer: 'yes' },
    { kind: 'override-gate', gate: 'scald-dress', scopeKey: 'run', reason: 'Apron.' },
    { kind: 'pause' },
    { kind: 'resume' },
    { kind: 'report-fault', fault: 'cracked' },
    { kind: 'clear-fault', faultId: view.faults[0]?.id ?? 'none' },
    { kind: 'end-cooling', faultId: view.coolings[0]?.fault ?? 'none', as: 'mistake' },
    { kind: 'skip-step', step: 'boil-1', reason: 'Not needed.' },
    { kind: 'stop-step', step: 'glow', reason: 'Enough.' },
    { kind: 'repeat-step', step: 'glow', reason: 'Again.' },
    { kind: 'stop-run', reason: 'Enough.' },
    { kind: 'confirm-safe', step: 'glow' },
    { kind: 'acknowledge-timer', timer },
    { kind: 'extend-timer', timer, byS: 60 },
    { kind: 'answer-review', question: view.review[0]?.id ?? 'none', answer: 'went-on' },
    { kind: 'answer-clock', right: true, passed: true },
    { kind: 'withdraw-clock-answer' },
    { kind: 'withdraw-review-answer', question: view.reviewAnswers[0]?.id ?? 'none' },
    { kind: 'report-recheck', fixture: 'sink', text: 'Used.' },
    { kind: 'withdraw-recheck', fixture: 'sink' },
    { kind: 'correct-time', timer, sinceWallMs: 0, reason: 'Earlier.' },
    {
      kind: 'amend-plan',
      steps: purgePlan.steps.filter(({ id }) => id === 'pour-2'),
      startS: {},
      reason: asWritten('It ran out.'),
    },
    { kind: 'note', text: 'Well.' },
    { kind: 'session-opened', tornRecords: 0 },
    { kind: 'session-closed' },
    { kind: 'storage-failed', text: 'Full.' },
    { kind: 'storage-mended' },
    { kind: 'alarm-handed', timer, cause: 1 },
    { kind: 'alarm-failed', timer, cause: 1, text: 'Sound is off.' },
    { kind: 'tick' },
  ];
}

/**
 * What becomes of each pair: `+` is a transition (possibly to the same state),
 * anything else is the name of the refusal. Columns: drafting, running, held,
 * suspended, reviewing, closing, closed.
 */
const TABLE: Readonly<Record<string, readonly string[]>> = {
  'start-run': [
    '+',
    'run-running',
    'run-held',
    'run-suspended',
    'run-reviewing',
    'run-closing',
    'run-closed',
  ],
  'start-step': [
    'run-drafting',
    '+',
    'run-held',
    'run-suspended',
    'run-reviewing',
    'run-closing',
    'run-closed',
  ],
  confirm: [
    'run-drafting',
    'hold-not-due',
    'hold-not-due',
    'fault-open',
    'run-reviewing',
    'run-closing',
    'run-closed',
  ],
  'answer-gate': ['run-drafting', '+', '+', '+', '+', 'run-closing', 'run-closed'],
  'override-gate': ['run-drafting', '+', '+', '+', '+', 'run-closing', 'run-closed'],
  pause: [
    'run-drafting',
    '+',
    'run-held',
    'run-suspended',
    'run-reviewing',
    'run-closing',
    'run-closed',
  ],
  resume: [
    'run-drafting',
    'run-running',
    '+',
    'fault-open',
    'review-open',
    'run-closing',
    'run-closed',
  ],
  'report-fault': ['run-drafting', '+', '+', '+', '+', '+', 'run-closed'],
  'clear-fault': [
    'run-drafting',
    'unknown-fault',
    'unknown-fault',
    '+',
    'unknown-fault',
    'run-closing',
    'run-closed',
  ],
  'end-cooling': nothingBefore('unknown-fault', 'unknown-fault'),
  'skip-step': ['run-drafting', '+', '+', '+', 'run-reviewing', 'run-closing', 'run-closed'],
  'stop-step': ['run-drafting', '+', '+', '+', '+', 'run-closing', 'run-closed'],
  'repeat-step': [
    'run-drafting',
    'not-settled',
    'not-settled',
    'not-settled',
    'run-reviewing',
    'run-closing',
    'run-closed',
  ],
  'stop-run': ['+', '+', '+', '+', '+', '+', 'run-closed'],
  'confirm-safe': [
    'run-drafting',
    'not-unwinding',
    'not-unwinding',
    'not-unwinding',
    'not-unwinding',
    '+',
    'run-closed',
  ],
  'acknowledge-timer': [
    'run-drafting',
    'not-alerting',
    'not-alerting',
    'not-alerting',
    '+',
    'timer-closed',
    'run-closed',
  ],
  'extend-timer': [
    'run-drafting',
    'cannot-extend',
    'cannot-extend',
    'cannot-extend',
    'run-reviewing',
    'run-closing',
    'run-closed',
  ],
  'answer-review': [
    'run-drafting',
    'run-running',
    'run-held',
    'run-suspended',
    '+',
    'run-closing',
    'run-closed',
  ],
  'answer-clock': [
    'run-drafting',
    'nothing-asked',
    'nothing-asked',
    'nothing-asked',
    '+',
    'run-closing',
    'run-closed',
  ],
  'withdraw-clock-answer': nothingBefore('nothing-asked'),
  'withdraw-review-answer': nothingBefore('unknown-question'),
  'report-recheck': ['run-drafting', '+', '+', '+', '+', 'run-closing', 'run-closed'],
  'withdraw-recheck': nothingBefore('recheck-stands'),
  'correct-time': [
    'run-drafting',
    ...Array.from({ length: 4 }, () => 'cannot-correct'),
    'run-closing',
    'run-closed',
  ],
  'amend-plan': ['run-drafting', '+', '+', '+', 'run-reviewing', 'run-closing', 'run-closed'],
  note: ['+', '+', '+', '+', '+', '+', 'run-closed'],
  'session-opened': [...Array.from({ length: 6 }, () => 'session-already-open'), '+'],
  'session-closed': ['+', '+', '+', '+', '+', '+', '+'],
  'storage-failed': ['+', '+', '+', '+', '+', '+', 'run-closed'],
  'storage-mended': [...Array.from({ length: 6 }, () => 'storage-up'), 'run-closed'],
  'alarm-handed': ['timer-closed', '+', '+', '+', '+', 'timer-closed', 'run-closed'],
  'alarm-failed': ['timer-closed', '+', '+', '+', '+', 'timer-closed', 'run-closed'],
  tick: ['+', '+', '+', '+', '+', '+', '+'],
};

describe('every status with every request', () => {
  it('is a transition or a refusal by this name, and a refusal changes nothing', () => {
    // Verifies: I-12
    const found: Record<string, string[]> = {};
    for (const [status, make] of Object.entries(RUNS)) {
      for (const asked of everything(make())) {
        const tablet = make();
        const before = JSON.stringify(tablet.state);
        const refusal = tablet.tries(asked);
        (found[asked.kind] ??= []).push(refusal ?? '+');
        const absorbed = refusal !== null || status === 'closed';
        if (absorbed) expect(JSON.stringify(tablet.state)).toBe(before);
      }
    }
    expect(found).toEqual(TABLE);
  });

  it('refuses what the plan does not know, by name', () => {
    // Verifies: I-12
    const tablet = glowing(purgePlan);
    const cases: [Request, string][] = [
      [{ kind: 'start-step', step: 'x' }, 'unknown-step'],
      [{ kind: 'confirm', step: 'x', stage: 'x' }, 'unknown-step'],
      [{ kind: 'confirm', step: 'glow', stage: 'off' }, 'unknown-stage'],
      [{ kind: 'confirm', step: 'boil-1', stage: 'boil' }, 'not-begun'],
      [{ kind: 'start-step', step: 'glow' }, 'already-begun'],
      [{ kind: 'skip-step', step: 'x', reason: 'r' }, 'unknown-step'],
      [{ kind: 'skip-step', step: 'glow', reason: 'r' }, 'make-safe-first'],
      [{ kind: 'stop-step', step: 'boil-1', reason: 'r' }, 'not-begun'],
      [{ kind: 'stop-step', step: 'x', reason: 'r' }, 'unknown-step'],
      [{ kind: 'repeat-step', step: 'x', reason: 'r' }, 'unknown-step'],
      [{ kind: 'repeat-step', step: 'glow', reason: '' }, 'reason-missing'],
      [{ kind: 'confirm-safe', step: 'x' }, 'unknown-step'],
      [{ kind: 'acknowledge-timer', timer: 'x' }, 'timer-closed'],
      [{ kind: 'extend-timer', timer: 'x', byS: 1 }, 'timer-closed'],
      [{ kind: 'report-fault', fault: 'smoke', step: 'x' }, 'unknown-step'],
      [{ kind: 'note', text: ' ' }, 'reason-missing'],
    ];
    for (const [asked, code] of cases) expect(tablet.tries(asked)).toBe(code);
  });
});

describe('a turn', () => {
  it('that never comes to rest is a fault, not a hang', () => {
    // Verifies: I-16
    // A hundred stages that each end at once, in one step: more than a turn may take.
    const instant = Array.from({ length: 100 }, (_, number) => ({
      id: `stage-${number}`,
      role: 'do' as const,
      title: asWritten('Blink.'),
      detail: [],
      timers: [],
      resumption: 'continue' as const,
      hazards: [],
    }));
    const steps = purgePlan.steps.map((one) =>
      one.id === 'boil-1' ? { ...one, stages: instant } : one,
    );
    const forged = new Tablet({ ...purgePlan, steps });
    forged.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    expect(forged.view.status).toBe('suspended');
    expect(forged.state.faults[0]).toMatchObject({ kind: 'undefined' });
    expect(forged.state.faults[0]?.text).toMatch(/did not come to rest after 64 rounds/);
    // The longest turn of the sound plan is far below the limit.
    const sound = glowing(purgePlan);
    const stop = perform(sound.state, { kind: 'stop-run', reason: 'Enough.' }, sound.readings());
    expect('facts' in stop && stop.facts.length).toBe(1 + (purgePlan.steps.length - 1));
  });
});
