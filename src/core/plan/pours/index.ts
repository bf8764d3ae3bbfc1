export { aroundPlanned, pourNeedOf, roomNeedOf } from './needs-of-kitchen.ts';
export { repeated, type KettlePour, type KettlePours } from './kettle-pour.ts';
export { kettlePours } from './pouring.ts';
