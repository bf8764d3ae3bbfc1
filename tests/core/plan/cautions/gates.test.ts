import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Gate, Plan, Step } from '../../../../src/core/plan/index.ts';
import { reportOf, reportText } from '../../../../src/core/report/index.ts';
import { decide, createRun, perform, type RunState } from '../../../../src/core/run/index.ts';
import { inEnglish } from '../../../support/english.ts';
import { DEMOS, planOfDemo } from '../support/plans.ts';

// Verifies: I-05, I-11. Every gate of every demo kitchen, through the engine.

const NOW = { wallMs: 1_767_225_600_000, monoMs: 0, session: 'page-1' };

/** Only this step is left of the plan, so that nothing but its gates can keep it from starting. */
function only(plan: Plan, step: Step): Plan {
  return { ...plan, steps: [{ ...step, needs: [], startsBy: 'person' }] };
}

function running(plan: Plan, step: Step): RunState {
  const { state } = createRun(only(plan, step), NOW);
  const begun = perform(state, { kind: 'start-run' }, NOW);
  if ('refusal' in begun) throw new Error(begun.refusal.code);
  return begun.state;
}

function keyOf(gate: Gate, step: Step): string {
  if (gate.scope === 'run') return 'run';
  return gate.scope === 'fixture' ? (step.fixture ?? 'run') : `${step.id}#1`;
}

function answer(state: RunState, gate: Gate, step: Step, yes: boolean): RunState {
  const done = perform(
    state,
    {
      kind: 'answer-gate',
      gate: gate.id,
      scopeKey: keyOf(gate, step),
      answer: yes ? 'yes' : 'no',
    },
    NOW,
  );
  if ('refusal' in done) throw new Error(done.refusal.code);
  return done.state;
}

/** The name of the refusal, or `begun`. */
function tries(state: RunState, step: Step): string {
  const decision = decide(state, { kind: 'start-step', step: step.id }, NOW);
  return 'refusal' in decision ? decision.refusal.code : 'begun';
}

/** A condition of the room that is told not to hold suspends the whole run, not only its step. */
function heldBy(gate: Gate, known: 'unknown' | 'no'): string {
  return gate.kind === 'condition' && known === 'no' ? 'run-suspended' : 'gate-shut';
}

function override(state: RunState, gate: Gate, step: Step, reason: string) {
  return decide(
    state,
    { kind: 'override-gate', gate: gate.id, scopeKey: keyOf(gate, step), reason },
    NOW,
  );
}

/** Each gate of a plan at the first step that names it, and all gates of that step. */
function gatesAtWork(plan: Plan) {
  return plan.gates.map((gate) => {
    const step = plan.steps.find(({ gates }) => gates.includes(gate.id));
    if (!step) throw new Error(`no step names ${gate.id}`);
    const others = plan.gates.filter(({ id }) => id !== gate.id && step.gates.includes(id));
    return { gate, step, others };
  });
}

describe.each(DEMOS)('%s', (demo) => {
  const plan = planOfDemo(demo);
  const rows = gatesAtWork(plan);
  const danger = rows.filter(({ gate }) => gate.signal === 'DANGER');

  it('has gates against death among others', () => {
    expect(danger.map(({ gate }) => gate.id)).toContain('chem-mix');
    expect(danger.length).toBeLessThan(rows.length);
  });

  it.each(rows.map((row) => [row.gate.id, row] as const))(
    '%s holds its step while it is unanswered or no, and lets it begin when yes',
    (_id, { gate, step, others }) => {
      const rest = others.reduce(
        (state, other) => answer(state, other, step, true),
        running(plan, step),
      );
      expect(tries(rest, step)).toBe('gate-shut');
      expect(tries(answer(rest, gate, step, false), step)).toBe(heldBy(gate, 'no'));
      expect(tries(answer(rest, gate, step, true), step)).toBe('begun');
    },
  );

  it.each(danger.map((row) => [row.gate.id, row] as const))(
    'the DANGER gate %s cannot be overridden, whatever is written and however it was answered',
    (_id, { gate, step, others }) => {
      const open = others.reduce(
        (state, other) => answer(state, other, step, true),
        running(plan, step),
      );
      fc.assert(
        fc.property(
          fc.string(),
          fc.constantFrom('unknown' as const, 'no' as const),
          (reason, known) => {
            const state = known === 'no' ? answer(open, gate, step, false) : open;
            const decision = override(state, gate, step, reason);
            expect('refusal' in decision && decision.refusal.code).toBe('danger-gate');
            const done = perform(
              state,
              { kind: 'override-gate', gate: gate.id, scopeKey: keyOf(gate, step), reason },
              NOW,
            );
            expect('refusal' in done).toBe(true);
            expect(tries(state, step)).toBe(heldBy(gate, known));
          },
        ),
        { numRuns: 20 },
      );
    },
  );

  it('the other gates take a typed reason, which goes into the record', () => {
    for (const { gate, step, others } of rows.filter((row) => row.gate.signal !== 'DANGER')) {
      const begun = createRun(only(plan, step), NOW);
      const started = perform(begun.state, { kind: 'start-run' }, NOW);
      if ('refusal' in started) throw new Error(started.refusal.code);
      for (const empty of ['', '   ', '\n\t']) {
        const decision = override(started.state, gate, step, empty);
        expect('refusal' in decision && decision.refusal.code).toBe('reason-missing');
      }
      const reason = `Seen to it myself: ${gate.id}.`;
      const asked = {
        kind: 'override-gate',
        gate: gate.id,
        scopeKey: keyOf(gate, step),
        reason,
      } as const;
      const done = perform(started.state, asked, NOW);
      if ('refusal' in done) throw new Error(done.refusal.code);
      const open = others.reduce((state, other) => answer(state, other, step, true), done.state);
      expect(tries(open, step)).toBe('begun');
      const record = reportOf([...begun.facts, ...started.facts, ...done.facts]);
      expect(record.overriddenGates).toMatchObject([{ reason }]);
      expect(reportText(record, inEnglish, 'UTC')).toContain(reason);
    }
  });

  it('a gate that the plan names and does not describe cannot be opened at all', () => {
    const { step } = rows[0] as (typeof rows)[number];
    const torn: Plan = { ...plan, gates: [] };
    const state = running(torn, step);
    expect(tries(state, step)).toBe('gate-shut');
    for (const id of step.gates) {
      const asked = { gate: id, scopeKey: 'run' } as const;
      for (const request of [
        { kind: 'answer-gate', answer: 'yes', ...asked },
        { kind: 'override-gate', reason: 'I say so.', ...asked },
      ] as const) {
        expect('refusal' in decide(state, request, NOW)).toBe(true);
      }
    }
  });
});
