export { leaderSilence, type LeaderSilence, type WatchedHeartbeat } from './leader-silence.ts';
export { createTabLock, type LockState, type TabLock } from './tab-lock.ts';
