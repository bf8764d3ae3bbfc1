import type { UtensilMethod } from '../../kitchen/index.ts';
import type { UtensilChoice } from '../../utensils/index.ts';
import { lastOf } from '../steps/finish.ts';
import { choiceOf, type PlanContext } from '../context/plan-context.ts';
import type { StepDraft } from '../context/step-draft.ts';
import type { PurgingPot, UtensilContext } from '../context/utensil-context.ts';
import type { UtensilItem } from '../model/index.ts';

/** What the builders of the steps of utensils look at. */
export type UtensilWork = {
  readonly context: PlanContext;
  readonly utensils: UtensilContext;
  readonly pot?: PurgingPot;
  /** Steps after which the sink may be used for what is purged. */
  readonly sinkReady: readonly string[];
};

/** Lines of one method, whole. */
export function itemsBy(
  { utensils }: Pick<UtensilWork, 'utensils'>,
  ...methods: readonly UtensilMethod[]
): readonly UtensilItem[] {
  return utensils.plan.choices.filter(({ method }) => methods.includes(method)).map(itemOf);
}

function itemOf({ utensil, name, count }: UtensilChoice): UtensilItem {
  return { utensil, name, count };
}

/** Pots that go under in no other: each is boiled over its own rim. */
export function ownRims({ utensils, pot }: Omit<UtensilWork, 'sinkReady'>): readonly UtensilItem[] {
  if (!pot) return [];
  const pots = new Set(
    utensils.plan.unfit.filter(({ boilsOver }) => boilsOver).map(({ utensil }) => utensil),
  );
  return utensils.plan.choices.filter(({ utensil }) => pots.has(utensil)).map(itemOf);
}

/** What no step of this kitchen purges, for want of a pot that takes it. */
export function withoutPot(context: PlanContext): readonly UtensilItem[] {
  const { utensils } = context;
  if (!utensils) return [];
  const { pot, plan } = utensils;
  const own = new Set(
    ownRims({ context, utensils, ...(pot && { pot }) }).map(({ utensil }) => utensil),
  );
  const left = new Set(plan.unfit.map(({ utensil }) => utensil));
  return plan.choices.filter(({ utensil }) => left.has(utensil) && !own.has(utensil)).map(itemOf);
}

/** The first sink that is poured: things that come out of boiling water are rinsed where that is done. */
function sinkReady(context: PlanContext, drafts: readonly StepDraft[]): readonly string[] {
  const sink = context.kitchen.fixtures.find(
    (one) => one.kind === 'sink' && choiceOf(context, one.id).method.method === 'pour',
  );
  return sink ? lastOf(sink, drafts) : [];
}

/** @param drafts of the purge of all fixtures */
export function workOf(
  context: PlanContext,
  utensils: UtensilContext,
  drafts: readonly StepDraft[],
): UtensilWork {
  const { pot } = utensils;
  return { context, utensils, ...(pot && { pot }), sinkReady: sinkReady(context, drafts) };
}
