import type { Fixture } from '../../kitchen/index.ts';
import type { StepDraft, PlanContext } from '../context/step-draft.ts';
import { isPoured, calibratedPour, estimatePour, type PourEstimate } from '../estimates/index.ts';
import { byHandStep, steamStep } from './by-hand.ts';
import { needsRest } from './clean.ts';
import { glowId, glowSteps } from './glow.ts';
import { ovenId, ovenSteps } from './oven.ts';
import { KettleTurn, pourSteps } from './pour.ts';

/** What one fixture's pour takes, as planned. */
export type PourTotal = PourEstimate & { readonly fixture: string; readonly planned: number };

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
function pourAll(site: PlanContext, fixtures: readonly Fixture[]): Purge {
  const turns = new KettleTurn(site);
  const drafts: StepDraft[] = [];
  const pours: PourTotal[] = [];
  let before: string | undefined;
  for (const fixture of fixtures) {
    if (!isPoured(fixture)) continue;
    const need = calibratedPour(
      estimatePour(fixture, site.filledL),
      site.filledL,
      site.calibration,
    );
    const poured = pourSteps(site, fixture, need, turns);
    const follows = before === undefined ? [] : [before];
    // One fixture after the other: the first boil may not overtake the last pour of the one above.
    drafts.push(
      ...poured.drafts.map((one, at) =>
        at === 0 ? { ...one, follows: [...one.follows, ...follows] } : one,
      ),
    );
    pours.push({ ...need, fixture: fixture.id, planned: poured.kettles });
    before = poured.drafts.at(-1)?.step.id;
  }
  return { drafts, pours };
}

/** An oven under a hob is cleaned out before the hob glows over it. */
function afterOven(
  site: PlanContext,
  cooktop: string,
  drafts: readonly StepDraft[],
): readonly StepDraft[] {
  const below = site.kitchen.fixtures.filter(
    (one) =>
      one.kind === 'oven' &&
      one.sharesRangeWith === cooktop &&
      site.choices.get(one.id)?.method.method === 'self-clean',
  );
  const follows = below.map(({ id }) => ovenId(id));
  const first = new Set(
    site.kitchen.fixtures.flatMap((one) =>
      one.kind === 'cooktop' ? one.burners.map(({ id }) => glowId(id)) : [],
    ),
  );
  return drafts.map((one) =>
    first.has(one.step.id) ? { ...one, follows: [...one.follows, ...follows] } : one,
  );
}

function heatOf(site: PlanContext, fixture: Fixture): readonly StepDraft[] {
  const method = site.choices.get(fixture.id)?.method.method;
  if (method === undefined) return [];
  if (fixture.kind === 'cooktop') {
    const heated = glowSteps(site, fixture);
    if (heated.length > 0) return afterOven(site, fixture.id, heated);
  }
  if (!needsRest(method)) return [];
  if (method === 'pour' && isPoured(fixture)) return [];
  if (fixture.kind === 'oven' && ['self-clean', 'light-heat', 'glow'].includes(method))
    return ovenSteps(site, fixture);
  return [method === 'steam' ? steamStep(site, fixture) : byHandStep(site, fixture)];
}

/** The purge of every fixture that has one. */
export function purgeSteps(site: PlanContext): Purge {
  const heated = site.kitchen.fixtures.flatMap((fixture) => heatOf(site, fixture));
  const poured = site.kitchen.fixtures
    .filter((one) => site.choices.get(one.id)?.method.method === 'pour' && isPoured(one))
    .toSorted((a, b) => pourRank(a) - pourRank(b));
  const { drafts, pours } = pourAll(site, poured);
  return { drafts: [...heated, ...drafts], pours };
}
