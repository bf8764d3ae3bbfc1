import type { Kitchen } from '../../kitchen/index.ts';
import type { Message } from '../../messages/index.ts';

/** Steps that can be undone: more than an evening of surveying takes. */
const MOST_STEPS = 200;

/** What was done to a kitchen and can be undone. */
export type History = {
  readonly past: readonly Kitchen[];
  readonly present: Kitchen;
  readonly future: readonly Kitchen[];
  /** The sentence for what {@link undo} takes back, absent when there is nothing. */
  readonly undoLabel?: Message;
  readonly redoLabel?: Message;
  /** Sentences of the steps in `past` and `future`, same order. */
  readonly pastLabels: readonly Message[];
  readonly futureLabels: readonly Message[];
  /** Key of the last change, while a further one may still replace it. */
  readonly openKey?: string | symbol;
};

type Bare = Omit<History, 'undoLabel' | 'redoLabel'>;

function labelled(history: Bare): History {
  const undoLabel = history.pastLabels.at(-1);
  const redoLabel = history.futureLabels[0];
  return {
    ...history,
    ...(undoLabel !== undefined && { undoLabel }),
    ...(redoLabel !== undefined && { redoLabel }),
  };
}

export function beginHistory(kitchen: Kitchen): History {
  return { past: [], present: kitchen, future: [], pastLabels: [], futureLabels: [] };
}

/**
 * Keeps a change. The newest 200 steps are kept.
 * @param label what was done: "Sink moved"
 * @param mergeKey a change with the same key as the last one replaces it, so
 *   that a drag or a typed number is one step; an undo or redo closes the key
 */
export function record(
  history: History,
  next: Kitchen,
  label: Message,
  mergeKey?: string | symbol,
): History {
  if (next === history.present) return history;
  const merges = mergeKey !== undefined && mergeKey === history.openKey && history.past.length > 0;
  const past = merges ? history.past : [...history.past, history.present].slice(-MOST_STEPS);
  const labels = merges ? history.pastLabels.slice(0, -1) : history.pastLabels;
  return labelled({
    past,
    present: next,
    future: [],
    pastLabels: [...labels, label].slice(-MOST_STEPS),
    futureLabels: [],
    ...(mergeKey !== undefined && { openKey: mergeKey }),
  });
}

/** Takes the last step back; the same history when there is none. */
export function undo(history: History): History {
  const present = history.past.at(-1);
  if (present === undefined) return history;
  return labelled({
    past: history.past.slice(0, -1),
    present,
    future: [history.present, ...history.future],
    pastLabels: history.pastLabels.slice(0, -1),
    futureLabels: [...history.pastLabels.slice(-1), ...history.futureLabels],
  });
}

/** Does the step again that was taken back last; the same history when there is none. */
export function redo(history: History): History {
  const [present, ...future] = history.future;
  if (present === undefined) return history;
  return labelled({
    past: [...history.past, history.present],
    present,
    future,
    pastLabels: [...history.pastLabels, ...history.futureLabels.slice(0, 1)],
    futureLabels: history.futureLabels.slice(1),
  });
}
