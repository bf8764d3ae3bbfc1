import { wallTime } from '../../calendar/index.ts';
import { customTable } from '../../custom/index.ts';
import { isSoak, type Plan, type Step } from '../model/index.ts';
import { problem, type PlanProblem } from './problem.ts';

const MS_S = 1000;
const MS_H = 3_600_000;
const MS_DAY = 24 * MS_H;
/** Times of a timetable are whole milliseconds. */
const TOUCH_S = 0.01;
/** No rest is planned from a hot use longer ago than this, days. */
const MOST_DAYS = 14;

function two(value: number): string {
  return String(value).padStart(2, '0');
}

/** "2026-03-29T20:00" on the wall of a zone; such texts are ordered as their moments are. */
function onTheWall(wallMs: number, zone: string): string {
  const { year, month, day, hour, minute } = wallTime(wallMs, zone);
  return `${year}-${two(month)}-${two(day)}T${two(hour)}:${two(minute)}`;
}

/** What the kitchen tells of the last hot use of what a step rests: of itself, or of everything. */
function toldOf({ kitchen }: Plan, { fixture, work }: Step): string | undefined {
  const thing =
    work.on === 'vessel'
      ? kitchen.vessels.find(({ id }) => id === work.vessel.id)
      : kitchen.fixtures.find(({ id }) => id === fixture);
  return thing?.lastHotAt ?? kitchen.household.lastHotAt;
}

/** Why a moment is none from which this rest may be planned; undefined: it is one. */
function unfounded(plan: Plan, step: Step, lastHotWallMs: number): string | undefined {
  const told = toldOf(plan, step);
  const zone = plan.kitchen.place?.zone;
  if (told === undefined) return 'the kitchen tells no last hot use of it';
  if (!plan.days || zone === undefined) return 'the plan knows no start or no zone';
  const { startWallMs } = plan.days;
  if (lastHotWallMs > startWallMs) return 'that is after the work begins';
  if (lastHotWallMs < startWallMs - MOST_DAYS * MS_DAY)
    return `that is more than ${MOST_DAYS} days before the work begins`;
  const written = onTheWall(lastHotWallMs, zone);
  // An hour that comes twice counts from its second time.
  const again = onTheWall(lastHotWallMs + MS_H, zone);
  if (written < told || again === told) return `the kitchen tells ${told}, which is later`;
  return undefined;
}

/** I-17 by the timetable: from the last hot use, or from its cleaning, to its end the custom's hours pass. */
function* lengths(plan: Plan): Generator<PlanProblem> {
  const neededS = (customTable(plan.kitchen.household.custom).restHours * MS_H) / MS_S;
  for (const step of plan.steps) {
    if (step.kind !== 'rest') continue;
    const { id, lastHotWallMs } = step;
    const startS = plan.timetable.startS[id] ?? 0;
    const why = lastHotWallMs === undefined ? undefined : unfounded(plan, step, lastHotWallMs);
    if (why !== undefined)
      yield problem('rest', [id], `${id} is planned from ${lastHotWallMs} ms: ${why}`);
    const sinceS =
      lastHotWallMs === undefined || why !== undefined || !plan.days
        ? startS
        : Math.min(startS, (lastHotWallMs - plan.days.startWallMs) / MS_S);
    const restedS = startS + step.durationS.typical - sinceS;
    if (restedS < neededS - TOUCH_S)
      yield problem(
        'rest',
        [id],
        `${id} is over after ${restedS} s; the custom asks for ${neededS} s`,
      );
  }
}

/** Whoever cleans what rests already is told that hot water would begin its rest anew. */
function* coldWater(plan: Plan): Generator<PlanProblem> {
  for (const rest of plan.steps) {
    if (rest.kind !== 'rest' || rest.lastHotWallMs === undefined) continue;
    const cleaned = plan.steps.filter(
      ({ kind, id }) => kind === 'clean' && rest.needs.some(({ step }) => step === id),
    );
    for (const { id, stages } of cleaned) {
      const told = stages.some(({ detail }) =>
        detail.some(({ key }) => key === 'steps.clean.cold-only'),
      );
      if (!told) yield problem('rest', [id], `${id} does not say that only cold water is used`);
    }
  }
}

/** Clocks first: nothing that owes no rest and no soaking is begun to be cleaned before everything that does. */
function* clocksFirst(plan: Plan): Generator<PlanProblem> {
  const { startS } = plan.timetable;
  const owing = new Set(
    plan.steps
      .filter((step) => (step.kind === 'rest' && step.durationS.typical > 0) || isSoak(step))
      .flatMap(({ needs }) => needs.map(({ step }) => step)),
  );
  const cleanings = plan.steps.filter(({ kind }) => kind === 'clean');
  const last = cleanings
    .filter(({ id }) => owing.has(id))
    .toSorted((a, b) => (startS[b.id] ?? 0) - (startS[a.id] ?? 0))[0];
  if (!last) return;
  for (const { id } of cleanings) {
    if (owing.has(id) || (startS[id] ?? 0) > (startS[last.id] ?? 0) - TOUCH_S) continue;
    yield problem(
      'cleaning-order',
      [id, last.id],
      `${id} needs no rest and is begun before ${last.id}`,
    );
  }
}

/** What rests that count from a last hot use, and the order of cleaning, must keep. */
export function* restProblems(plan: Plan): Generator<PlanProblem> {
  yield* lengths(plan);
  yield* coldWater(plan);
  yield* clocksFirst(plan);
}
