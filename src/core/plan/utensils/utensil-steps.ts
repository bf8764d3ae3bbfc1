import type { PlanContext } from '../context/plan-context.ts';
import type { StepDraft } from '../context/step-draft.ts';
import { batchSteps } from './batch-steps.ts';
import { cleanUtensils, restUtensils } from './clean-and-rest.ts';
import { fireSteps } from './fire-steps.ts';
import { ownRimSteps } from './own-rim-steps.ts';
import { soakSteps } from './soak-steps.ts';
import { workOf } from './utensil-work.ts';

/**
 * Everything that is done with the utensils of a kitchen: cleaned, rested, dipped batch by batch,
 * boiled over, heated, soaked. None where it has no utensils, or where nothing of them is purged
 * in this kitchen: without a pot on a burner nothing is immersed.
 * @param drafts of the purge of all fixtures: burner and sink are ready before
 */
export function utensilSteps(
  context: PlanContext,
  drafts: readonly StepDraft[],
): readonly StepDraft[] {
  const { utensils } = context;
  if (!utensils) return [];
  const work = workOf(context, utensils, drafts);
  const rested = [...batchSteps(work), ...ownRimSteps(work), ...fireSteps(work)];
  const soaked = soakSteps(work);
  if (rested.length === 0 && soaked.length === 0) return [];
  return [
    cleanUtensils(work, rested.length > 0),
    ...(rested.length > 0 ? [restUtensils(work)] : []),
    ...rested,
    ...soaked,
  ];
}
