import { describe, expect, it } from 'vitest';
import { asWritten } from '../../../../../src/core/messages/index.ts';
import { ranOut, type Plan, type Step } from '../../../../../src/core/plan/index.ts';
import {
  apply,
  createRun,
  perform,
  type Fact,
  type RunState,
} from '../../../../../src/core/run/index.ts';
import { DEMOS, planOfDemo } from '../../../plan/support/plans.ts';

const AT = { wallMs: 1_767_225_600_000, monoMs: 0, session: 'page' };

/** A run in which everything planned before this pour is behind, and it is poured now. */
function pouring(plan: Plan, pour: Step): RunState {
  const { startS } = plan.timetable;
  const atS = startS[pour.id] ?? 0;
  let { state } = createRun(plan, AT);
  const take = (body: Fact['body']): void => {
    state = apply(state, { seq: state.seq + 1, id: `f${state.seq}`, at: AT, body });
  };
  take({ kind: 'run-started' });
  for (const { id } of plan.steps) {
    if (id === pour.id || (startS[id] ?? 0) > atS) continue;
    take({
      kind: 'step-settled',
      step: id,
      attempt: 1,
      outcome: 'skipped',
      reason: asWritten('Before.'),
    });
  }
  take({ kind: 'step-started', step: pour.id, attempt: 1, by: 'person' });
  return state;
}

const SHARES = [0.02, 0.4, 0.9];

/** A person stands there with an empty kettle; time of the processor, s, whatever else the machine does. */
const LONGEST_S = 5;

describe.each(DEMOS)('"I ran out here" in %s', (demo) => {
  const plan = planOfDemo(demo);
  const all = plan.steps.filter(({ kind }) => kind === 'pour');
  // The hall has 71 kettles; every eighth of them, and its last.
  const every = Math.ceil(all.length / 9);
  const pours = all.filter((_, i) => i % every === 0 || i === all.length - 1);

  it('is accepted at every kettle and share, soon', () => {
    // Verifies: I-29
    const refused: string[] = [];
    let longestS = 0;
    for (const pour of pours) {
      const state = pouring(plan, pour);
      const begun = (id: string): boolean => (state.steps[id]?.status ?? 'waiting') !== 'waiting';
      for (const share of SHARES) {
        const from = process.cpuUsage();
        const amendment = ranOut(plan, pour.id, share, begun);
        const done = amendment && perform(state, { kind: 'amend-plan', ...amendment }, AT);
        longestS = Math.max(longestS, process.cpuUsage(from).user / 1e6);
        if (!done || 'refusal' in done)
          refused.push(`${pour.id} ${share}: ${done ? done.refusal.message : 'no amendment'}`);
      }
    }
    expect(pours.length).toBeGreaterThan(0);
    expect(refused).toEqual([]);
    expect(longestS).toBeLessThan(LONGEST_S);
  }, 120_000);
});
