import { createSignal } from 'solid-js';
import type { Kitchen } from '../../../../../core/kitchen/index.ts';
import { message, type Message } from '../../../../../core/messages/index.ts';
import {
  beginHistory,
  problemsOf,
  record,
  redo,
  undo,
  missingAnswers,
  type History,
} from '../../../../../core/editing/index.ts';
import type { KitchenController } from '../../../../controllers/kitchen/kitchen-opening.ts';

/** Histories live as long as their kitchens' controller, so that undo reaches back after a look at the plan. */
const histories = new WeakMap<KitchenController, History>();

/** Worked out once for each kitchen, however often it is asked for. */
function ofLast<T>(work: (kitchen: Kitchen) => T): (kitchen: Kitchen) => T {
  let last: { readonly kitchen: Kitchen; readonly result: T } | undefined;
  return (kitchen) => {
    if (last?.kitchen !== kitchen) last = { kitchen, result: work(kitchen) };
    return last.result;
  };
}

/** The open kitchen with its past: every change goes through here. */
export function createSurveyController(kitchens: KitchenController, first: Kitchen) {
  const before = histories.get(kitchens);
  const [history, setHistory] = createSignal(
    before?.present === first ? before : beginHistory(first),
  );
  const [refusal, setRefusal] = createSignal<Message>();
  const kitchen = () => kitchens.kitchen() ?? first;
  const faults = ofLast((now) => problemsOf(now).length);
  const open = ofLast(missingAnswers);

  const keep = (next: History): void => {
    histories.set(kitchens, next);
    setHistory(next);
  };
  /** What this page shows may have been changed elsewhere (name, purpose): that is a step too. */
  const caughtUp = (): History => {
    const now = history();
    return now.present === kitchen() ? now : record(now, kitchen(), message('survey.done.changed'));
  };
  const step = (move: (h: History) => History): void => {
    const next = move(caughtUp());
    setRefusal(undefined);
    kitchens.edit(next.present);
    keep(next);
  };
  return {
    kitchen,
    refusal,
    undoLabel: () => history().undoLabel,
    redoLabel: () => history().redoLabel,
    stillToTell: () => open(kitchen()),
    /**
     * Takes a change, unless the kitchen would read worse after it than before.
     * @param label what undo and redo call it
     * @param mergeKey see {@link record}
     * @returns why it was not taken, or nothing
     */
    change(next: Kitchen, label: Message, mergeKey?: string | symbol): Message | undefined {
      if (next === kitchen()) return undefined;
      const after = problemsOf(next);
      const [why] = after;
      if (why && after.length > faults(kitchen())) {
        const { found, allowed, advice } = why;
        const refused = message('survey.refused', { found, allowed, advice });
        setRefusal(refused);
        return refused;
      }
      setRefusal(undefined);
      const past = caughtUp();
      keep(record(past, kitchens.edit(next), label, mergeKey));
      return undefined;
    },
    undo: () => step(undo),
    redo: () => step(redo),
  };
}

export type SurveyController = ReturnType<typeof createSurveyController>;
