import { message, type Message } from '../../messages/index.ts';
import { MS_PER_SECOND, SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/index.ts';
import type { Calendar } from './days.ts';
import { withRestLeft } from '../context/rest-left.ts';
import type { PlanContext } from '../context/plan-context.ts';
import type { StepDraft } from '../context/step-draft.ts';
import { criticalChain, longestLinks } from './critical-chain.ts';
import { usualNights, type Timed, type TimetableOptions } from './timetable.ts';

/** A self-clean that fails leaves no oven for this long: locks and heat cut-outs take days to mend. */
const SPARE_S = SECONDS_PER_DAY;

/** The calendar of the plan, where a start and a place were told, and what the caller set. */
export type Known = {
  readonly calendar: Calendar | undefined;
  readonly told: TimetableOptions & { readonly startWallMs?: number };
};

/** When what is late ends, and the last day of rest that it waits out on the way; nothing without a calendar. */
function endOf(lateS: number, { calendar, told }: Known, zone: string | undefined) {
  const deadline = told.purgeByS === undefined ? calendar?.days.deadline : undefined;
  if (!calendar || !deadline || zone === undefined) return {};
  const endsWallMs = deadline.atWallMs + lateS * MS_PER_SECOND;
  const waitedOut = calendar.days.restDays.filter(
    ({ fromWallMs, toWallMs }) => fromWallMs >= deadline.atWallMs && toWallMs <= endsWallMs,
  );
  const after = waitedOut.at(-1)?.name;
  return { endsWallMs, zone, ...(after && { after }) };
}

/** What decides that end, the longest first: often a rest, which no helper shortens. */
function decidedBy(
  drafts: readonly StepDraft[],
  { timetable }: Timed,
  { calendar, told }: Known,
  isPurge: boolean,
): readonly Message[] {
  const steps = drafts.map((draft) => withRestLeft(draft.step, draft, timetable.startS));
  const closed = told.closed ?? calendar?.closed ?? usualNights();
  const chain = criticalChain(
    steps,
    timetable.startS,
    closed,
    ({ phase }) => !isPurge || phase === 'purge',
  );
  return longestLinks(chain, steps);
}

function lateNotices(
  drafts: readonly StepDraft[],
  timed: Timed,
  known: Known,
  zone: string | undefined,
): readonly Message[] {
  const { lateS, certain } = timed;
  if (lateS <= 0) return [];
  const lateH = lateS / SECONDS_PER_HOUR;
  const isPurge = known.told.purgeByS !== undefined || known.calendar?.purgeByS !== undefined;
  const late = {
    lateH,
    certain,
    decidedBy: decidedBy(drafts, timed, known, isPurge),
    ...endOf(lateS, known, zone),
  };
  const deadline = known.told.purgeByS === undefined && known.calendar?.days.deadline;
  if (deadline && deadline.hard) {
    const spareS = (deadline.hard.atWallMs - deadline.atWallMs) / MS_PER_SECOND;
    const key = lateS > spareS ? 'plan.notice.after-candles' : 'plan.notice.after-fourth-hour';
    return [message(key, late)];
  }
  return [message(isPurge ? 'plan.notice.purge-late' : 'plan.notice.plan-late', late)];
}

/** What is missing for the calendar, and where to tell it. */
function unknownNotices(context: PlanContext, { calendar, told }: Known): readonly Message[] {
  const { household, place } = context.kitchen;
  if (calendar || told.closed || !household.keepsRestDays) return [];
  return [
    message('plan.notice.days-unknown', {
      place: place !== undefined,
      start: told.startWallMs !== undefined,
    }),
  ];
}

/** Steps that clean an oven by itself on the last day before the deadline. */
function lastDayNotices(
  drafts: readonly StepDraft[],
  { timetable }: Timed,
  purgeByS: number | undefined,
): readonly Message[] {
  if (purgeByS === undefined) return [];
  return drafts.flatMap(({ step }) => {
    const endS = (timetable.startS[step.id] ?? 0) + step.durationS.typical;
    if (step.kind !== 'self-clean' || endS <= purgeByS - SPARE_S || endS > purgeByS) return [];
    return [message('plan.notice.last-day', { step: step.title })];
  });
}

/** What the days ahead ask of the household. */
export function dayNotices(
  context: PlanContext,
  drafts: readonly StepDraft[],
  timed: Timed,
  known: Known,
): readonly Message[] {
  const purgeByS = known.told.purgeByS ?? known.calendar?.purgeByS;
  return [
    ...lateNotices(drafts, timed, known, context.kitchen.place?.zone),
    ...(known.calendar?.notices ?? []),
    ...lastDayNotices(drafts, timed, purgeByS),
    ...unknownNotices(context, known),
  ];
}
