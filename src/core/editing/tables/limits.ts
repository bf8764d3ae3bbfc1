// What the reader of kitchen files allows; the survey stops before it would be refused.

export const MOST_FIXTURES = 300;
export const MOST_VESSELS = 60;
export const MOST_CIRCUITS = 60;
export const MOST_BURNERS = 16;
/** Cut-outs of one counter. */
export const MOST_HOLES = 20;
/** Edges of one counter that stand at walls. */
export const MOST_BACK_EDGES = 20;
/** Corners of one outline. */
export const MOST_CORNERS = 500;
export const LEAST_CORNERS = 3;
/** Smallest side of a bowl, metres. */
export const LEAST_BOWL_M = 0.1;
