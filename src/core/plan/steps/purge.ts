import type { Fixture } from '../../kitchen/index.ts';
import { choiceOf, type PlanContext } from '../context/plan-context.ts';
import { needsRest } from '../context/purging.ts';
import type { StepDraft } from '../context/step-draft.ts';
import { ovenId } from '../context/step-ids.ts';
import { mapBand } from '../../units/index.ts';
import {
  isPoured,
  calibratedPour,
  estimatePour,
  pourPlaceOf,
  type PourEstimate,
} from '../estimates/index.ts';
import type { PlannedPour } from '../model/index.ts';
import { plannedPour } from '../pours/index.ts';
import { byHandStep, steamStep } from './by-hand.ts';
import { glowSteps } from './glow.ts';
import { ovenSteps } from './oven.ts';
import { KettleQueue } from './kettle-queue.ts';
import { partSteps } from './parts.ts';
import { pourSteps } from './pour.ts';

/** What one fixture's pour takes, as planned. */
export type PourTotal = PourEstimate & { readonly planned: number; readonly told: PlannedPour };

export type Purge = {
  readonly drafts: readonly StepDraft[];
  readonly pours: readonly PourTotal[];
};

/** Run-off goes down into the sink: tops first, then tables, the sinks last. */
const POUR_ORDER: readonly Fixture['kind'][] = ['counter', 'table', 'sink'];

function pourRank({ kind }: Fixture): number {
  const at = POUR_ORDER.indexOf(kind);
  return at === -1 ? POUR_ORDER.length : at;
}

/** All pours in their order, each fixture's after the one before it in the timetable. */
function pourAll(context: PlanContext, fixtures: readonly Fixture[]): Purge {
  const queue = new KettleQueue(context);
  const drafts: StepDraft[] = [];
  const pours: PourTotal[] = [];
  const { filledL, calibration } = context;
  const place = pourPlaceOf(context.kitchen);
  let before: string | undefined;
  for (const fixture of fixtures) {
    if (!isPoured(fixture)) continue;
    const need = calibratedPour(estimatePour(fixture, filledL, place), filledL, calibration);
    const poured = pourSteps(context, fixture, need, queue);
    const follows = before === undefined ? [] : [before];
    // One fixture after the other: neither towel nor first boil may overtake the last pour of the one above.
    drafts.push(
      ...poured.drafts.map((one, at) =>
        at <= 1 ? { ...one, follows: [...one.follows, ...follows] } : one,
      ),
    );
    const times = choiceOf(context, fixture.id).method.times ?? 1;
    const planned = poured.kettles;
    const told = plannedPour({
      kitchen: context.kitchen,
      fixture,
      need,
      times,
      planned,
      filledL,
      place,
      calibration,
    });
    pours.push({
      ...need,
      litres: mapBand(need.litres, (litres) => litres * times),
      kettles: mapBand(need.kettles, (kettles) => kettles * times),
      planned,
      told,
    });
    before = poured.drafts.at(-1)?.step.id;
  }
  return { drafts, pours };
}

/** An oven under a hob is cleaned out before the hob glows over it. */
function afterOven(
  context: PlanContext,
  cooktop: string,
  drafts: readonly StepDraft[],
): readonly StepDraft[] {
  const below = context.kitchen.fixtures.filter(
    (one) =>
      one.kind === 'oven' &&
      one.sharesRangeWith === cooktop &&
      choiceOf(context, one.id).method.method === 'self-clean',
  );
  const follows = below.map(({ id }) => ovenId(id));
  return drafts.map((one) =>
    one.step.phase === 'purge' ? { ...one, follows: [...one.follows, ...follows] } : one,
  );
}

function heatOf(context: PlanContext, fixture: Fixture): readonly StepDraft[] {
  const { method } = choiceOf(context, fixture.id).method;
  if (fixture.kind === 'cooktop') {
    const heated = glowSteps(context, fixture);
    if (heated.length > 0) return afterOven(context, fixture.id, heated);
  }
  if (!needsRest(method)) return [];
  if (method === 'pour' && isPoured(fixture)) return [];
  if (fixture.kind === 'oven' && ['self-clean', 'light-heat', 'glow'].includes(method))
    return ovenSteps(context, fixture);
  return [method === 'steam' ? steamStep(context, fixture) : byHandStep(context, fixture)];
}

/** The purge of every fixture that has one. */
export function purgeSteps(context: PlanContext): Purge {
  const heated = context.kitchen.fixtures.flatMap((fixture) => [
    ...heatOf(context, fixture),
    ...partSteps(context, fixture),
  ]);
  const poured = context.kitchen.fixtures
    .filter((one) => choiceOf(context, one.id).method.method === 'pour' && isPoured(one))
    .toSorted((a, b) => pourRank(a) - pourRank(b));
  const { drafts, pours } = pourAll(context, poured);
  return { drafts: [...heated, ...drafts], pours };
}
