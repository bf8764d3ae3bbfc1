import { describe, expect, it } from 'vitest';
import { buildPlan, UTENSILS, type Step } from '../../../../src/core/plan/index.ts';
import { simulateRun, type Request, type RunView } from '../../../../src/core/run/index.ts';
import { kitchenOf, only } from '../../plan/support/plans.ts';

const plan = buildPlan(only(kitchenOf('mountain-gas'), 'range-top', 'sink-steel'));
const [first, second] = plan.steps.filter(
  (step): step is Step => step.work.on === 'utensils' && step.work.batch !== undefined,
);

function outcomeOf({ steps }: RunView, id: string | undefined) {
  const one = steps.find(({ step }) => step.id === id);
  return [one?.status, one?.attempt, one?.outcome];
}

/** The run a moment after the first batch is out, when somebody has told or asked this. */
function after(request: Request): RunView {
  let told = false;
  let seen: RunView | undefined;
  simulateRun(plan, {
    script: (view) => {
      if (told) seen ??= view;
      const isOut = view.steps.some(
        ({ step, outcome }) => step.id === first?.id && outcome === 'done',
      );
      if (told || !isOut) return [];
      told = true;
      return [request];
    },
  });
  if (!seen) throw new Error('The first batch was never out.');
  return seen;
}

describe('a doubt in the midst of the batches', () => {
  it('about the pot keeps everything out of it until it has rested and is purged again', () => {
    // Verifies: I-24
    const view = after({ kind: 'report-recheck', fixture: 'stock-pot', text: 'Soup was in it.' });
    expect(outcomeOf(view, first?.id)).toEqual(['settled', 1, 'done']);
    expect(outcomeOf(view, `rest-${UTENSILS}`)).toEqual(['settled', 1, 'done']);
    expect(outcomeOf(view, 'rest-stock-pot').slice(0, 2)).toEqual(['active', 2]);
    expect(outcomeOf(view, 'boil-over-stock-pot').slice(0, 2)).toEqual(['waiting', 2]);
    expect(outcomeOf(view, second?.id)[0]).toBe('waiting');
  });

  it('about the utensils has them rest and dipped again', () => {
    // Verifies: I-17, I-24
    const view = after({ kind: 'report-recheck', fixture: UTENSILS, text: 'Eaten with.' });
    expect(outcomeOf(view, `rest-${UTENSILS}`).slice(0, 2)).toEqual(['active', 2]);
    expect(outcomeOf(view, first?.id).slice(0, 2)).toEqual(['waiting', 2]);
    expect(outcomeOf(view, 'rest-stock-pot')).toEqual(['settled', 1, 'done']);
  });

  it('or their hot washing once more, too', () => {
    // Verifies: I-24
    const view = after({ kind: 'repeat-step', step: `clean-${UTENSILS}`, reason: 'Still greasy.' });
    expect(outcomeOf(view, `rest-${UTENSILS}`).slice(0, 2)).toEqual(['waiting', 3]);
    expect(outcomeOf(view, first?.id).slice(0, 2)).toEqual(['waiting', 2]);
  });
});
