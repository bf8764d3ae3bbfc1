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

/** A person whom the water fails again and again, kettle after kettle of one surface. */
class Unlucky {
  state: RunState;

  constructor(
    plan: Plan,
    readonly fixture: string,
  ) {
    this.state = apply(createRun(plan, AT).state, this.fact(2, { kind: 'run-started' }));
  }

  private fact(seq: number, body: Fact['body']): Fact {
    return { seq, id: `f${seq}`, at: AT, body };
  }

  private take(body: Fact['body']): void {
    this.state = apply(this.state, this.fact(this.state.seq + 1, body));
  }

  /** The kettle that is poured next; all before it is behind. */
  pours(): Step | undefined {
    const waits = (step: Step): boolean => this.state.steps[step.id]?.status === 'waiting';
    const pour = this.state.plan.steps
      .filter((step) => step.kind === 'pour' && step.fixture === this.fixture && waits(step))
      .toSorted((a, b) => kettle(a) - kettle(b))[0];
    if (!pour) return undefined;
    const settle = (id: string): void => {
      for (const need of this.state.plan.steps.find((one) => one.id === id)?.needs ?? [])
        settle(need.step);
      if (this.state.steps[id]?.status !== 'waiting' || id === pour.id) return;
      const reason = asWritten('Before.');
      this.take({ kind: 'step-settled', step: id, attempt: 1, outcome: 'skipped', reason });
    };
    settle(pour.id);
    this.take({ kind: 'step-started', step: pour.id, attempt: 1, by: 'person' });
    return pour;
  }

  /** What becomes of "I ran out here" at this share of the kettle; null: accepted. */
  runsOut(pour: Step, share: number): string | null {
    const { plan, steps } = this.state;
    const begun = (id: string): boolean => (steps[id]?.status ?? 'waiting') !== 'waiting';
    const amendment = ranOut(plan, pour.id, share, begun);
    if (!amendment) return 'no amendment';
    const done = perform(this.state, { kind: 'amend-plan', ...amendment }, AT);
    if ('refusal' in done) return done.refusal.code;
    this.state = done.state;
    const reason = asWritten('The water gave out.');
    this.take({ kind: 'step-settled', step: pour.id, attempt: 1, outcome: 'skipped', reason });
    return null;
  }
}

function kettle({ work }: Step): number {
  return work.on === 'kettle' ? work.kettle : 0;
}

/** As badly as it can go, and as it does now and then. */
const SHARES = [0.02, 0.4];

/** More bad luck than anybody has. */
const TIMES = 4;

describe.each(DEMOS.filter((demo) => demo !== 'hall'))(
  'running out again and again in %s',
  (demo) => {
    const plan = planOfDemo(demo);
    const fixtures = [
      ...new Set(
        plan.steps.filter(({ kind }) => kind === 'pour').map((step) => step.fixture ?? ''),
      ),
    ];

    it.each(SHARES)(
      'at share %d of every kettle is accepted each time, with a bounded plan',
      (share) => {
        // Verifies: I-29
        const refused: string[] = [];
        let most = 0;
        for (const fixture of fixtures) {
          const person = new Unlucky(plan, fixture);
          for (let time = 1; time <= TIMES; time += 1) {
            const pour = person.pours();
            if (!pour) break;
            let said: string | null;
            try {
              said = person.runsOut(pour, share);
            } catch (error) {
              said = String(error);
            }
            if (said !== null) refused.push(`${pour.id}, time ${time}: ${said}`);
            if (said !== null) break;
          }
          most = Math.max(most, person.state.plan.steps.length);
        }
        expect(fixtures.length).toBeGreaterThan(0);
        expect(refused).toEqual([]);
        expect(most).toBeLessThan(1200);
      },
      120_000,
    );
  },
);
