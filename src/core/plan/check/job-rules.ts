import { partsOf, type Fixture } from '../../kitchen/index.ts';
import { MS_PER_SECOND } from '../../units/index.ts';
import type { Plan, Step } from '../model/index.ts';
import { problem, type PlanProblem } from './problem.ts';

// What the job asks of a plan whatever stands where: written apart from what builds it.

/** Names of these rules. */
export const JOB_RULES = ['passover-water', 'parts'] as const;

const WATER: ReadonlySet<Step['kind']> = new Set(['boil', 'boil-over', 'pour', 'steam']);

/** Day of the month of spring in which Passover begins and ends, where a day outside the land is added. */
const FIRST_DAY = 15;
const LAST_DAY = { israel: 21, diaspora: 22 } as const;

/**
 * Is it Passover on this civil day? By the calendar that the machine brings
 * along, not by the one the plan was made with; the eve's evening is left to
 * the rest days.
 */
function isPassoverDay(wallMs: number, zone: string, last: number): boolean {
  const hebrew = new Intl.DateTimeFormat('en-u-ca-hebrew', {
    timeZone: zone,
    day: 'numeric',
    month: 'long',
  }).formatToParts(wallMs);
  const told = Object.fromEntries(hebrew.map(({ type, value }) => [type, value]));
  const day = Number(told['day']);
  // not shown: the month's name in that calendar.
  return told['month'] === 'Nisan' && day >= FIRST_DAY && day <= last;
}

/** 7: inside Passover nothing is purged with water. */
function* waterInPassover(plan: Plan): Generator<PlanProblem> {
  const { days, kitchen, timetable } = plan;
  const { place } = kitchen;
  if (!days || !place) return;
  const begins = (step: Step): number =>
    days.startWallMs + (timetable.startS[step.id] ?? Number.NaN) * MS_PER_SECOND;
  // Only a job that begins inside: one that begins before and ends too late says so in its first notice.
  if (!isPassoverDay(days.startWallMs, place.zone, LAST_DAY[place.land])) return;
  for (const step of plan.steps) {
    if (WATER.has(step.kind) && isPassoverDay(begins(step), place.zone, LAST_DAY[place.land]))
      yield problem('passover-water', [step.id], `${step.id} purges with water inside Passover`);
  }
}

/** Everything that is said while these steps are done, as text to be searched for keys. */
function toldIn(steps: readonly Step[]): string {
  return JSON.stringify(steps.map(({ title, stages }) => [title, stages]));
}

/** 8: every part that a fixture has is decided on, and done, bought or told. */
function* parts(plan: Plan, fixture: Fixture): Generator<PlanProblem> {
  const method = plan.methods.find((one) => one.fixture === fixture.id);
  // Plans of earlier versions knew no parts.
  if (method?.parts === undefined) return;
  const own = plan.steps.filter((step) => step.fixture === fixture.id);
  const cycles = plan.steps.filter(({ kind }) => kind === 'self-clean');
  const purged = own.some(({ phase }) => phase === 'purge');
  let told: string | undefined;
  for (const part of partsOf(fixture)) {
    const chosen = method.parts.find((one) => one.part === part);
    const say = (what: string) =>
      problem('parts', [fixture.id, part], `the ${part} of ${fixture.id} ${what}`);
    if (!chosen) yield say('are not decided on');
    else if (chosen.within && !purged) yield say('wait for a purge that never comes');
    else if (!chosen.within && NEEDS_WORDS.has(chosen.method)) {
      told ??= toldIn([...own, ...cycles]);
      if (!told.includes(`"steps.part.${part}"`)) yield say(`have no step (${chosen.method})`);
    }
  }
}

/** What cannot be done without a word about the part. */
const NEEDS_WORDS: ReadonlySet<string> = new Set([
  'replace',
  'pour',
  'glow',
  'light-heat',
  'self-clean',
  'immerse',
  'cover',
  'line',
]);

/** The rules of the job: no water inside Passover, no part forgotten; empty where a plan keeps them. */
export function* jobRuleProblems(plan: Plan): Generator<PlanProblem> {
  yield* waterInPassover(plan);
  for (const fixture of plan.kitchen.fixtures) yield* parts(plan, fixture);
}
