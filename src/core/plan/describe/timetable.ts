import { message, untilTold, type Message } from '../../messages/index.ts';
import type { Plan, Step } from '../model/index.ts';
import {
  HOURS_PER_DAY,
  MINUTES_PER_HOUR,
  MS_PER_SECOND,
  SECONDS_PER_DAY,
  SECONDS_PER_MINUTE,
} from '../../units/index.ts';
import { line, type Line } from './line.ts';

const UTC = 'UTC';
/** Sums of binary fractions end a hair short of the whole minute they mean, min. */
const HAIR_MIN = 1e-6;
const HAIR_DAYS = 1e-9;

function ordered(plan: Plan): readonly Step[] {
  const position = new Map(plan.steps.map(({ id }, at) => [id, at]));
  const startS = ({ id }: Step): number => plan.timetable.startS[id] ?? Infinity;
  return plan.steps.toSorted(
    (a, b) => startS(a) - startS(b) || (position.get(a.id) ?? 0) - (position.get(b.id) ?? 0),
  );
}

function zoneOf({ kitchen }: Plan): string {
  return kitchen.place?.zone ?? UTC;
}

/** Whole minutes after the start, rounded down, in days, hours and minutes. */
function offsetOf(atS: number): { days: number; hours: number; minutes: number } {
  const minutes = Math.floor(atS / SECONDS_PER_MINUTE + HAIR_MIN);
  return {
    days: Math.floor(minutes / (HOURS_PER_DAY * MINUTES_PER_HOUR)),
    hours: Math.floor(minutes / MINUTES_PER_HOUR) % HOURS_PER_DAY,
    minutes: minutes % MINUTES_PER_HOUR,
  };
}

/** The rest days ahead until a while after the work, and the deadline. */
export function dayMessages(plan: Plan): readonly Message[] {
  const { days, timetable } = plan;
  if (!days) return [];
  const zone = zoneOf(plan);
  const endWallMs = days.startWallMs + timetable.finishS * MS_PER_SECOND;
  const near = days.restDays.filter(
    ({ fromWallMs }, at) => fromWallMs <= endWallMs || days.restDays[at - 1] === undefined,
  );
  return [
    message('plan.day.begins', { startWallMs: days.startWallMs, endWallMs, zone }),
    ...near.map(({ name: day, fromWallMs, toWallMs }) =>
      message('plan.day.rest', { day, fromWallMs, toWallMs, zone }),
    ),
    ...(days.deadline
      ? [
          message('plan.day.deadline', {
            name: days.deadline.name,
            wallMs: days.deadline.atWallMs,
            zone,
          }),
        ]
      : []),
  ];
}

/** The title with the hour until which it holds, where it is a rest and the plan knows its days. */
export function titleUntil(plan: Plan, { id, kind, title, durationS }: Step): Message {
  const startS = plan.timetable.startS[id];
  if (kind !== 'rest' || !plan.days || startS === undefined) return title;
  const nowMs = plan.days.startWallMs + startS * MS_PER_SECOND;
  const wallMs = nowMs + durationS.typical * MS_PER_SECOND;
  return untilTold(title, message('common.when', { wallMs, nowMs, zone: zoneOf(plan) }));
}

/** On the wall of the kitchen where the plan knows its days, else counted from the start. */
function stepMessage(plan: Plan, step: Step): Message {
  const startS = plan.timetable.startS[step.id];
  const about = { step: titleUntil(plan, step), lengthS: step.durationS };
  const itself = step.startsBy === 'chain';
  if (startS === undefined) return message('plan.step.untimed', about);
  if (!plan.days)
    return message(itself ? 'plan.step.offset-itself' : 'plan.step.offset', {
      ...offsetOf(startS),
      ...about,
    });
  return message(itself ? 'plan.step.clock-itself' : 'plan.step.clock', {
    wallMs: plan.days.startWallMs + startS * MS_PER_SECOND,
    zone: zoneOf(plan),
    ...about,
  });
}

/** The heading of a step's day, with a key that is the same for the same day. */
function dayOf(plan: Plan, atS: number): Message {
  return plan.days
    ? message('plan.day.date', {
        wallMs: plan.days.startWallMs + atS * MS_PER_SECOND,
        zone: zoneOf(plan),
      })
    : message('plan.day.number', { day: Math.floor(atS / SECONDS_PER_DAY + HAIR_DAYS) + 1 });
}

/** A number that grows from day to day: of the kitchen's wall where it is known, else of the job. */
function dayNumberOf(plan: Plan, atS: number): string {
  if (!plan.days) return String(Math.floor(atS / SECONDS_PER_DAY + HAIR_DAYS));
  const wallMs = plan.days.startWallMs + atS * MS_PER_SECOND;
  return new Intl.DateTimeFormat('en-CA', { timeZone: zoneOf(plan) }).format(wallMs);
}

/** What is done and when, day by day. */
export function timetableLines(plan: Plan): readonly Line[] {
  const told: Line[] = [];
  let day = '';
  for (const step of ordered(plan)) {
    const atS = plan.timetable.startS[step.id] ?? 0;
    const on = dayNumberOf(plan, atS);
    if (on !== day) told.push(line(dayOf(plan, atS)));
    day = on;
    told.push(line(stepMessage(plan, step), 1));
  }
  return told;
}
