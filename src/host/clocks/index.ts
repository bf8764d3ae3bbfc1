export { newId, readClocks } from './read-clocks.ts';
export { driveTurns } from './turn-driver.ts';
