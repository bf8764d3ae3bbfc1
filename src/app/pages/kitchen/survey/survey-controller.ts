import { createSignal } from 'solid-js';
import type { Kitchen } from '../../../../core/kitchen/index.ts';
import {
  beginHistory,
  problemsOf,
  record,
  redo,
  undo,
  missingAnswers,
  type History,
} from '../../../../core/editing/index.ts';
import type { KitchenController } from '../../../controllers/kitchen/kitchen-opening.ts';

/** Kept while the page lives, so that undo reaches back after a look at the plan. */
let lastHistory: History | undefined;

/** Worked out once for each kitchen, however often it is asked for. */
function ofLast<T>(work: (kitchen: Kitchen) => T): (kitchen: Kitchen) => T {
  let last: { readonly kitchen: Kitchen; readonly result: T } | undefined;
  return (kitchen) => {
    if (last?.kitchen !== kitchen) last = { kitchen, result: work(kitchen) };
    return last.result;
  };
}

/** The kitchen on the desk with its past: every change goes through here. */
export function createSurveyController(desk: KitchenController, first: Kitchen) {
  const [history, setHistory] = createSignal(
    lastHistory?.present === first ? lastHistory : beginHistory(first),
  );
  const [refusal, setRefusal] = createSignal<string>();
  const kitchen = () => desk.kitchen() ?? first;
  const faults = ofLast((now) => problemsOf(now).length);
  const open = ofLast(missingAnswers);

  const keep = (next: History): void => {
    lastHistory = next;
    setHistory(next);
  };
  /** What this page shows may have been changed elsewhere (name, purpose): that is a step too. */
  const caughtUp = (): History => {
    const now = history();
    return now.present === kitchen() ? now : record(now, kitchen(), 'Changed');
  };
  const step = (move: (h: History) => History): void => {
    const next = move(caughtUp());
    setRefusal(undefined);
    desk.edit(next.present);
    keep(next);
  };
  return {
    kitchen,
    refusal,
    forgive: () => setRefusal(undefined),
    undoLabel: () => history().undoLabel,
    redoLabel: () => history().redoLabel,
    stillToTell: () => open(kitchen()),
    /**
     * Takes a change, unless the kitchen would read worse after it than before.
     * @returns why it was not taken, or nothing
     */
    change(next: Kitchen, label: string, mergeKey?: string): string | undefined {
      if (next === kitchen()) return undefined;
      const after = problemsOf(next);
      if (after.length > faults(kitchen())) {
        const [why] = after;
        const text = why ? `Not taken: ${why.found}. Allowed: ${why.allowed}. ${why.advice}` : '';
        setRefusal(text);
        return text;
      }
      setRefusal(undefined);
      const before = caughtUp();
      keep(record(before, desk.edit(next), label, mergeKey));
      return undefined;
    },
    undo: () => step(undo),
    redo: () => step(redo),
  };
}

export type SurveyController = ReturnType<typeof createSurveyController>;
