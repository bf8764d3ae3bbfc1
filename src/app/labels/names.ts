import type { CustomId, Designation, MethodId, Purpose } from '../../core/kitchen/index.ts';
import type { Phase } from '../../core/plan/index.ts';
import type { FixturePhase, Outcome, RunStatus, TimerStatus } from '../../core/run/index.ts';

/** Plain English first; the trade's word stands beside it where the plan gives one. */
export const METHOD_NAMES: Readonly<Record<MethodId, string>> = {
  glow: 'Heat to glow',
  'light-heat': 'Heat at the highest setting',
  'self-clean': 'Full self-clean cycle',
  pour: 'Pour boiling water',
  immerse: 'Immerse in boiling water',
  steam: 'Boil water inside',
  'boil-over': 'Boil over the rim',
  clean: 'Clean thoroughly',
  line: 'Clean and line',
  cover: 'Cover',
  'not-purged': 'Not purged: keep it out of use',
};

export const PHASE_NAMES: Readonly<Record<Phase, string>> = {
  prepare: 'Prepare',
  clean: 'Clean',
  rest: 'Rest',
  purge: 'Purge',
  cool: 'Cool',
  cover: 'Cover',
  mark: 'Mark',
};

export const FIXTURE_PHASE_NAMES: Readonly<Record<FixturePhase, string>> = {
  'to-clean': 'to clean',
  resting: 'resting',
  ready: 'ready',
  purging: 'in work',
  hot: 'hot',
  done: 'done',
  covered: 'covered',
  untouched: '',
};

export const PURPOSE_NAMES: Readonly<Record<Purpose, string>> = {
  'new-kitchen': 'New kitchen',
  passover: 'Passover',
  'mix-up': 'After a mix-up',
};

export const CUSTOM_NAMES: Readonly<Record<CustomId, string>> = {
  sephardic: 'Sephardic custom',
  ashkenazic: 'Ashkenazic custom',
};

export const DESIGNATION_NAMES: Readonly<Record<Designation, string>> = {
  meat: 'Meat',
  dairy: 'Dairy',
  pareve: 'Pareve (neutral)',
  undecided: 'Not decided',
};

export const TIMER_STATUS_NAMES: Readonly<Record<TimerStatus, string>> = {
  running: 'running',
  frozen: 'paused',
  due: 'now',
  late: 'came due while nobody could be told',
  unproved: 'unproved: answer the question',
  void: 'does not count',
  closed: 'over',
};

export const OUTCOME_NAMES: Readonly<Record<Outcome, string>> = {
  done: 'Done',
  skipped: 'Skipped',
  failed: 'Failed',
  stopped: 'Stopped',
  'not-run': 'Not run',
};

export const RUN_STATUS_NAMES: Readonly<Record<RunStatus, string>> = {
  drafting: 'Not started',
  running: 'Running',
  held: 'Paused by you',
  suspended: 'Stopped for a fault',
  reviewing: 'Waiting for your answers',
  closing: 'Making safe',
  closed: 'Closed',
};
