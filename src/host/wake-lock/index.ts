export { createWakeLock, type WakeLock, type WakeState } from './wake-lock.ts';
