import { message, type Message } from '../messages/index.ts';

/** Four times the steps of a large hall. */
const MOST_STEPS = 2000;

/** A run of three days writes about a twentieth of it. */
const MOST_RECORDS = 20_000;

/** More problems than this are counted, not told. */
const MOST_PROBLEMS = 20;

/** A file of more records than any run writes: checking them would hold the tablet up. */
export function tooManyRecords(found: number): Message | undefined {
  return found > MOST_RECORDS
    ? message('shell.import.records', { found, most: MOST_RECORDS })
    : undefined;
}

/** A plan of more steps than any kitchen has; anything but a list is for the reader of plans. */
export function tooManySteps(steps: unknown, before = 0): Message | undefined {
  const found = before + (Array.isArray(steps) ? steps.length : 0);
  return found > MOST_STEPS
    ? message('shell.import.steps', { found, most: MOST_STEPS })
    : undefined;
}

/** The first of them, each once, and how many more there are. */
export function firstOf(problems: readonly Message[]): readonly Message[] {
  const more = problems.length - MOST_PROBLEMS;
  return more > 0
    ? [...problems.slice(0, MOST_PROBLEMS), message('shell.import.more', { more })]
    : problems;
}
