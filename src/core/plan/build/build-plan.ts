import { grouped, pourOrderQuestions } from '../../custom/index.ts';
import type { Kitchen } from '../../kitchen/index.ts';
import { cautionTexts, FAULTS, gatesOf, planCautions, withCautions } from '../cautions/index.ts';
import { calendarOf } from '../timetable/days.ts';
import { recheckNotice, recheckContext, type Recheck } from '../context/recheck-context.ts';
import type { PlanContext } from '../context/plan-context.ts';
import type { StepDraft } from '../context/step-draft.ts';
import { calibrationNotices, withCalibration } from './calibration-notes.ts';
import { noticesOf } from './notices.ts';
import { withOpenQuestions } from './open-questions.ts';
import { purgeSteps } from '../steps/purge.ts';
import { resourcesOf } from '../timetable/resources.ts';
import { shoppingOf } from './shopping.ts';
import { planContextOf } from '../context/plan-context.ts';
import { cleanSteps, restSteps } from '../steps/clean.ts';
import { withRestLeft } from '../context/rest-left.ts';
import { coverSteps, markStep } from '../steps/finish.ts';
import { newPartsSteps } from '../steps/parts.ts';
import { kettleSteps } from '../steps/kettles.ts';
import { prepareSteps } from '../steps/prepare.ts';
import { switchOnSteps } from '../chilled/chilled-steps.ts';
import { clocksFirst } from '../timetable/cleaning-order.ts';
import { timetableOf, type TimetableOptions } from '../timetable/timetable.ts';
import { totalsOf } from './totals.ts';
import type { Calibration, Plan } from '../model/index.ts';
import { utensilSteps } from '../utensils/utensil-steps.ts';
import { withPlainNames } from './plain-names.ts';

export type PlanOptions = TimetableOptions & {
  /**
   * When the work begins, ms since 1970-01-01 UTC. With the kitchen's place the plan keeps nights,
   * Sabbaths, festivals and the hour of leaven; hours that are told in `closed` go before.
   */
  readonly startWallMs?: number;
  /** What earlier runs of this kitchen taught. */
  readonly calibration?: Calibration;
  /** Only what this touches is in the kitchen; see planForRecheck. */
  readonly recheck?: Recheck;
};

/** Every step of the job, in the order of its phases. */
function allDrafts(context: PlanContext) {
  const purge = purgeSteps(context);
  const kettles =
    purge.pours.length > 0 ? context.kettles.flatMap((kettle) => kettleSteps(context, kettle)) : [];
  const work = clocksFirst([
    ...prepareSteps(context),
    ...cleanSteps(context),
    ...restSteps(context),
    ...kettles,
    ...purge.drafts,
    ...utensilSteps(context, purge.drafts),
  ]);
  const covered = context.kitchen.fixtures.flatMap((fixture) => coverSteps(context, fixture, work));
  const parts = context.kitchen.fixtures.flatMap((fixture) =>
    newPartsSteps(context, fixture, work),
  );
  const finished = [...work, ...covered, ...parts];
  const drafts = [...finished, ...switchOnSteps(context, finished)];
  return { drafts: [...drafts, markStep(context, drafts)], pours: purge.pours };
}

function startOf({ startWallMs }: PlanOptions): { readonly startWallMs?: number } {
  return startWallMs === undefined ? {} : { startWallMs };
}

/**
 * What orders the steps of a plan in its timetable and is not kept in it, worked out anew.
 * @throws OutOfRangeError when a model refuses a number of the kitchen
 */
export function draftsOf({ kitchen, calibration, days }: Plan): readonly StepDraft[] {
  return allDrafts(planContextOf(kitchen, calibration, days ?? {})).drafts;
}

/**
 * The plan of a kitchen: methods by the household's custom, steps with their
 * timers and cautions, a timetable, and what to ask, buy and know. Inert data,
 * the same for the same kitchen.
 * @throws OutOfRangeError when a model refuses a number of the kitchen
 */
export function buildPlan(written: Kitchen, options: PlanOptions = {}): Plan {
  const kitchen = withPlainNames(written);
  const whole = planContextOf(kitchen, options.calibration, startOf(options));
  const context = options.recheck ? recheckContext(whole, options.recheck) : whole;
  const { drafts, pours } = allDrafts(context);
  const steps = drafts.map((draft) =>
    withOpenQuestions(context, withCalibration(context, withCautions(draft, context))),
  );
  const resources = resourcesOf(context, steps);
  const { place } = kitchen;
  const calendar =
    place && options.startWallMs !== undefined
      ? calendarOf(kitchen, place, options.startWallMs)
      : undefined;
  const timed = timetableOf(drafts, resources, { ...calendar, ...options });
  const choices = [...context.choices.values()];
  const totals = totalsOf(context, drafts, pours);
  return {
    format: 'glowpour-plan',
    version: 2,
    kitchen,
    purpose: kitchen.household.purpose,
    custom: kitchen.household.custom,
    boilingC: context.boilingC,
    methods: choices.map(({ method }) => method),
    steps: steps.map((step, at) => withRestLeft(step, drafts[at] ?? {}, timed.timetable.startS)),
    resources,
    gates: gatesOf(steps, kitchen),
    cautions: cautionTexts(steps, kitchen, planCautions(drafts, context)),
    faults: FAULTS,
    questions: [...grouped(choices), ...(options.recheck ? [] : pourOrderQuestions(kitchen))],
    shopping: shoppingOf(context, drafts, totals),
    totals,
    pours: pours.map(({ told }) => told),
    timetable: timed.timetable,
    ...(calendar && { days: calendar.days }),
    notices: [
      ...(options.recheck ? [recheckNotice(options.recheck)] : []),
      ...noticesOf(context, drafts, timed, { calendar, told: options }, pours),
      ...calibrationNotices(context),
    ],
    ...(context.calibration && { calibration: context.calibration }),
  };
}
