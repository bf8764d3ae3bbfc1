import type { Work } from '../../plan/index.ts';
import type { Plan1 } from './plan-1.ts';
import type { Step1 } from './step-1.ts';
import { heldUnit, vesselUnit } from './vessel.ts';

const S_MIN = 60;

/** "Pour kettle 2 of 5 over …": number and count. Of a title without them: by the id, and by how many there are. */
function kettleOf(plan: Plan1, step: Step1): { readonly kettle: number; readonly of: number } {
  const [, kettle, of] = /kettle (\d+) of (\d+)/.exec(step.title) ?? [];
  if (kettle !== undefined && of !== undefined) return { kettle: Number(kettle), of: Number(of) };
  const alike = plan.steps.filter(
    ({ kind, fixture }) => kind === step.kind && fixture === step.fixture,
  );
  const number = Number(/-(\d+)$/.exec(step.id)?.[1] ?? 1);
  return { kettle: number, of: Math.max(number, alike.length) };
}

/** Boiled in the kettle, or poured from it, L. A sink is poured with all that was boiled; 0 where no picture told. */
function litresOf(plan: Plan1, { picture, needs }: Step1): number {
  if (picture?.kind === 'kettle') return picture.litres;
  if (picture?.kind === 'lanes') {
    const own = picture.stretches.filter(({ kettle }) => kettle === picture.kettle);
    return own.reduce((sum, { litres }) => sum + litres, 0);
  }
  const boiled = plan.steps.find(({ id }) => id === needs[0]?.step)?.picture;
  return boiled?.kind === 'kettle' ? boiled.litres : 0;
}

function onKettle(plan: Plan1, step: Step1): Work {
  const unit = heldUnit(step.demands) ?? '';
  return {
    on: 'kettle',
    ...kettleOf(plan, step),
    vessel: vesselUnit(plan, unit),
    litres: litresOf(plan, step),
  };
}

/** One kettle itself: by what it holds, or by what its id says it is about. */
function onVessel(plan: Plan1, step: Step1): Work {
  const unit = heldUnit(step.demands) ?? step.id.replace(`${step.kind}-`, '');
  const litres = step.picture?.kind === 'kettle' ? { litres: step.picture.litres } : {};
  return { on: 'vessel', vessel: vesselUnit(plan, unit), ...litres };
}

/** Minutes that a step is held, as its clock has them. */
function heldMinutes(step: Step1): { readonly minutes?: number } {
  const holds = step.stages.flatMap(({ timers }) => timers.filter(({ role }) => role === 'hold'));
  const lengthS = holds.find(({ purpose }) => purpose === 'unbroken')?.lengthS;
  return lengthS === undefined ? {} : { minutes: lengthS / S_MIN };
}

/** The burner a step is about, or that it cools. */
function burnerOf(plan: Plan1, step: Step1): string | undefined {
  const about =
    step.kind === 'cool' ? plan.steps.find(({ id }) => id === step.needs[0]?.step) : step;
  return about?.picture?.kind === 'burner' ? about.picture.burner : undefined;
}

function onFixture(plan: Plan1, step: Step1): Work {
  const row = plan.methods.find(({ fixture }) => fixture === step.fixture);
  const burner = burnerOf(plan, step);
  if (burner !== undefined)
    return {
      on: 'burner',
      burner,
      method: step.kind === 'cool' ? (row?.method ?? 'glow') : 'glow',
      ...heldMinutes(step),
    };
  return {
    on: 'fixture',
    method: row?.method ?? 'clean',
    ...(row?.minutes !== undefined && { minutes: row.minutes }),
  };
}

/**
 * What a step of version 1 is done on: worked out from its kind, its picture, its title and its id.
 * @param plan with the step in it, as it was when the step came
 */
export function workOf(plan: Plan1, step: Step1): Work {
  switch (step.kind) {
    case 'prepare':
    case 'mark':
      return { on: 'kitchen' };
    case 'boil':
    case 'pour':
      return onKettle(plan, step);
    default:
      return step.fixture === undefined ? onVessel(plan, step) : onFixture(plan, step);
  }
}
