export { newId, readClocks } from './read-clocks.ts';
export { driveTurns, HEARTBEAT_S, type TurnCause, type TurnDriver } from './turn-driver.ts';
export { nextTurnMs } from './next-turn.ts';
