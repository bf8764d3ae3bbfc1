import { createSignal } from 'solid-js';
import type { Message } from '../../../../../core/messages/index.ts';
import type { StepView } from '../../../../../core/run/index.ts';

/** A line of a cleaning list; its id holds in every language. */
export type Line = { readonly id: string; readonly text: Message };

/** Ticks of the cleaning lists, by step and attempt. They are an aid, no record. */
export const [ticked, setTicked] = createSignal<ReadonlyMap<string, ReadonlySet<string>>>(
  new Map(),
);

function keyOf(step: StepView): string {
  return `${step.step.id}#${step.attempt}`;
}

/** The lines a cleaning step is ticked off by; none before it begins, or where it has only one. */
export function checklistOf(step: StepView): readonly Line[] {
  if (step.step.kind !== 'clean' || !['active', 'checking'].includes(step.status)) return [];
  const detail = step.step.stages[step.stage]?.detail ?? [];
  return detail.length > 1 ? detail.map((text) => ({ id: JSON.stringify(text), text })) : [];
}

export function isTicked(step: StepView, { id }: Line): boolean {
  return ticked().get(keyOf(step))?.has(id) ?? false;
}

/** What is still to be ticked, in the order of the list. */
export function openLines(step: StepView): readonly Line[] {
  return checklistOf(step).filter((line) => !isTicked(step, line));
}

export function tick(step: StepView, lines: readonly Line[], to = true): void {
  const next = new Map(ticked());
  const own = new Set(next.get(keyOf(step)));
  for (const { id } of lines) {
    if (to) own.add(id);
    else own.delete(id);
  }
  next.set(keyOf(step), own);
  setTicked(next);
}

/** Nothing is ticked any more: what was ticked in another run, or in a rehearsal, was not done in this one. */
export function forgetTicks(): void {
  setTicked(new Map());
}
