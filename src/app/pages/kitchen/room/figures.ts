/** Lines in a square of 24 that say what an appliance does. */
export const FIGURES = {
  snow: 'M12 2v20M3.3 7l17.4 10M20.7 7 3.3 17M12 6 9 3M12 6l3-3M12 18l-3 3M12 18l3 3',
  heat: 'M6 21q-4-4.5 0-9t0-9M13 21q-4-4.5 0-9t0-9M20 21q-4-4.5 0-9t0-9',
  plate: 'M12 2a10 10 0 1 0 .01 0M12 7a5 5 0 1 0 .01 0',
  spray: 'M5 12h14M12 5v14',
  fan: 'M12 12q-8-1-6-8 7-1 6 8m0 0q1-8 8-6 1 7-8 6m0 0q8 1 6 8-7 1-6-8m0 0q-1 8-8 6-1-7 8-6',
} as const;
