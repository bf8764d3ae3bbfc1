export { aroundPlanned, pourNeedOf, roomNeedOf } from './needs-of-kitchen.ts';
export { repeated, type KettlePour, type KettlePours } from './kettle-pour.ts';
export { plannedPour } from './planned-pour.ts';
export { kettlePours } from './pouring.ts';
export { lanesOptions, surfaceOf } from './lanes-options.ts';
export { openEdges } from './stand-sides.ts';
