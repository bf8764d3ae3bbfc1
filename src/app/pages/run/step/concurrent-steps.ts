import type { Message } from '../../../../core/messages/index.ts';
import type { RunView, StepView } from '../../../../core/run/index.ts';
import { leadTimer } from './main-action.ts';

/** Is it in progress: in the hands, on the fire, or being made safe? */
export function isBegun(step: StepView): boolean {
  return ['active', 'checking', 'unwinding'].includes(step.status);
}

/** Other burners of the same hob that are being heated now: two glow at once. */
export function concurrentBurners(view: RunView, step: StepView): readonly StepView[] {
  const own = step.step.picture;
  if (own?.kind !== 'burner') return [];
  return view.steps.filter((other) => {
    const picture = other.step.picture;
    return (
      other.step.id !== step.step.id &&
      picture?.kind === 'burner' &&
      picture.cooktop === own.cooktop &&
      isBegun(other)
    );
  });
}

/** Name of the burner of a step, as the kitchen has it. */
export function burnerName(view: RunView, step: StepView): string {
  const picture = step.step.picture;
  if (picture?.kind !== 'burner') return '';
  for (const fixture of view.plan.kitchen.fixtures)
    if (fixture.kind === 'cooktop' && fixture.id === picture.cooktop)
      return fixture.burners.find((b) => b.id === picture.burner)?.name ?? '';
  return '';
}

/** The boiling whose water this pour takes. */
export function boilOf(view: RunView, pour: StepView): StepView | undefined {
  const need = pour.step.needs.find(({ withinS }) => withinS !== undefined);
  return view.steps.find((one) => one.step.id === need?.step);
}

/** Name of the vessel that a step fills or boils; bought ones are named by their step only. */
function vesselName(view: RunView, boil: StepView | undefined): string {
  const picture = boil?.step.picture;
  if (picture?.kind !== 'kettle') return '';
  return view.plan.kitchen.vessels.find(({ id }) => id === picture.vessel)?.name ?? '';
}

/** Which vessel a pour is poured from. */
export function pouredFrom(view: RunView, pour: StepView): string {
  return pour.step.kind === 'pour' ? vesselName(view, boilOf(view, pour)) : '';
}

/** A kettle on the fire while another one is in the hands. */
export type ConcurrentKettle = {
  readonly step: string;
  readonly title: Message;
  /** Seconds until it boils, by the estimate; undefined before it is on. */
  readonly leftS: number | undefined;
};

/** Kettles that heat now beside the step in hand, nearest first. */
export function concurrentKettles(view: RunView, step: StepView): readonly ConcurrentKettle[] {
  return view.steps
    .filter((one) => one.step.kind === 'boil' && one.step.id !== step.step.id && isBegun(one))
    .map((one) => ({
      step: one.step.id,
      title: one.step.title,
      leftS: leadTimer(one)?.leftS,
    }))
    .toSorted((a, b) => (a.leftS ?? Infinity) - (b.leftS ?? Infinity));
}

/**
 * How far an oven is along its picture, s from its start; undefined before it
 * runs. An estimate that is overrun stays at the end of its stretch.
 */
export function ovenAtS(step: StepView): number | undefined {
  const picture = step.step.picture;
  if (picture?.kind !== 'oven' || !isBegun(step)) return undefined;
  const [heat = 0, hold = 0, cool = 0] = picture.stages.map(({ lengthS }) => lengthS);
  const timer = step.timers.find(({ role }) => role === 'hold' || role === 'estimate');
  const goneS = timer?.atLeastS ?? 0;
  switch (step.step.stages[step.stage]?.role) {
    case 'start':
      return undefined;
    case 'warm-up':
      return Math.min(heat, goneS);
    case 'cycle':
      return Math.min(heat + hold, goneS);
    case 'hold':
      return heat + Math.min(hold, goneS);
    case 'cool':
      return heat + hold + Math.min(cool, goneS);
    case 'off':
      return heat + hold;
    default:
      return heat + hold + cool;
  }
}

/** The step one further among those that can be shown, or one back; round the end. */
export function concurrentStep(
  steps: readonly StepView[],
  at: string | undefined,
  by: 1 | -1,
): string | undefined {
  const here = steps.findIndex((one) => one.step.id === at);
  if (here < 0) return steps[0]?.step.id;
  return steps[(here + by + steps.length) % steps.length]?.step.id;
}
