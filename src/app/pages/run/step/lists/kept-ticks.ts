import { createEffect, on } from 'solid-js';
import { createRunNote, type RunMemory } from '../../../../controllers/run/run-note.ts';
import { setTicked, ticked } from './ticks.ts';

/** Ticks as stored, by step and attempt; what is no list of lines ticks nothing. */
export function readTicks(stored: unknown): readonly (readonly [string, readonly string[]])[] {
  if (!Array.isArray(stored)) return [];
  return stored.flatMap((one: unknown) => {
    const [step, lines] = Array.isArray(one) ? (one as readonly unknown[]) : [];
    return typeof step === 'string' && Array.isArray(lines)
      ? [[step, lines.filter((line) => typeof line === 'string')] as const]
      : [];
  });
}

/** What was ticked before the page was loaded anew, beside what is ticked by now. */
function restoreTicks(kept: ReturnType<typeof readTicks>): void {
  const next = new Map(ticked());
  for (const [step, lines] of kept) next.set(step, new Set([...lines, ...(next.get(step) ?? [])]));
  setTicked(next);
}

/** Keeps the ticks of the cleaning lists of the open run over a reload; draws nothing. */
export function KeptTicks(props: { memory: RunMemory | undefined }) {
  const [kept, keep] = createRunNote(() => props.memory, 'ticks', readTicks);
  createEffect(on(kept, restoreTicks, { defer: true }));
  createEffect(
    on(
      ticked,
      (now) => {
        const next = [...now].map(([step, lines]) => [step, [...lines]] as const);
        if (JSON.stringify(next) !== JSON.stringify(kept())) keep(next);
      },
      { defer: true },
    ),
  );
  return undefined;
}
