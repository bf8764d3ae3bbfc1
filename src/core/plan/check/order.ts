import { restDayBroken, type Plan, type Step } from '../model/index.ts';
import { mostLagS } from '../timetable/lags.ts';
import { problem, type PlanProblem } from './problem.ts';

function* ids(plan: Plan): Generator<PlanProblem> {
  const lists = {
    step: plan.steps,
    gate: plan.gates,
    caution: plan.cautions,
    question: plan.questions,
    resource: plan.resources,
  };
  for (const [what, list] of Object.entries(lists)) {
    const seen = new Set<string>();
    for (const { id } of list) {
      if (id === '' || seen.has(id)) yield problem('ids', [id], `${what} ${id} is named twice`);
      seen.add(id);
    }
  }
}

function* needs(plan: Plan, byId: ReadonlyMap<string, Step>): Generator<PlanProblem> {
  const fixtures = new Set(plan.kitchen.fixtures.map(({ id }) => id));
  for (const step of plan.steps) {
    if (step.fixture !== undefined && !fixtures.has(step.fixture))
      yield problem(
        'ids',
        [step.id],
        `${step.id} is about ${step.fixture}, which is not in the kitchen`,
      );
    for (const { step: id, withinS } of step.needs) {
      if (!byId.has(id))
        yield problem('needs', [step.id, id], `${step.id} needs ${id}, which is no step`);
      if (withinS !== undefined && !(withinS > 0))
        yield problem('needs', [step.id, id], `${step.id} has ${withinS} s after ${id}`);
    }
    if (step.startsBy === 'chain' && step.needs.length === 0)
      yield problem('needs', [step.id], `${step.id} starts by itself after nothing`);
  }
}

/** Steps that stand in a ring of needs, by taking away again and again what needs nothing more. */
function* cycles(plan: Plan): Generator<PlanProblem> {
  let left = [...plan.steps];
  for (;;) {
    const open = new Set(left.map(({ id }) => id));
    const next = left.filter((step) => step.needs.some((need) => open.has(need.step)));
    if (next.length === left.length) break;
    left = next;
  }
  if (left.length > 0) {
    const about = left.map(({ id }) => id);
    yield problem('cycle', about, `these wait for each other: ${about.join(', ')}`);
  }
}

/** Everything a step comes after, however far back. */
function ancestors(step: Step, byId: ReadonlyMap<string, Step>): ReadonlySet<string> {
  const seen = new Set<string>();
  const open = [step];
  for (let at = open.pop(); at; at = open.pop()) {
    for (const { step: id } of at.needs) {
      const needed = byId.get(id);
      if (seen.has(id) || !needed) continue;
      seen.add(id);
      open.push(needed);
    }
  }
  return seen;
}

/** Heat alone, in a fixture of which the household was told that it needs no rest. */
function heatNeedsNone(plan: Plan, step: Step): boolean {
  const told = plan.methods.find(({ fixture }) => fixture === step.fixture);
  const cleaned = plan.steps.some(
    ({ kind, id }) => kind === 'clean' && step.needs.some((need) => need.step === id),
  );
  return told?.rest === false && cleaned && ['glow', 'self-clean', 'high-heat'].includes(step.kind);
}

/** Three days in cold water are the rest and the purge in one. */
function isSoak({ work }: Step): boolean {
  return work.on === 'utensils' && work.method === 'soak';
}

/** I-17 by construction: cleaning, then the rest, then every purge of a fixture. */
function* rests(plan: Plan, byId: ReadonlyMap<string, Step>): Generator<PlanProblem> {
  for (const step of plan.steps) {
    if (step.phase !== 'purge' || isSoak(step)) continue;
    const before = ancestors(step, byId);
    const own = plan.steps.filter((one) => one.kind === 'rest' && one.fixture === step.fixture);
    const rested = own.some(({ id }) => before.has(id)) || heatNeedsNone(plan, step);
    if (!rested) yield problem('rest', [step.id], `${step.id} has no rest before it`);
    const cleaned = own.every((rest) =>
      rest.needs.some(({ step: id }) => byId.get(id)?.kind === 'clean'),
    );
    if (!cleaned)
      yield problem('rest', [step.id], `the rest before ${step.id} follows no cleaning`);
  }
}

function* times(plan: Plan, byId: ReadonlyMap<string, Step>): Generator<PlanProblem> {
  const { startS, finishS, lowerBoundS, proven } = plan.timetable;
  for (const step of plan.steps) {
    const start = startS[step.id];
    if (start === undefined || !(start >= 0)) {
      yield problem('timetable', [step.id], `${step.id} has no time`);
      continue;
    }
    for (const { step: id, withinS } of step.needs) {
      const needed = byId.get(id);
      const endS = (startS[id] ?? 0) + (needed?.durationS.typical ?? 0);
      // Times are rounded to whole milliseconds.
      if (start < endS - 0.01)
        yield problem('timetable', [step.id, id], `${step.id} begins before ${id} is over`);
      if (withinS !== undefined && start > endS + mostLagS(step, withinS) + 0.01)
        yield problem('timetable', [step.id, id], `${step.id} begins too late after ${id}`);
    }
  }
  if (finishS < lowerBoundS - 0.01)
    yield problem('timetable', [], `ends at ${finishS} s, before its bound ${lowerBoundS} s`);
  if (proven && finishS > lowerBoundS + 0.01)
    yield problem('timetable', [], `is called the earliest, but its bound is ${lowerBoundS} s`);
}

/** I-19 for plans: no work, nor heat that must be turned off, lies in a rest day. */
function* restDays(plan: Plan): Generator<PlanProblem> {
  for (const step of plan.steps) {
    const day = restDayBroken(plan, step);
    if (day) yield problem('rest-days', [step.id], `${step.id} is planned into ${day.name}`);
  }
}

export function* orderProblems(plan: Plan): Generator<PlanProblem> {
  const byId = new Map(plan.steps.map((step) => [step.id, step]));
  yield* ids(plan);
  yield* needs(plan, byId);
  yield* cycles(plan);
  yield* rests(plan, byId);
  yield* times(plan, byId);
  yield* restDays(plan);
}
