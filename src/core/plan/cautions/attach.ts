import { citation } from '../../custom/index.ts';
import type { Fixture } from '../../kitchen/index.ts';
import type { PlanContext } from '../context/plan-context.ts';
import type { About, StepDraft } from '../context/step-draft.ts';
import type { CautionText, Gate, Step } from '../model/index.ts';
import { SECONDS_PER_MINUTE } from '../../units/index.ts';
import { cautionMessage } from './messages.ts';
import { CAUTIONS, type CautionKind, type CautionRow, type Trigger } from './table.ts';

function within<T>(list: readonly T[] | undefined, value: T | undefined): boolean {
  return list === undefined || (value !== undefined && list.includes(value));
}

/** Told to stand under a counter: nothing of it is reached from a ladder. */
function isLow(fixture: Fixture | undefined): boolean {
  return fixture !== undefined && 'place' in fixture && fixture.place === 'under-counter';
}

/** Does this trigger hold for that step? */
function triggers(on: Trigger, step: Step, about: About, context: PlanContext): boolean {
  const { fixture, burner, vessel, fuel, rests } = about;
  const { household } = context.kitchen;
  return (
    on.steps.includes(step.kind) &&
    within(on.fixtures, fixture?.kind) &&
    within(on.materials, fixture && 'material' in fixture ? fixture.material : undefined) &&
    within(on.surfaces, fixture?.kind === 'cooktop' ? fixture.surface : undefined) &&
    within(on.burners, burner?.type) &&
    within(on.vessels, vessel) &&
    within(on.customs, household.custom) &&
    (on.fuel === undefined || on.fuel === fuel) &&
    (on.rests === undefined || on.rests === (rests ?? false)) &&
    (on.low === undefined || on.low === isLow(fixture)) &&
    (on.hotRoom === undefined || on.hotRoom === context.room.hot) &&
    (on.mostPeople === undefined || household.people <= on.mostPeople)
  );
}

/** Ids of the cautions of one kind that a step must carry, in the order of the table. */
export function cautionsFor(
  kind: CautionKind,
  step: Step,
  about: About,
  context: PlanContext,
): string[] {
  return CAUTIONS.filter(
    (row) => row.kinds.includes(kind) && row.on.some((on) => triggers(on, step, about, context)),
  ).map(({ id }) => id);
}

/** The step with its gates, its standing cautions and those that guard its end. */
export function withCautions({ step, about }: StepDraft, context: PlanContext): Step {
  const of = (kind: CautionKind): string[] => cautionsFor(kind, step, about, context);
  return {
    ...step,
    gates: [...step.gates, ...of('gate')],
    standing: [...step.standing, ...of('standing'), ...of('timer')],
    after: [...step.after, ...of('after')],
  };
}

function gateOf(row: CautionRow): Gate {
  return {
    id: row.id,
    kind: row.gateKind ?? 'caution',
    signal: row.signal,
    ask: cautionMessage(row.id, 'ask'),
    say: cautionMessage(row.id, 'say'),
    scope: row.scope ?? 'step',
    ...(row.lapsesMin !== undefined && { lapsesS: row.lapsesMin * SECONDS_PER_MINUTE }),
    trippedBy: row.trippedBy ?? [],
    settleS: (row.settleMin ?? 0) * SECONDS_PER_MINUTE,
    makeSafe: cautionMessage(row.id, 'make-safe'),
  };
}

/** The gates that any of these steps names. */
export function gatesOf(steps: readonly Step[]): readonly Gate[] {
  const named = new Set(steps.flatMap(({ gates }) => gates));
  return CAUTIONS.filter(({ id }) => named.has(id)).map(gateOf);
}

function textOf({ id, signal, source }: CautionRow): CautionText {
  return {
    id,
    signal,
    hazard: cautionMessage(id, 'hazard'),
    say: cautionMessage(id, 'say'),
    source: citation(source),
  };
}

/** Cautions of the whole plan that belong to no single step. */
export function planCautions(
  drafts: readonly StepDraft[],
  context: PlanContext,
): readonly CautionText[] {
  return CAUTIONS.filter(
    (row) =>
      row.kinds.includes('plan') &&
      drafts.some(({ step, about }) => row.on.some((on) => triggers(on, step, about, context))),
  ).map(textOf);
}

/** The words of every caution that these steps or the plan itself name. */
export function cautionTexts(
  steps: readonly Step[],
  plan: readonly CautionText[],
): readonly CautionText[] {
  const named = new Set([
    ...steps.flatMap(({ gates, standing, after }) => [...gates, ...standing, ...after]),
    ...plan.map(({ id }) => id),
  ]);
  return CAUTIONS.filter(({ id }) => named.has(id)).map(textOf);
}
