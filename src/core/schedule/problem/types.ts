/**
 * Work to be timed, and nothing about what the work is: activities, the
 * resources they hold, the lags between them and the hours in which they may
 * run. All times in seconds from the start of the job (0).
 */

/**
 * A finish-to-start lag from an earlier activity: this one starts at least
 * `minLagS` (default 0) and at most `maxLagS` (default: no limit) after `id`
 * has finished. `maxLagS: 0` chains the two. Both may be negative, so that a
 * start-to-start lag is written by taking the duration of `id` away.
 */
export type After = {
  readonly id: string;
  readonly minLagS?: number;
  readonly maxLagS?: number;
};

export type Activity = {
  readonly id: string;
  /** 0 or more. */
  readonly durationS: number;
  /** What it holds of each resource from start to finish, by resource id. */
  readonly demand: Readonly<Record<string, number>>;
  readonly after?: readonly After[];
  readonly notBeforeS?: number;
  /** Latest start. With the same `notBeforeS` the start is fixed. */
  readonly notAfterS?: number;
  /** Id of a calendar: the whole activity lies inside one open window of it. Absent: it runs through day and night. */
  readonly calendar?: string;
  /** Among equals the lower number goes first. */
  readonly priority?: number;
};

type Resource = { readonly id: string; readonly capacity: number };

/** Hours in which an activity that follows this calendar may not run; open everywhere else. */
export type Calendar = {
  readonly id: string;
  readonly closed: readonly { readonly fromS: number; readonly toS: number }[];
};

export type Problem = {
  readonly activities: readonly Activity[];
  readonly resources: readonly Resource[];
  readonly calendars?: readonly Calendar[];
  /** Wished-for finish. Missing it is reported in `late`, never refused. */
  readonly deadlineS?: number;
};

/** What the lower bound rests on. */
export type BoundReason =
  | { readonly kind: 'critical path' }
  | { readonly kind: 'resource'; readonly resource: string }
  | { readonly kind: 'windows' };

export type Schedule = {
  readonly startS: Readonly<Record<string, number>>;
  /** When the last activity finishes; 0 for no activities. */
  readonly finishS: number;
  /** No schedule of this problem finishes earlier. */
  readonly lowerBoundS: number;
  readonly bound: BoundReason;
  /** The finish equals the lower bound: it is proven that nothing better exists. */
  readonly optimal: boolean;
  /** Only when the problem has a deadline and misses it. */
  readonly late?: {
    readonly byS: number;
    /** Even the lower bound misses the deadline: no order of work would keep it. */
    readonly certain: boolean;
  };
};

export type SolveOptions = {
  /**
   * Improvement rounds after the priority rules (0 or more, default 60). The
   * answer is the same every time for the same problem and rounds.
   */
  readonly rounds?: number;
  /** Steps of the exact search that follows while the bound is not reached (0 or more, default 30 million). */
  readonly steps?: number;
  /** Starts of an earlier schedule, by id: its order is kept where it can be, and wins a draw. */
  readonly previousS?: Readonly<Record<string, number>>;
  /** Another order to try where the rules do not reach the bound: keys by id, the lowest first. */
  readonly otherOrder?: Readonly<Record<string, number>>;
};
