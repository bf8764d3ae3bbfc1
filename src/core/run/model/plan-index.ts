import type { Gate, Need, Plan, Stage, Step } from '../../plan/index.ts';

/** Look-ups over a plan, made once a plan. */
export type PlanIndex = {
  readonly steps: ReadonlyMap<string, Step>;
  readonly gates: ReadonlyMap<string, Gate>;
  /**
   * Needs of a step, with the rest of its own fixture added to every purge step
   * (I-17), and with what a cool-down follows added to what waits for it: a
   * cool-down follows a stopped glow too (I-22).
   */
  readonly needs: ReadonlyMap<string, readonly Need[]>;
  /** Steps that name this one among their own needs. */
  readonly dependents: ReadonlyMap<string, readonly Step[]>;
  /** Position in timetable order. */
  readonly order: ReadonlyMap<string, number>;
};

const indexes = new WeakMap<Plan, PlanIndex>();

export function indexOf(plan: Plan): PlanIndex {
  const known = indexes.get(plan);
  if (known) return known;
  const index = makeIndex(plan);
  indexes.set(plan, index);
  return index;
}

function makeIndex(plan: Plan): PlanIndex {
  const dependents = new Map<string, Step[]>();
  for (const step of plan.steps) {
    for (const need of step.needs) {
      const list = dependents.get(need.step) ?? [];
      list.push(step);
      dependents.set(need.step, list);
    }
  }
  const startS = (step: Step): number => plan.timetable.startS[step.id] ?? Infinity;
  const place = new Map(plan.steps.map((step, position) => [step.id, position]));
  const ordered = plan.steps.toSorted((a, b) =>
    startS(a) === startS(b)
      ? (place.get(a.id) ?? 0) - (place.get(b.id) ?? 0)
      : startS(a) < startS(b)
        ? -1
        : 1,
  );
  return {
    steps: new Map(plan.steps.map((step) => [step.id, step])),
    gates: new Map(plan.gates.map((gate) => [gate.id, gate])),
    needs: new Map(plan.steps.map((step) => [step.id, wholeNeeds(plan, step)])),
    dependents,
    order: new Map(ordered.map((step, position) => [step.id, position])),
  };
}

function wholeNeeds(plan: Plan, step: Step): readonly Need[] {
  const needs = withRest(plan, step);
  const heated = plan.steps
    .filter((one) => one.kind === 'cool' && needs.some((need) => need.step === one.id))
    .flatMap((cool) => cool.needs.map((need): Need => ({ step: need.step })))
    .filter((more) => !needs.some((need) => need.step === more.step));
  return heated.length === 0 ? needs : [...needs, ...heated];
}

/** A purge step of a fixture needs that fixture's rest, whether or not the plan says so. */
function withRest(plan: Plan, step: Step): readonly Need[] {
  if (step.phase !== 'purge' || step.fixture === undefined) return step.needs;
  const missing = plan.steps.filter(
    (other) =>
      other.kind === 'rest' &&
      other.fixture === step.fixture &&
      !step.needs.some((need) => need.step === other.id),
  );
  return missing.length === 0
    ? step.needs
    : [...step.needs, ...missing.map((rest) => ({ step: rest.id }))];
}

/** The step of that id; the engine only ever asks for steps of its own plan. */
export function stepOf(plan: Plan, id: string): Step {
  const step = indexOf(plan).steps.get(id);
  if (!step)
    throw new RangeError(`step is "${id}"; allowed: an id of the plan. Check the journal.`);
  return step;
}

export function needsOf(plan: Plan, id: string): readonly Need[] {
  return indexOf(plan).needs.get(id) ?? [];
}

export function dependentsOf(plan: Plan, id: string): readonly Step[] {
  return indexOf(plan).dependents.get(id) ?? [];
}

export function stageOf(step: Step, stage: number): Stage | undefined {
  return step.stages[stage];
}

/** Number of the stage of that id, or -1. */
export function stageNumber(step: Step, stageId: string): number {
  return step.stages.findIndex((stage) => stage.id === stageId);
}

/**
 * Where a restart of stage `from` leads: back over every stage in an unbroken
 * row that must itself begin again. A glow that broke off goes back to its
 * warm-up; a stage that only asks begins again alone.
 */
export function restartStage(step: Step, from: number): number {
  let stage = from;
  while (
    stage > 0 &&
    step.stages[stage]?.resumption === 'restart' &&
    step.stages[stage - 1]?.resumption === 'restart'
  ) {
    stage -= 1;
  }
  return stage;
}

/** Number of the cold-water stage of a pour: the one called so, or the last. */
export function coldStage(step: Step): number {
  const named = stageNumber(step, 'cold');
  return named === -1 ? step.stages.length - 1 : named;
}

/** Boiling water was poured and its cold follow-up is not confirmed yet (I-18). */
export function owesCold(step: Step, stage: number): boolean {
  return step.kind === 'pour' && stage >= 1 && stage <= coldStage(step);
}

/** Stopping this stage needs a person's word that it was made safe. */
export function needsMakeSafe(step: Step, stage: number): boolean {
  return (step.stages[stage]?.hazards.length ?? 0) > 0 || owesCold(step, stage);
}
