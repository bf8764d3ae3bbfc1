export { leaderSilence, type LeaderSilence, type WatchedHeartbeat } from './leader-silence.ts';
export { createTabLock, type LockState } from './tab-lock.ts';
