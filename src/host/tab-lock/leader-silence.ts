import type { Readings } from '../../core/run/index.ts';

/** The last heartbeat of the writing tab as this tab sees it, and since when it has not changed. */
export type WatchedHeartbeat = {
  readonly heartbeat: Readings | null;
  /** Monotonic time of this page at which this very heartbeat was first seen, ms. */
  readonly firstSeenMonoMs: number;
};

/** `beating`: leave it alone; `unsure`: wait and watch; `silent`: a person may take over. */
export type LeaderSilence = 'beating' | 'unsure' | 'silent';

/** Heartbeats come every 30 s; one and a little more must be missed while this tab watched, s. */
const WATCHED_ONE_S = 35;
/** Missed by the wall clock: three heartbeats, s. */
const MISSED_THREE_S = 90;

/**
 * Is the writing tab still alive? A device that just woke shows an old
 * heartbeat although the writer lives, so the wall clock alone never says
 * silent: this tab must itself have watched for longer than one beat.
 */
export function leaderSilence(watched: WatchedHeartbeat, now: Readings): LeaderSilence {
  const watchedS = (now.monoMs - watched.firstSeenMonoMs) / 1000;
  if (watchedS >= MISSED_THREE_S) return 'silent';
  if (watched.heartbeat === null) return watchedS >= WATCHED_ONE_S ? 'silent' : 'unsure';
  const ageS = (now.wallMs - watched.heartbeat.wallMs) / 1000;
  if (ageS >= 0 && ageS < WATCHED_ONE_S) return 'beating';
  return watchedS >= WATCHED_ONE_S && ageS >= MISSED_THREE_S ? 'silent' : 'unsure';
}
