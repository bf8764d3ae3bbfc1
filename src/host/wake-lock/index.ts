export { createWakeLock, type WakeState } from './wake-lock.ts';
