import type { Kitchen } from '../kitchen/index.ts';
import { cautionTexts, FAULTS, gatesOf, planCautions, withCautions } from './cautions/index.ts';
import type { Draft, Site } from './draft.ts';
import { noticesOf } from './notices.ts';
import { purgeSteps } from './purge.ts';
import { resourcesOf } from './resources.ts';
import { shoppingOf } from './shopping.ts';
import { siteOf } from './site.ts';
import { cleanSteps, needsRest, restStep } from './steps/clean.ts';
import { coverSteps, markStep } from './steps/finish.ts';
import { kettleSteps } from './steps/kettles.ts';
import { prepareSteps } from './steps/prepare.ts';
import { timetableOf, type TimetableOptions } from './timetable.ts';
import { totalsOf } from './totals.ts';
import type { Plan } from './types.ts';

export type PlanOptions = TimetableOptions;

function restSteps(site: Site): readonly Draft[] {
  return site.kitchen.fixtures.flatMap((fixture) => {
    const method = site.choices.get(fixture.id)?.method.method;
    return method !== undefined && needsRest(method)
      ? [restStep(site, fixture.id, fixture.name, fixture)]
      : [];
  });
}

/** Every step of the job, in the order of its phases. */
function allDrafts(site: Site) {
  const purge = purgeSteps(site);
  const kettles =
    purge.pours.length > 0 ? site.kettles.flatMap((kettle) => kettleSteps(site, kettle)) : [];
  const work = [
    ...prepareSteps(site),
    ...cleanSteps(site),
    ...restSteps(site),
    ...kettles,
    ...purge.drafts,
  ];
  const covered = site.kitchen.fixtures.flatMap((fixture) => coverSteps(site, fixture, work));
  const drafts = [...work, ...covered];
  return { drafts: [...drafts, markStep(site, drafts)], pours: purge.pours };
}

/**
 * The plan of a kitchen: methods by the household's custom, steps with their
 * clocks and cautions, a timetable, and what to ask, buy and know. Inert data,
 * the same for the same kitchen.
 * @throws OutOfRangeError when a model refuses a number of the kitchen
 */
export function buildPlan(kitchen: Kitchen, options: PlanOptions = {}): Plan {
  const site = siteOf(kitchen);
  const { drafts, pours } = allDrafts(site);
  const steps = drafts.map((draft) => withCautions(draft, site));
  const resources = resourcesOf(site, steps);
  const timed = timetableOf(drafts, resources, options);
  const choices = [...site.choices.values()];
  const totals = totalsOf(site, drafts, pours);
  return {
    format: 'glowpour-plan',
    version: 1,
    kitchen,
    purpose: kitchen.household.purpose,
    custom: kitchen.household.custom,
    boilingC: site.boilingC,
    methods: choices.map(({ method }) => method),
    steps,
    resources,
    gates: gatesOf(steps),
    cautions: cautionTexts(steps, planCautions(drafts, site)),
    faults: FAULTS,
    questions: choices.flatMap(({ questions }) => questions),
    shopping: shoppingOf(site, drafts, totals),
    totals,
    timetable: timed.timetable,
    notices: noticesOf(site, drafts, timed, options.closed !== undefined),
  };
}
