export {
  aroundPlanned,
  pourNeedOf,
  roomNeedOf,
  type PourNeed,
  type RoomNeed,
} from './needs-of-kitchen.ts';
export type { KettlePour, KettlePours } from './kettle-pour.ts';
export { kettlePours } from './pouring.ts';
