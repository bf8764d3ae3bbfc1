/**
 * What all utensils of a kitchen go by among fixtures and vessels: no id of a kitchen has a stop in it.
 * By itself: a run needs it before anything else of the plan's making.
 */
export const UTENSILS = 'all.utensils';
