import { faults } from './faults.ts';
import { warnings } from './warnings.ts';

/** Cautions and faults of a plan. */
export const cautions = { ...warnings, ...faults };
