import { stateOfMethod } from '../../custom/index.ts';
import type { Fixture } from '../../kitchen/index.ts';
import type { Plan, Step } from '../../plan/index.ts';
import { standing, standingHolds } from '../gather/attempt-history.ts';
import type {
  AttemptReport,
  FixtureReport,
  KettleCount,
  MethodReport,
  NotDone,
  StepReport,
} from '../model/report.ts';

export function fixtureReport(
  plan: Plan,
  fixture: Fixture,
  all: readonly StepReport[],
): FixtureReport {
  const steps = all.filter((step) => step.fixture === fixture.id);
  const counted = steps.filter((step) => !nothingToCool(plan, step, all));
  const rest = (step: StepReport): boolean => step.kind === 'rest';
  return {
    id: fixture.id,
    name: fixture.name,
    kind: fixture.kind,
    designation: fixture.designation,
    method: methodReport(plan, fixture.id),
    steps,
    rests: steps.filter(rest).flatMap(standingHolds),
    holds: steps.filter((step) => !rest(step)).flatMap(standingHolds),
    kettles: kettleCount(plan, steps),
    ...unreachedOf(plan, fixture.id),
    done: doneOf(counted),
  };
}

/** Spots that the plan poured nothing over: each pour's picture shows all of its fixture's. */
function unreachedOf(plan: Plan, fixture: string): Pick<FixtureReport, 'unreachedM2'> {
  const pour = plan.steps.find((step) => step.kind === 'pour' && step.fixture === fixture);
  const spots = pour?.picture?.kind === 'lanes' ? (pour.picture.unreached ?? []) : [];
  const unreachedM2 = spots.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  return unreachedM2 > 0 ? { unreachedM2 } : {};
}

function methodReport(plan: Plan, fixture: string): MethodReport | null {
  const row = plan.methods.find((one) => one.fixture === fixture);
  if (!row) return null;
  return {
    method: row.method,
    cover: row.cover,
    minutes: row.minutes ?? null,
    reason: row.reason,
    term: row.term ?? null,
    source: row.source,
    checked: row.checked,
    sourceState: stateOfMethod(row),
    overriddenBy: row.overriddenBy ?? null,
    question: plan.questions.find((one) => one.id === row.question) ?? null,
  };
}

function doneOf(steps: readonly StepReport[]): FixtureReport['done'] {
  if (steps.length === 0) return 'nothing';
  const done = steps.filter((step) => standing(step)?.outcome === 'done').length;
  return done === steps.length ? 'all' : done === 0 ? 'none' : 'part';
}

/** Id of the cold-water stage of a pour. */
function coldStage({ stages }: Step): string | undefined {
  return stages.find(({ role }) => role === 'cold')?.id;
}

function kettleCount(plan: Plan, steps: readonly StepReport[]): KettleCount {
  const count = { planned: 0, poured: 0, cold: 0, voided: 0 };
  for (const step of steps) {
    const planned = plan.steps.find((one) => one.id === step.id);
    if (planned?.kind !== 'pour') continue;
    count.planned += 1;
    for (const attempt of step.attempts) {
      const ended = endedStages(attempt);
      if (!ended.has(planned.stages[0]?.id ?? '')) continue;
      if (attempt.replacedBecause !== null) {
        count.voided += 1;
        continue;
      }
      count.poured += 1;
      if (ended.has(coldStage(planned) ?? '') || attempt.madeSafe) count.cold += 1;
    }
  }
  return count;
}

function endedStages(attempt: AttemptReport): ReadonlySet<string> {
  return new Set(attempt.stages.filter((stage) => stage.endedBy !== null).map((stage) => stage.id));
}

/** A cool-down of something that was never heated is not missing. */
function nothingToCool(plan: Plan, step: StepReport, all: readonly StepReport[]): boolean {
  if (step.kind !== 'cool' || standing(step)?.startedWallMs !== null) return false;
  const needs = plan.steps.find((one) => one.id === step.id)?.needs ?? [];
  const heated = all.filter((one) => needs.some((need) => need.step === one.id));
  return (
    heated.length > 0 &&
    heated.every((one) => {
      const attempt = standing(one);
      return attempt?.startedWallMs === null && attempt.outcome !== 'waiting';
    })
  );
}

/** Steps whose standing attempt is not done, in the order of the plan. */
export function notDone(plan: Plan, steps: readonly StepReport[]): readonly NotDone[] {
  const found: NotDone[] = [];
  for (const step of steps) {
    const attempt = standing(step);
    if (!attempt || attempt.outcome === 'done' || nothingToCool(plan, step, steps)) continue;
    found.push({
      step: step.id,
      title: step.title,
      fixture: step.fixture,
      outcome: attempt.outcome,
      reason: attempt.reason,
    });
  }
  return found;
}

const NOT_PURGED: ReadonlySet<NotDone['outcome']> = new Set(['stopped', 'failed', 'not-run']);

/** Which purges a closed run is without, and which of them by a person's word. Boiling is part of its pour. */
export function purgesMissing(
  plan: Plan,
  steps: readonly StepReport[],
): { readonly notPurged: readonly NotDone[]; readonly leftOut: readonly NotDone[] } {
  const purges = new Set(
    steps.filter(({ phase, kind }) => phase === 'purge' && kind !== 'boil').map(({ id }) => id),
  );
  const missing = notDone(plan, steps).filter(({ step }) => purges.has(step));
  return {
    notPurged: missing.filter(({ outcome }) => NOT_PURGED.has(outcome)),
    leftOut: missing.filter(({ outcome }) => outcome === 'skipped'),
  };
}
