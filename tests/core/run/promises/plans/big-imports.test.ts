import { describe, expect, it } from 'vitest';
import { readRun } from '../../../../../src/core/import/index.ts';
import { encodeEntries } from '../../../../../src/core/journal/index.ts';
import type { Plan } from '../../../../../src/core/plan/index.ts';
import type { Fact, FactBody } from '../../../../../src/core/run/index.ts';
import { inEnglish } from '../../../../support/english.ts';
import { planOfDemo } from '../../../plan/support/plans.ts';

const AT = { wallMs: 1_767_225_600_000, monoMs: 0, session: 'page' };
const plan = planOfDemo('flat-coils');
const UNKNOWN = Object.fromEntries(Array.from({ length: 60_000 }, (_, i) => [`x${i}`, 1]));

/** Time of the processor, s, whatever else the machine does. */
const SOON_S = 5;

/** What is said of a run with this plan and these facts after it, and the seconds of the processor it took. */
function read(changed: unknown, bodies: readonly unknown[] = []) {
  const drafted = { kind: 'drafted', plan: changed as Plan, notBeforeWallMs: 0 } as const;
  const facts = [drafted, ...(bodies as FactBody[])].map((body, i): Fact => ({
    seq: i + 1,
    id: `f${i}`,
    at: AT,
    body,
  }));
  const entries = encodeEntries(facts);
  const from = process.cpuUsage();
  const run = readRun(entries);
  const tookS = process.cpuUsage(from).user / 1e6;
  return { problems: 'problems' in run ? run.problems.map(inEnglish.say) : [], tookS };
}

const many = (count: number, one: (i: number) => unknown): readonly unknown[] =>
  Array.from({ length: count }, (_, i) => one(i));

describe('a big run from a file', () => {
  it.each([
    ['fields of its kitchen', { ...plan, kitchen: { ...plan.kitchen, ...UNKNOWN } }],
    ['demands', withFirst({ demands: UNKNOWN })],
    ['needs', withFirst({ needs: many(60_000, (i) => ({ step: `x${i}` })) })],
    ['gates', withFirst({ gates: many(60_000, (i) => `g${i}`) })],
  ])('with 60,000 unknown %s is refused soon, in few words', (_, changed) => {
    // Verifies: I-28
    const { problems, tookS } = read(changed);
    expect(problems.length).toBeGreaterThan(0);
    expect(problems.length).toBeLessThanOrEqual(21);
    expect(tookS).toBeLessThan(SOON_S);
  });

  it('with more steps than any kitchen has is refused at once', () => {
    // Verifies: I-28
    const steps = many(10_000, (i) => ({ ...plan.steps[0], id: `s${i}` }));
    const { problems, tookS } = read({ ...plan, steps });
    expect(problems).toEqual([expect.stringContaining('10000 steps; allowed: up to 2000')]);
    expect(tookS).toBeLessThan(SOON_S);
  });

  it('nor may its changes of the plan add so many', () => {
    // Verifies: I-28
    const steps = many(10_000, (i) => ({ ...plan.steps[0], id: `s${i}` }));
    const amended = { kind: 'plan-amended', steps, startS: {}, reason: plan.notices[0] };
    const { problems, tookS } = read(plan, [{ kind: 'run-started' }, amended]);
    expect(problems).toEqual([expect.stringContaining('allowed: up to 2000')]);
    expect(tookS).toBeLessThan(SOON_S);
  });

  it('with more records than a run writes is refused at once', () => {
    // Verifies: I-28
    const { problems, tookS } = read(
      plan,
      many(60_000, (i) => ({ kind: 'noted', text: `${i}` })),
    );
    expect(problems).toEqual([expect.stringContaining('60001 records; allowed: up to 20000')]);
    expect(tookS).toBeLessThan(SOON_S);
  });

  it.each([
    ['timers', (i: number) => ({ kind: 'alarm-handed', timer: `t${i}`, cause: 1 })],
    [
      'gates',
      (i: number) => ({ kind: 'gate-answered', gate: `g${i}`, scopeKey: 'run', answer: 'yes' }),
    ],
    [
      'keys of gates',
      (i: number) => ({
        kind: 'gate-answered',
        gate: plan.gates[0]?.id,
        scopeKey: `k${i}`,
        answer: 'yes',
      }),
    ],
    ['steps', (i: number) => ({ kind: 'safe-confirmed', step: `s${i}`, attempt: 1 })],
  ])('that tells of 19,000 %s that are not there is refused at the first', (_, body) => {
    // Verifies: I-28
    const { problems, tookS } = read(plan, [{ kind: 'run-started' }, ...many(19_000, body)]);
    expect(problems).toHaveLength(1);
    expect(tookS).toBeLessThan(SOON_S);
  });
});

function withFirst(change: object): unknown {
  return { ...plan, steps: plan.steps.map((step, i) => (i === 0 ? { ...step, ...change } : step)) };
}
