import type { Step } from './step.ts';

/**
 * What all utensils of a kitchen go by among fixtures and vessels: no id of a kitchen has a stop in it.
 * By itself: a run needs it before anything else of the plan's making.
 */
export const UTENSILS = 'all.utensils';

/** A day of things under water: nobody is needed, and it is no rest. */
export function isSoak({ kind, work }: Pick<Step, 'kind' | 'work'>): boolean {
  return kind === 'dry' && work.on === 'utensils' && work.method === 'soak';
}
