import { cautionsFor, laterCautions } from '../cautions/index.ts';
import { aboutStep } from '../context/about-step.ts';
import { planContextOf, type PlanContext } from '../context/plan-context.ts';
import { UNLIT } from '../estimates/index.ts';
import type { Plan } from '../model/index.ts';
import { problem, type PlanProblem } from './problem.ts';

/** Stands wherever heat is worked with, once the room is expected to get hot. */
const HOT_ROOM = 'heat-stress';

/**
 * The context as the plan has it: methods by the plan, the rest by its kitchen.
 * Whether the room gets hot is an estimate that is made better over the years:
 * a plan that was made before keeps its own, and keeps to it at every step.
 */
function contextIn(plan: Plan): PlanContext {
  const hot = plan.steps.some(({ standing }) => standing.includes(HOT_ROOM));
  const context = planContextOf(plan.kitchen, plan.calibration, { room: { ...UNLIT, hot } });
  const methods = new Map(plan.methods.map((method) => [method.fixture, method]));
  const choices = [...context.choices].map(
    ([id, choice]) => [id, { ...choice, method: methods.get(id) ?? choice.method }] as const,
  );
  return { ...context, choices: new Map(choices) };
}

/** Every caution whose trigger holds stands where the trigger says. */
function* attached(plan: Plan): Generator<PlanProblem> {
  const context = contextIn(plan);
  const later = laterCautions(plan);
  for (const step of plan.steps) {
    const about = aboutStep(context, step);
    const due = {
      gate: cautionsFor('gate', step, about, context).filter((id) => !step.gates.includes(id)),
      standing: [
        ...cautionsFor('standing', step, about, context),
        ...cautionsFor('timer', step, about, context),
      ].filter((id) => !step.standing.includes(id)),
      after: cautionsFor('after', step, about, context).filter((id) => !step.after.includes(id)),
    };
    for (const [where, missing] of Object.entries(due)) {
      for (const id of missing.filter((one) => !later.has(one)))
        yield problem('cautions', [step.id, id], `${step.id} lacks the ${where} caution ${id}`);
    }
  }
}

function* described(plan: Plan): Generator<PlanProblem> {
  const gates = new Set(plan.gates.map(({ id }) => id));
  const cautions = new Set(plan.cautions.map(({ id }) => id));
  const faults = new Set(plan.faults.map(({ kind }) => kind));
  for (const step of plan.steps) {
    for (const id of step.gates) {
      if (!gates.has(id))
        yield problem(
          'gates',
          [step.id, id],
          `${step.id} names the gate ${id}, which is not there`,
        );
    }
    for (const id of [...step.gates, ...step.standing, ...step.after]) {
      if (!cautions.has(id))
        yield problem(
          'cautions',
          [step.id, id],
          `${step.id} names the caution ${id}, which has no words`,
        );
    }
    for (const { fault } of step.stages.flatMap(({ timers }) => timers)) {
      if (fault !== undefined && !faults.has(fault))
        yield problem('faults', [step.id], `${step.id} may raise ${fault}, which has no policy`);
    }
  }
  for (const gate of plan.gates) {
    for (const kind of gate.trippedBy) {
      if (!faults.has(kind))
        yield problem('faults', [gate.id], `${gate.id} is tripped by ${kind}, which has no policy`);
    }
  }
}

function* answered(plan: Plan): Generator<PlanProblem> {
  const questions = new Set(plan.questions.map(({ id }) => id));
  const methods = new Map(plan.methods.map((row) => [row.fixture, row]));
  for (const { id } of plan.kitchen.fixtures) {
    if (!methods.has(id)) yield problem('methods', [id], `${id} has no method`);
  }
  for (const row of plan.methods) {
    if (row.question !== undefined && !questions.has(row.question))
      yield problem(
        'questions',
        [row.fixture],
        `${row.fixture} asks ${row.question}, which is no question`,
      );
    const steps = plan.steps.filter(({ fixture }) => fixture === row.fixture);
    if (row.cover && !steps.some(({ kind }) => kind === 'cover'))
      yield problem(
        'methods',
        [row.fixture],
        `${row.fixture} is to be covered and no step covers it`,
      );
    if (
      ['pour', 'glow', 'self-clean', 'light-heat', 'steam', 'immerse', 'boil-over'].includes(
        row.method,
      ) &&
      !steps.some(({ phase }) => phase === 'purge')
    )
      yield problem(
        'methods',
        [row.fixture],
        `${row.fixture} is to be purged and no step purges it`,
      );
  }
}

export function* wordProblems(plan: Plan): Generator<PlanProblem> {
  yield* described(plan);
  yield* attached(plan);
  yield* answered(plan);
}
