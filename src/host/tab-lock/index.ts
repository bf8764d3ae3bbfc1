export { leaderSilence, type LeaderSilence, type WatchedHeartbeat } from './leader-silence.ts';
export { createTabLock, type LockState, type TabLock, type TabLockOptions } from './tab-lock.ts';
