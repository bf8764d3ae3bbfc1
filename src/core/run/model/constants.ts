/**
 * Numbers of the engine itself. They are choices about clocks, not about
 * kitchens: everything about kitchens comes in with the plan.
 */

/**
 * Two clocks of one device that differ by no more than this are taken to agree, s.
 * Common practice, no published source: network time corrects by steps well under it.
 */
export const CLOCK_TOLERANCE_S = 5;

/**
 * Rate error allowed to a device clock, parts of one. Common practice, no
 * published source: quartz in consumer devices is specified within ±20 to
 * ±100 parts per million; the wider end is taken. 8.6 s a day.
 */
export const CLOCK_RATE_ERROR = 1e-4;

/** Unproved wall time that is worth a question to a person, s. Less than one usual heartbeat is not. */
export const ASK_CLOCK_S = 60;

/** Missing time from which "yes, it is right" is not enough even where the clock was known to be right, s. */
export const LONG_GAP_S = 12 * 3600;

/** No answer about the time may lie further ahead of what a clock of this run has shown, s. */
export const AHEAD_MAX_S = 24 * 3600;

/** A timer told this long after it was due is `late` rather than `due`, s. */
export const LATE_S = 30;

/** A person may add at most this to a timer at once, s. */
export const EXTEND_MAX_S = 24 * 3600;

/** A rest may be dated back at most this far before its step began, s. */
export const CORRECT_MAX_S = 14 * 24 * 3600;

/** A turn that is not quiet after this many rounds is a fault, not a hang. */
export const MAX_ROUNDS = 64;

/** Alerts are handed to the sound scheduler this far ahead, s: more than it lays out, so that it has each in time. */
export const ALERT_AHEAD_S = 150;
