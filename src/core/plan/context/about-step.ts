import { isGas } from '../../kitchen/index.ts';
import type { Kettle } from '../estimates/index.ts';
import type { Step, StepKind } from '../model/index.ts';
import { vesselResource } from './demands.ts';
import { boilingVessels, type PlanContext } from './plan-context.ts';
import { fuelOf, restsFirst, type Fuel } from './purging.ts';
import type { About } from './step-draft.ts';

const HEATED: ReadonlySet<StepKind> = new Set(['steam', 'boil-over', 'high-heat']);

/** What heats in a step: its burner, what its kettle stands on, or the fixture itself. */
function fuelOfStep(
  context: PlanContext,
  step: Step,
  about: About,
  kettle?: Kettle,
): Fuel | undefined {
  if (about.burner) return isGas(about.burner.type) ? 'gas' : 'electric';
  if (kettle) return kettle.burner && context.boils.get(kettle.id)?.fuel;
  const fuel = about.fixture && fuelOf(about.fixture);
  return fuel ?? (HEATED.has(step.kind) ? 'electric' : undefined);
}

/** Does what is cleaned in this step rest after it: a fixture that is purged, a kettle, utensils? */
function restsAfter(context: PlanContext, step: Step): boolean {
  if (step.kind !== 'clean') return false;
  if (step.fixture === undefined) {
    const { work } = step;
    // What is only soaked needs no rest.
    return work.on === 'vessel' || (work.on === 'utensils' && work.method === undefined);
  }
  const choice = context.choices.get(step.fixture);
  return choice !== undefined && restsFirst(choice.method);
}

/**
 * What a step of a plan is about, read from the plan alone: its fixture, the
 * burner of its picture, the vessel it holds. The check of a plan uses it, so
 * that it does not lean on what the builders thought.
 */
export function aboutStep(context: PlanContext, step: Step): About {
  const fixture = context.kitchen.fixtures.find(({ id }) => id === step.fixture);
  const { picture } = step;
  const burner =
    picture?.kind === 'burner' ? context.burners.get(picture.burner)?.burner : undefined;
  const kettle = boilingVessels(context).find(
    (one) => step.demands[vesselResource(one)] !== undefined,
  );
  const about: About = {
    ...(fixture && { fixture }),
    ...(burner && { burner }),
    ...(kettle && { vessel: kettle.vessel.kind }),
    rests: restsAfter(context, step),
  };
  const fuel = fuelOfStep(context, step, about, kettle);
  return fuel ? { ...about, fuel } : about;
}
