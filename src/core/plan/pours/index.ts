export { aroundPlanned, pourNeedOf, roomNeedOf } from './needs-of-kitchen.ts';
export type { KettlePour, KettlePours } from './kettle-pour.ts';
export { plannedPour } from './planned-pour.ts';
export { kettlePours } from './pouring.ts';
