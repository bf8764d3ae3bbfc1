import type { Kitchen } from '../../kitchen/index.ts';
import { cautionTexts, FAULTS, gatesOf, planCautions, withCautions } from '../cautions/index.ts';
import { calendarOf } from '../timetable/days.ts';
import { recheckNotice, recheckContext, type Recheck } from '../context/recheck-context.ts';
import type { PlanContext } from '../context/plan-context.ts';
import { calibrationNotices, withCalibration } from '../steps/calibration-notes.ts';
import { noticesOf } from './notices.ts';
import { withOpenQuestions } from '../steps/open-questions.ts';
import { purgeSteps } from '../steps/purge.ts';
import { resourcesOf } from '../timetable/resources.ts';
import { shoppingOf } from './shopping.ts';
import { planContextOf } from '../context/plan-context.ts';
import { cleanSteps, restSteps } from '../steps/clean.ts';
import { coverSteps, markStep } from '../steps/finish.ts';
import { kettleSteps } from '../steps/kettles.ts';
import { prepareSteps } from '../steps/prepare.ts';
import { timetableOf, type TimetableOptions } from '../timetable/timetable.ts';
import { totalsOf } from './totals.ts';
import type { Calibration, Plan } from '../model/index.ts';

export type PlanOptions = TimetableOptions & {
  /**
   * When the work begins, ms since 1970-01-01 UTC. With the kitchen's place the plan keeps nights,
   * Sabbaths, festivals and the hour of leaven; hours that are told in `closed` go before.
   */
  readonly startWallMs?: number;
  /** What earlier runs of this kitchen taught. */
  readonly learned?: Calibration;
  /** Only what this touches is in the kitchen; see planForDoubt. */
  readonly doubt?: Recheck;
};

/** Every step of the job, in the order of its phases. */
function allDrafts(site: PlanContext) {
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
  const whole = planContextOf(kitchen, options.learned);
  const site = options.doubt ? recheckContext(whole, options.doubt) : whole;
  const { drafts, pours } = allDrafts(site);
  const steps = drafts.map((draft) =>
    withOpenQuestions(site, withCalibration(site, withCautions(draft, site))),
  );
  const resources = resourcesOf(site, steps);
  const { place } = kitchen;
  const calendar =
    place && options.startWallMs !== undefined
      ? calendarOf(kitchen, place, options.startWallMs)
      : undefined;
  const timed = timetableOf(drafts, resources, { ...calendar, ...options });
  const choices = [...site.choices.values()];
  const totals = totalsOf(site, drafts, pours);
  return {
    format: 'glowpour-plan',
    version: 2,
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
    ...(calendar && { days: calendar.days }),
    notices: [
      ...(options.doubt ? [recheckNotice(options.doubt)] : []),
      ...noticesOf(site, drafts, timed, { calendar, told: options }),
      ...calibrationNotices(site),
    ],
    ...(site.calibration && { calibration: site.calibration }),
  };
}
