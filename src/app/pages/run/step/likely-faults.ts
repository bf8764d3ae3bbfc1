import type { FaultKind, FaultPolicy } from '../../../../core/plan/index.ts';
import type { RunView, StepView } from '../../../../core/run/index.ts';
import { isBegun } from './concurrent-steps.ts';

/** What goes wrong most with each kind of work, the most urgent first. */
const LIKELY: Partial<Readonly<Record<StepView['step']['kind'], readonly FaultKind[]>>> = {
  boil: ['breaker-tripped', 'kettle-failed'],
  'boil-over': ['breaker-tripped', 'kettle-failed'],
  pour: ['cracked', 'kettle-failed'],
  glow: ['smoke', 'flame-out', 'power-cut', 'no-glow'],
  'high-heat': ['smoke', 'flame-out', 'power-cut'],
  'self-clean': ['smoke', 'power-cut', 'oven-lock'],
  steam: ['smoke', 'power-cut'],
};

/** Only a flame goes out, only a glow can fail to show. */
function fits(kind: FaultKind, step: StepView): boolean {
  const hazards = step.step.stages.flatMap((stage) => stage.hazards);
  if (kind === 'flame-out') return hazards.includes('flame');
  if (kind === 'no-glow') return step.step.stages[step.stage]?.role === 'warm-up';
  if (kind === 'power-cut' || kind === 'breaker-tripped') return !hazards.includes('flame');
  return true;
}

/** What goes wrong with this kind of work, the most urgent first. */
export function fittingFaults(view: RunView, step: StepView): readonly FaultPolicy[] {
  return (LIKELY[step.step.kind] ?? [])
    .filter((kind) => fits(kind, step))
    .flatMap((kind) => view.plan.faults.find((fault) => fault.kind === kind) ?? []);
}

/** The faults worth a button of their own while this step runs; at most three. */
export function likelyFaults(view: RunView, step: StepView): readonly FaultPolicy[] {
  return isBegun(step) ? fittingFaults(view, step).slice(0, 3) : [];
}
