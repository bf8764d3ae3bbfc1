import { citation } from '../../custom/index.ts';
import type { Fixture, Kitchen } from '../../kitchen/index.ts';
import type { PlanContext } from '../context/plan-context.ts';
import type { About, StepDraft } from '../context/step-draft.ts';
import type { CautionText, Gate, Plan, Step } from '../model/index.ts';
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

/** In one appliance with a cooktop or an oven: what can be pulled out, and tips. */
function isInRange(fixture: Fixture | undefined, { fixtures }: Kitchen): boolean {
  if (fixture?.kind === 'oven') return fixture.sharesRangeWith !== undefined;
  return (
    fixture !== undefined &&
    fixtures.some((one) => one.kind === 'oven' && one.sharesRangeWith === fixture.id)
  );
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
    (on.inRange === undefined || on.inRange === isInRange(fixture, context.kitchen)) &&
    within(on.methods, step.work.on === 'fixture' ? step.work.method : undefined) &&
    (on.utensils === undefined || on.utensils === (step.work.on === 'utensils')) &&
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

/**
 * Ids of the cautions that a plan need not have: it was made before there were
 * any of their edition. A gate is never among them.
 */
export function laterCautions({ cautions }: Pick<Plan, 'cautions'>): ReadonlySet<string> {
  const named = new Set(cautions.map(({ id }) => id));
  const later = CAUTIONS.filter(
    ({ edition, kinds }) => edition !== undefined && !kinds.includes('gate'),
  ).map(({ id }) => id);
  return new Set(later.some((id) => named.has(id)) ? [] : later);
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

/** An answer holds no longer than this without a hand on the work, where its row says nothing else, min. */
const LAPSES_MIN = 120;

function gateOf(row: CautionRow, kitchen: Kitchen): Gate {
  return {
    id: row.id,
    kind: row.gateKind ?? 'caution',
    signal: row.signal,
    ask: cautionMessage(row.id, 'ask', kitchen),
    say: cautionMessage(row.id, 'say', kitchen),
    scope: row.scope ?? 'step',
    lapsesS: (row.lapsesMin ?? LAPSES_MIN) * SECONDS_PER_MINUTE,
    trippedBy: row.trippedBy ?? [],
    settleS: (row.settleMin ?? 0) * SECONDS_PER_MINUTE,
    makeSafe: cautionMessage(row.id, 'make-safe', kitchen),
  };
}

/** The gates that any of these steps names. */
export function gatesOf(steps: readonly Step[], kitchen: Kitchen): readonly Gate[] {
  const named = new Set(steps.flatMap(({ gates }) => gates));
  return CAUTIONS.filter(({ id }) => named.has(id)).map((row) => gateOf(row, kitchen));
}

function textOf({ id, signal, source }: CautionRow, kitchen: Kitchen): CautionText {
  return {
    id,
    signal,
    hazard: cautionMessage(id, 'hazard', kitchen),
    say: cautionMessage(id, 'say', kitchen),
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
  ).map((row) => textOf(row, context.kitchen));
}

/** The words of every caution that these steps or the plan itself name. */
export function cautionTexts(
  steps: readonly Step[],
  kitchen: Kitchen,
  plan: readonly CautionText[],
): readonly CautionText[] {
  const named = new Set([
    ...steps.flatMap(({ gates, standing, after }) => [...gates, ...standing, ...after]),
    ...plan.map(({ id }) => id),
  ]);
  return CAUTIONS.filter(({ id }) => named.has(id)).map((row) => textOf(row, kitchen));
}
