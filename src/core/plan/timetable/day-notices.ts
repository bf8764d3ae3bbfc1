import { inEnglish } from '../../messages/temporary.ts';
import type { Calendar } from './days.ts';
import type { StepDraft, PlanContext } from '../context/step-draft.ts';
import type { Timed, TimetableOptions } from './timetable.ts';

const S_H = 3600;
/** A self-clean that fails leaves no oven for this long: locks and heat cut-outs take days to mend. */
const SPARE_S = 24 * S_H;

/** The calendar of the plan, where a start and a place were told, and what the caller set. */
export type Known = {
  readonly calendar: Calendar | undefined;
  readonly told: TimetableOptions & { readonly startWallMs?: number };
};

function lateNotices({ lateS, certain }: Timed, isPurge: boolean): readonly string[] {
  if (lateS <= 0) return [];
  const what = isPurge ? 'By this plan purging ends' : 'This plan ends';
  const by = `${what} ${(lateS / S_H).toFixed(1)} h after the deadline`;
  const none = certain ? ', and no other order of work would keep it' : '';
  return [
    `${by}${none}: ${isPurge ? 'begin earlier; ' : ''}a second kettle, a helper, or covering instead of pouring would shorten it.`,
  ];
}

/** What is missing for the calendar, and where to tell it. */
function unknownNotices(site: PlanContext, { calendar, told }: Known): readonly string[] {
  const { household, place } = site.kitchen;
  if (calendar || told.closed || !household.keepsRestDays) return [];
  const missing = [
    ...(place ? [] : ['where the kitchen is (latitude, longitude, time zone, Israel or not)']),
    ...(told.startWallMs === undefined ? ['when you begin'] : []),
  ].join(', and ');
  return [
    `Sabbaths and festivals are not in this timetable, which counts hours from the start: tell ${missing}, and it keeps them. Until then begin so that none of its work falls into one.`,
  ];
}

/** Steps that clean an oven by itself on the last day before the deadline. */
function lastDayNotices(
  drafts: readonly StepDraft[],
  { timetable }: Timed,
  purgeByS: number | undefined,
): readonly string[] {
  if (purgeByS === undefined) return [];
  return drafts.flatMap(({ step }) => {
    const endS = (timetable.startS[step.id] ?? 0) + step.durationS.typical;
    if (step.kind !== 'self-clean' || endS <= purgeByS - SPARE_S || endS > purgeByS) return [];
    return [
      `On the last day before the deadline, with no day to spare if the lock or the cut-out fails: ${inEnglish(step.title)} Begin the work earlier.`,
    ];
  });
}

/** What the days ahead ask of the household. */
export function dayNotices(
  site: PlanContext,
  drafts: readonly StepDraft[],
  timed: Timed,
  known: Known,
): readonly string[] {
  const purgeByS = known.told.purgeByS ?? known.calendar?.purgeByS;
  return [
    ...lateNotices(timed, purgeByS !== undefined),
    ...(known.calendar?.notices ?? []),
    ...lastDayNotices(drafts, timed, purgeByS),
    ...unknownNotices(site, known),
  ];
}
