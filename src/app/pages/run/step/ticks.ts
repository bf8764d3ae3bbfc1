import { say } from '../../../context/language.ts';
import { createSignal } from 'solid-js';
import type { StepView } from '../../../../core/run/index.ts';

/** Ticks of the cleaning lists, by step and attempt; kept while the page lives. They are an aid, no record. */
const [ticked, setTicked] = createSignal<ReadonlyMap<string, ReadonlySet<string>>>(new Map());

function keyOf(step: StepView): string {
  return `${step.step.id}#${step.attempt}`;
}

/** The lines a cleaning step is ticked off by; none before it begins, or where it has only one. */
export function checklistOf(step: StepView): readonly string[] {
  if (step.step.kind !== 'clean' || !['active', 'checking'].includes(step.status)) return [];
  const lines = step.step.stages[step.stage]?.detail.map(say) ?? [];
  return lines.length > 1 ? lines : [];
}

export function isTicked(step: StepView, line: string): boolean {
  return ticked().get(keyOf(step))?.has(line) ?? false;
}

/** What is still to be ticked, in the order of the list. */
export function openLines(step: StepView): readonly string[] {
  return checklistOf(step).filter((line) => !isTicked(step, line));
}

export function tick(step: StepView, lines: readonly string[], to = true): void {
  const next = new Map(ticked());
  const own = new Set(next.get(keyOf(step)));
  for (const line of lines) {
    if (to) own.add(line);
    else own.delete(line);
  }
  next.set(keyOf(step), own);
  setTicked(next);
}
