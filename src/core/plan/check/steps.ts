import { SECONDS_PER_MINUTE } from '../../units/index.ts';
import type { Plan, Step } from '../model/index.ts';
import { problem, type PlanProblem } from './problem.ts';

/** A glow is looked at at least this often, s. */
const REMINDED_S = 10 * SECONDS_PER_MINUTE;

function* stages(step: Step): Generator<PlanProblem> {
  const { id } = step;
  if (step.stages.length === 0) yield problem('stages', [id], `${id} has no stages`);
  const names = new Set(step.stages.map((stage) => stage.id));
  if (names.size < step.stages.length) yield problem('stages', [id], `${id} names a stage twice`);
  for (const stage of step.stages) {
    const holds = stage.timers.filter(({ role }) => role === 'hold');
    if (stage.say === undefined && holds.length === 0)
      yield problem('stages', [id], `stage ${stage.id} of ${id} never ends`);
    if (stage.resumption !== 'continue' && stage.reviewAsk === undefined)
      yield problem(
        'stages',
        [id],
        `stage ${stage.id} of ${id} has nothing to ask after an interruption`,
      );
    for (const timer of stage.timers) {
      if (!(timer.lengthS > 0) || !Number.isFinite(timer.lengthS))
        yield problem('timers', [id], `timer ${timer.id} of ${id} lasts ${timer.lengthS} s`);
      if ((timer.role === 'limit') !== (timer.fault !== undefined))
        yield problem(
          'timers',
          [id],
          `limit timer ${timer.id} of ${id} and its fault do not match`,
        );
      if (timer.role === 'limit' && timer.purpose !== 'at-most')
        yield problem('timers', [id], `limit timer ${timer.id} of ${id} is not at-most`);
    }
    const last = step.stages.at(-1) === stage;
    if (stage.hazards.length > 0 && !last && step.makeSafe === undefined && step.kind !== 'cool')
      yield problem('make-safe', [id], `${id} is hot and says nothing about making it safe`);
  }
}

/** I-18 by construction: boiling water is poured, then cold. */
function* pours(step: Step): Generator<PlanProblem> {
  if (step.kind !== 'pour') return;
  const { id } = step;
  const [pour, cold] = step.stages;
  if (pour?.id !== 'pour' || cold?.id !== 'cold' || cold.say === undefined)
    yield problem('cold', [id], `${id} is not a pour followed by cold water`);
  if (!step.needs.some(({ withinS }) => withinS !== undefined))
    yield problem('cold', [id], `${id} may be poured with water that has cooled`);
}

function* glows(step: Step): Generator<PlanProblem> {
  if (step.kind !== 'glow') return;
  const hold = step.stages.find(({ id }) => id === 'hold');
  const timers = hold?.timers ?? [];
  if (!timers.some(({ purpose, role }) => purpose === 'unbroken' && role === 'hold'))
    yield problem('timers', [step.id], `${step.id} has no unbroken hold`);
  if (!timers.some(({ role, lengthS }) => role === 'reminder' && lengthS <= REMINDED_S))
    yield problem('timers', [step.id], `${step.id} is not looked at every ten minutes`);
}

function* resources(plan: Plan): Generator<PlanProblem> {
  const known = new Map(plan.resources.map(({ id, capacity }) => [id, capacity]));
  for (const step of plan.steps) {
    for (const [id, wanted] of Object.entries(step.demands)) {
      const capacity = known.get(id);
      if (capacity === undefined)
        yield problem(
          'resources',
          [step.id, id],
          `${step.id} asks for ${id}, which is no resource`,
        );
      else if (wanted > capacity + 1e-6)
        yield problem(
          'resources',
          [step.id, id],
          `${step.id} asks for ${wanted} of ${id}; there is ${capacity}`,
        );
    }
  }
}

/** More held at one moment of the timetable than there is. */
function* crowding(plan: Plan): Generator<PlanProblem> {
  const { startS } = plan.timetable;
  const span = (step: Step) => {
    const from = startS[step.id] ?? 0;
    return { from, to: from + step.durationS.typical };
  };
  for (const { id, capacity } of plan.resources) {
    const users = plan.steps.filter(({ demands }) => (demands[id] ?? 0) > 0);
    for (const user of users) {
      const atS = span(user).from;
      const held = users
        .filter((one) => span(one).from <= atS + 0.01 && span(one).to > atS + 0.01)
        .reduce((sum, { demands }) => sum + (demands[id] ?? 0), 0);
      if (held > capacity + 1e-6)
        yield problem(
          'resources',
          [user.id, id],
          `at ${atS} s ${held} of ${id} are held; there is ${capacity}`,
        );
    }
  }
}

export function* stepProblems(plan: Plan): Generator<PlanProblem> {
  for (const step of plan.steps) {
    yield* stages(step);
    yield* pours(step);
    yield* glows(step);
  }
  yield* resources(plan);
  yield* crowding(plan);
}
