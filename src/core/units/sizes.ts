/** Lengths and volumes in each other's units. */
export const MM_PER_M = 1000;
export const LITRES_PER_M3 = 1000;
