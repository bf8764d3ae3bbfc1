import type { Designation, MethodId, Purpose } from '../kitchen/index.ts';
import type { ClosedAs } from '../run/index.ts';
import type { AttemptReport, FixtureReport, ReviewReport } from './types.ts';

export const METHOD_WORDS: Readonly<Record<MethodId, string>> = {
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

export const PURPOSE_WORDS: Readonly<Record<Purpose, string>> = {
  'new-kitchen': 'a kitchen taken over',
  passover: 'Passover',
  'mix-up': 'after a mix-up',
};

export const DESIGNATION_WORDS: Readonly<Record<Designation, string>> = {
  meat: 'meat',
  dairy: 'dairy',
  pareve: 'pareve (neutral)',
  undecided: 'not decided',
};

export const RUN_OUTCOME_WORDS: Readonly<Record<ClosedAs | 'open', string>> = {
  completed: 'completed',
  failed: 'failed',
  stopped: 'stopped before its end',
  open: 'still going on',
};

export const OUTCOME_WORDS: Readonly<Record<AttemptReport['outcome'], string>> = {
  done: 'done',
  skipped: 'left out',
  failed: 'failed',
  stopped: 'stopped',
  'not-run': 'not begun',
  open: 'begun, not over',
  waiting: 'not begun',
  void: 'broken off',
};

export const ANSWER_WORDS: Readonly<Record<NonNullable<ReviewReport['answer']>, string>> = {
  'went-on': 'it went on',
  'broke-off': 'it broke off',
  unknown: 'nobody saw',
};

export const DONE_WORDS: Readonly<Record<FixtureReport['done'], string>> = {
  all: 'every planned step was done',
  part: 'only some of the planned steps were done',
  none: 'nothing of what was planned was done',
  nothing: 'nothing was planned',
};

const HOUR_S = 3600;
const MINUTE_S = 60;

/** Below this, seconds are told too, s. */
const FINE_S = 10 * MINUTE_S;

/** A length of time, cut and never rounded up: a record must not claim a minute too many. */
export function lengthText(lengthS: number): string {
  const wholeS = Math.max(0, Math.floor(lengthS + HAIR_S));
  const h = Math.floor(wholeS / HOUR_S);
  const min = Math.floor((wholeS % HOUR_S) / MINUTE_S);
  const s = wholeS % MINUTE_S;
  if (wholeS < MINUTE_S) return `${s} s`;
  if (wholeS < FINE_S) return s === 0 ? `${min} min` : `${min} min ${s} s`;
  if (h === 0) return `${min} min`;
  return min === 0 ? `${h} h` : `${h} h ${min} min`;
}

/** Sums of binary fractions end a hair short of the whole second they mean, s. */
const HAIR_S = 1e-6;

/** What people wrote, on one line, so that no note can pass for a line of the record. */
export function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, ' ').trim();
}

/** Ends a sentence that people may have ended already. */
export function sentence(text: string): string {
  const line = oneLine(text);
  return line === '' || /[.!?…:]$/u.test(line) ? line : `${line}.`;
}
