import type { UtensilItem } from '../../../../core/plan/index.ts';
import type { RunView, StepView } from '../../../../core/run/index.ts';

/** Where a batch stands for whoever looks at the board. */
type BatchState = 'done' | 'now' | 'next' | 'to-come' | 'left-out';

/** One line of the board. */
export type BatchLine = {
  readonly step: StepView;
  readonly number: number;
  readonly items: readonly UtensilItem[];
  readonly state: BatchState;
};

function stateOf({ status, outcome }: StepView): BatchState {
  if (status === 'settled') return outcome === 'done' ? 'done' : 'left-out';
  return ['active', 'checking', 'unwinding'].includes(status) ? 'now' : 'to-come';
}

/** The batches of a run in their order; the first that is to come is the next. Empty without any. */
export function batchBoard(view: RunView): readonly BatchLine[] {
  const lines = view.steps.flatMap((step): readonly BatchLine[] => {
    const { work } = step.step;
    if (work.on !== 'utensils' || !work.batch) return [];
    const { number } = work.batch;
    return [{ step, number, items: work.items, state: stateOf(step) }];
  });
  const ordered = lines.toSorted((a, b) => a.number - b.number);
  const next = ordered.find(({ state }) => state === 'to-come');
  return ordered.map((line) => (line === next ? { ...line, state: 'next' } : line));
}
