export { watchUpdates, type Updates, type UpdateState } from './updates.ts';
