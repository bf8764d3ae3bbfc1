import type { RunView, StepView } from '../../../../core/run/index.ts';

/** Burners that are lit or hot now, by id; one that is still to be lit is not. */
export function hotBurners(view: RunView): readonly string[] {
  return view.steps
    .filter(
      ({ status, step, stage }) =>
        step.picture?.kind === 'burner' &&
        (status === 'unwinding' ||
          ((status === 'active' || status === 'checking') && step.stages[stage]?.role !== 'light')),
    )
    .map((s) => (s.step.picture?.kind === 'burner' ? s.step.picture.burner : ''));
}

/** How far this pour should be by its timer; undefined before it begins, whole once it is poured. */
export function pouredShare(step: StepView): number | undefined {
  if (step.status !== 'active' && step.status !== 'checking') return undefined;
  if (step.stage > 0) return 1;
  const timer = step.timers.find((one) => one.role === 'estimate');
  return timer ? Math.min(1, timer.atLeastS / timer.lengthS) : undefined;
}

/** A mark for the hand each so many seconds of the pour. */
const TICK_EVERY_S = 10;

/** Where the stream should be each ten seconds, for those who want nothing to move. */
export function handTicks(
  step: StepView,
): readonly { readonly share: number; readonly atS: number }[] {
  const lengthS = step.timers.find((one) => one.role === 'estimate')?.lengthS ?? 0;
  if (step.stage > 0 || lengthS <= 0) return [];
  const marks = Math.floor(lengthS / TICK_EVERY_S);
  return Array.from({ length: marks }, (_, i) => {
    const atS = (i + 1) * TICK_EVERY_S;
    return { share: atS / lengthS, atS };
  });
}

/** A pour in progress whose water can run out: while it is poured, before the cold water. */
export function canRunOut(step: StepView): boolean {
  const kind = step.step.picture?.kind;
  return (
    step.step.kind === 'pour' &&
    step.stage === 0 &&
    (step.status === 'active' || step.status === 'checking') &&
    (kind === 'lanes' || kind === 'sink')
  );
}
