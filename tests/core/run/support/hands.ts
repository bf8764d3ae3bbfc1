import type { Plan } from '../../../../src/core/plan/index.ts';
import { Tablet } from './tablet.ts';

const DAY_S = 86_400;

/** All is clean, dry and rested, and the oven of this plan is being heated. */
export function heatingOven(plan: Plan): Tablet {
  const tablet = new Tablet(plan);
  tablet.does({ kind: 'start-run' });
  for (const step of plan.steps)
    if (step.phase === 'prepare' || step.phase === 'clean') finishes(tablet, step.id);
  tablet.passes(DAY_S + 60);
  for (const { step, status } of tablet.view.steps)
    if ((step.kind === 'boil-over' || step.kind === 'dry') && status === 'ready')
      finishes(tablet, step.id);
  begins(tablet, 'heat-oven');
  return tablet;
}

/** Answers every gate of a step, and begins it. */
export function begins(tablet: Tablet, id: string): void {
  for (const { gate, scopeKey } of tablet.step(id).gates) tablet.opens(gate.id, scopeKey);
  tablet.does({ kind: 'start-step', step: id });
}

/** Begins a step and says of each of its stages that it is over. */
export function finishes(tablet: Tablet, id: string): void {
  begins(tablet, id);
  for (const stage of tablet.step(id).step.stages) {
    tablet.passes(30);
    if (stage.say) tablet.tries({ kind: 'confirm', step: id, stage: stage.id });
  }
  hears(tablet);
}

/** Answers what sounds. */
export function hears(tablet: Tablet): void {
  for (const { id, alerting } of tablet.view.timers)
    if (alerting) tablet.does({ kind: 'acknowledge-timer', timer: id });
}
