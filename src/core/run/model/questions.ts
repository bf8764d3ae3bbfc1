/** The question about the wall clock. */
export type ClockQuestion = {
  /** The time the tablet shows, ms. Say it with weekday and date. */
  readonly shownWallMs: number;
  /** Time that nobody saw pass, if the time shown is right, s; 0 or more. */
  readonly missingS: number;
  /** `answer-clock` needs `passed` when the time shown is said to be right. */
  readonly needsPassed: boolean;
};

/**
 * "Was it last hot then, or before?", of a rest that the plan counts from there. Yes is
 * `correct-time`, no is `report-recheck` of `about`; until then the rest counts from its beginning.
 */
export type LastHotClaim = {
  readonly wallMs: number;
  /** Fixture or vessel. */
  readonly about: string;
};
