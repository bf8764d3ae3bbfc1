import type { StepView } from '../../../../core/run/index.ts';

/** A pour in progress whose water can run out: shown while it is poured, before the cold water. */
export function canRunOut(step: StepView): boolean {
  const kind = step.step.picture?.kind;
  return (
    step.step.kind === 'pour' &&
    step.stage === 0 &&
    (step.status === 'active' || step.status === 'checking') &&
    (kind === 'lanes' || kind === 'sink')
  );
}
