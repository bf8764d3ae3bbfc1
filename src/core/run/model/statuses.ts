/**
 * What a run, a step and a clock can be in, and what each permits. "Permits:"
 * lists every request that can be accepted there; all others are refused by
 * name. The lists are read by a test that tries each of them.
 */

/** Of a run. */
export type RunStatus =
  /**
   * A plan exists and nothing has begun.
   * Permits: start-run, stop-run, note.
   */
  | 'drafting'
  /**
   * Steps may start and stages end; what is chained starts by itself.
   * Permits: start-step, confirm, answer-gate, override-gate, pause, report-fault, clear-fault,
   * skip-step, stop-step, repeat-step, stop-run, confirm-safe, acknowledge-timer, extend-timer,
   * answer-clock, withdraw-clock-answer, withdraw-review-answer,
   * report-recheck, withdraw-recheck, correct-time, amend-plan, note.
   */
  | 'running'
  /**
   * A person paused. No person starts a step; stages already begun go on and
   * may be confirmed; all clocks run, and alarms sound. Leaves by a person's resume.
   * Permits: confirm, answer-gate, override-gate, resume, report-fault, clear-fault, skip-step,
   * stop-step, repeat-step, stop-run, confirm-safe, acknowledge-timer, extend-timer, answer-clock,
   * withdraw-clock-answer, withdraw-review-answer, report-recheck, withdraw-recheck, correct-time, amend-plan, note.
   */
  | 'held'
  /**
   * A fault, a gate or the storage stopped progress. As held; leaves only when
   * faults are cleared, gates open, hot things safe, and then a person resumes.
   * Permits: confirm, answer-gate, override-gate, resume, report-fault, clear-fault, skip-step,
   * stop-step, repeat-step, stop-run, confirm-safe, acknowledge-timer, extend-timer, answer-clock,
   * withdraw-clock-answer, withdraw-review-answer, report-recheck, withdraw-recheck, correct-time, amend-plan, note.
   */
  | 'suspended'
  /**
   * After a gap. Nothing starts, no minimum completes, no stage is confirmed;
   * alarms sound. Leaves by a person's answers.
   * Permits: answer-gate, override-gate, resume, report-fault, clear-fault, stop-step, stop-run,
   * confirm-safe, acknowledge-timer, answer-review, answer-clock, withdraw-clock-answer,
   * withdraw-review-answer, report-recheck, withdraw-recheck, correct-time, note.
   */
  | 'reviewing'
  /**
   * Being stopped: hot things are made safe, one word each; then it closes by itself.
   * Permits: report-fault, stop-run, confirm-safe, acknowledge-timer, note.
   */
  | 'closing'
  /**
   * Over, for good.
   * Permits: nothing.
   */
  | 'closed';

/** Of a step, as a screen sees it. Lists what can be asked about it while its run permits that. */
export type StepStatus =
  /**
   * Something it needs is not done, what it uses is taken, or a rest day is in the way.
   * Permits: skip-step.
   */
  | 'waiting'
  /**
   * Needs are done and resources free; its gates may still ask.
   * Permits: start-step, skip-step.
   */
  | 'ready'
  /**
   * A stage is in progress.
   * Permits: confirm, skip-step, stop-step.
   */
  | 'active'
  /**
   * The time of the stage is over, and a person is to say so.
   * Permits: confirm, skip-step, stop-step.
   */
  | 'checking'
  /**
   * What it needs was done too long ago, or a fault about it is open; a step
   * in progress can be stopped, one that waits can be left out.
   * Permits: skip-step, stop-step.
   */
  | 'stalled'
  /**
   * Stopped while hot, and not yet made safe.
   * Permits: confirm-safe, stop-step.
   */
  | 'unwinding'
  /**
   * Over; again is a new attempt. What was stopped or failed can also be left out.
   * Permits: repeat-step, skip-step.
   */
  | 'settled';

/** Of a clock. Lists what may be asked of it. */
export type TimerStatus =
  /**
   * It counts. A minimum may be made longer, a rest dated back.
   * Permits: extend-timer, correct-time.
   */
  | 'running'
  /**
   * A minimum whose process a fault broke: it cannot complete.
   * Permits: extend-timer.
   */
  | 'frozen'
  /**
   * It came due and calls for an answer, or was answered and its stage goes on.
   * Permits: acknowledge-timer, extend-timer, correct-time.
   */
  | 'due'
  /**
   * It came due while nobody could be told; `lateByS` says by how much.
   * Permits: acknowledge-timer, extend-timer, correct-time.
   */
  | 'late'
  /**
   * A gap is unexplained, or the wall clock would have it due and the proof would not.
   * Permits: extend-timer, correct-time.
   */
  | 'unproved'
  /**
   * Its process broke and cannot be repeated. Such a clock leaves the view with its step.
   * Permits: nothing.
   */
  | 'void'
  /**
   * Ended and answered. Such a clock leaves the view.
   * Permits: nothing.
   */
  | 'closed';
