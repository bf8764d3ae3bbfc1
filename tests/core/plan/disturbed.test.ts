import { describe, expect, it } from 'vitest';
import { buildPlan } from '../../../src/core/plan/index.ts';
import { simulateRun, type Request, type RunView } from '../../../src/core/run/index.ts';
import { kitchenOf, only } from './support/plans.ts';

const kitchen = only(kitchenOf('flat-coils'), 'sink', 'range-top');
// Without parts: putting new ones in fills gaps, and an order that a fault upset may then end sooner.
const plan = buildPlan({
  ...kitchen,
  fixtures: kitchen.fixtures.map((one) => ({ ...one, parts: [] })),
});
const DAY_S = 24 * 3600;

function statusOf(seen: RunView, id: string): string {
  return seen.steps.find(({ step }) => step.id === id)?.status ?? '';
}

/** Says these once, when the time for them has come. */
function once(when: (seen: RunView) => boolean, ...asked: readonly Request[]) {
  let said = false;
  return (seen: RunView): readonly Request[] => {
    if (said || !when(seen)) return [];
    said = true;
    return asked;
  };
}

function outcomes(script: (seen: RunView) => readonly Request[]) {
  const { state, finishS, facts } = simulateRun(plan, { script, eager: true });
  const undone = Object.entries(state.steps).filter(([, { outcome }]) => outcome !== 'done');
  return { status: state.status, undone: undone.map(([id]) => id), finishS, facts };
}

describe('a plan whose run is disturbed', () => {
  const calm = outcomes(() => []);

  it('ends without trouble by itself', () => {
    expect(calm).toMatchObject({ status: 'closed', undone: [] });
  });

  it('rests the sink again after a doubt, and still ends', () => {
    const doubted = outcomes(
      once((seen) => statusOf(seen, 'pour-sink-2') === 'settled', {
        kind: 'report-recheck',
        fixture: 'sink',
        text: 'Hot soup went in.',
      }),
    );
    expect(doubted).toMatchObject({ status: 'closed', undone: [] });
    expect(doubted.finishS).toBeGreaterThan(calm.finishS + DAY_S / 2);
  });

  it('begins a glow again after a power cut, and still ends', () => {
    const cut = outcomes(
      once(
        (seen) =>
          seen.steps.some(
            ({ step, status, stage }) =>
              step.id === 'glow-coil-back-left' &&
              status === 'active' &&
              step.stages[stage]?.id === 'hold',
          ),
        { kind: 'report-fault', fault: 'power-cut', text: 'All dark.' },
      ),
    );
    expect(cut).toMatchObject({ status: 'closed', undone: [] });
    expect(cut.facts.some(({ body }) => body.kind === 'stage-restarted')).toBe(true);
  });

  it('shuts the gate of the air on smoke: what was hot stops, and goes on only after a person’s word', () => {
    const smoke = () =>
      once((seen) => statusOf(seen, 'glow-coil-back-left') === 'active', {
        kind: 'report-fault',
        fault: 'smoke',
        text: 'Grease smokes.',
      });
    const alone = outcomes(smoke());
    expect(alone.status).toBe('suspended');

    const aired = once((seen) => seen.status === 'suspended', {
      kind: 'answer-gate',
      gate: 'heat-air',
      scopeKey: 'run',
      answer: 'yes',
    });
    const again = (seen: RunView): readonly Request[] =>
      seen.status !== 'running'
        ? []
        : seen.steps
            .filter(
              ({ status, outcome, step }) =>
                status === 'settled' && outcome === 'stopped' && step.kind === 'glow',
            )
            .map(({ step }) => ({
              kind: 'repeat-step',
              step: step.id,
              reason: 'The air is clear.',
            }));
    const smokes = smoke();
    const answered = outcomes((seen) => [...smokes(seen), ...aired(seen), ...again(seen)]);
    expect(answered).toMatchObject({ status: 'closed', undone: [] });
    expect(answered.finishS).toBeGreaterThan(calm.finishS);
  });

  it('can be stopped at any hot moment: what is hot is made safe, and it closes', () => {
    const stopped = outcomes(
      once(
        (seen) =>
          seen.steps.some(({ step, status }) => step.kind === 'pour' && status === 'active'),
        {
          kind: 'stop-run',
          reason: 'Tired.',
        },
      ),
    );
    expect(stopped.status).toBe('closed');
    expect(stopped.undone.length).toBeGreaterThan(0);
  });
});
