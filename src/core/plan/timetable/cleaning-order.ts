import type { StepDraft } from '../context/step-draft.ts';
import { cleanId } from '../context/step-ids.ts';
import { cleaningOf } from '../context/work-times.ts';
import { isSoak, UTENSILS } from '../model/index.ts';

/** What is cleaned in one go: everything whose clock owes the same rest. */
type Group = { readonly owedS: number; readonly drafts: readonly StepDraft[] };

/** Rest that a rest step still owes when the work begins, s. */
function owesS({ step, overS }: StepDraft): number {
  return Math.max(0, overS ?? step.durationS.typical);
}

/** Days under water that begin with a cleaning, s: a clock of their own, longer than any rest. */
function soaksS(drafts: readonly StepDraft[]): number {
  return drafts
    .filter(({ step }) => isSoak(step))
    .reduce((sum, { step }) => sum + step.durationS.typical, 0);
}

/** Groups of the cleaning, those that owe the most rest first; without one, or with none left, last. */
function groupsOf(drafts: readonly StepDraft[]): readonly Group[] {
  const owed = new Map<string, number>();
  for (const draft of drafts) {
    if (draft.step.kind !== 'rest') continue;
    for (const { step } of draft.step.needs)
      owed.set(step, Math.max(owed.get(step) ?? 0, owesS(draft)));
  }
  const utensils = cleanId(UTENSILS);
  owed.set(utensils, Math.max(owed.get(utensils) ?? 0, soaksS(drafts)));
  const groups = new Map<number, StepDraft[]>();
  for (const draft of drafts) {
    if (draft.step.kind !== 'clean' && draft.step.kind !== 'unplug') continue;
    // What is unplugged is unplugged for its cleaning.
    const cleaned = draft.step.kind === 'clean' ? draft.step.id : cleanId(draft.step.fixture ?? '');
    const owedS = owed.get(cleaned) ?? 0;
    groups.set(owedS, [...(groups.get(owedS) ?? []), draft]);
  }
  return [...groups]
    .map(([owedS, members]) => ({ owedS, drafts: members }))
    .toSorted((a, b) => b.owedS - a.owedS);
}

/** Inside a group high before low, level by level: what falls down is cleaned up after. */
function aboveOf({ drafts }: Group): ReadonlyMap<string, readonly string[]> {
  const levels = new Map<number, string[]>();
  for (const { step, about } of drafts) {
    if (step.kind !== 'clean' || !about.fixture) continue;
    const { level } = cleaningOf(about.fixture);
    levels.set(level, [...(levels.get(level) ?? []), step.id]);
  }
  const above = new Map<string, readonly string[]>();
  let last: readonly string[] = [];
  for (const [, ids] of [...levels].toSorted(([a], [b]) => a - b)) {
    for (const id of ids) above.set(id, last);
    last = ids;
  }
  return above;
}

/**
 * The same steps, with the order in which things are cleaned: first what must rest or soak, that which
 * owes the most before the others, so that the clocks start early; what needs no rest while they
 * run. Nothing of a later group is begun before everything of the earlier one is.
 */
export function clocksFirst(drafts: readonly StepDraft[]): readonly StepDraft[] {
  const changed = new Map<string, StepDraft>();
  let before: readonly StepDraft[] = [];
  for (const group of groupsOf(drafts)) {
    const above = aboveOf(group);
    for (const draft of group.drafts)
      changed.set(draft.step.id, {
        ...draft,
        follows: [...draft.follows, ...(above.get(draft.step.id) ?? [])],
        ties: [
          ...draft.ties,
          ...before.map(({ step }) => ({ step: step.id, to: 'start' as const })),
        ],
      });
    before = group.drafts;
  }
  return drafts.map((draft) => changed.get(draft.step.id) ?? draft);
}
