import { dayNumber, wallTime } from '../../../../core/calendar/index.ts';
import { message, type Message } from '../../../../core/messages/index.ts';
import { expectedTimes, type RunView, type StepView } from '../../../../core/run/index.ts';
import { MS_PER_MINUTE, MS_PER_SECOND } from '../../../../core/units/index.ts';
import { wallZone } from '../../../context/zone.ts';
import { fixtureName } from '../step/step-text.ts';
import { timerTitle } from './timer-messages.ts';

/** Something that runs by itself, and when it is over. */
export type RunsUntil = {
  /** What ends together is told together. */
  readonly waits: Message;
  readonly leftS: number;
  readonly untilMs: number;
};

/** Waits that end this close to each other are one line, s. */
const TOGETHER_S = 300;

type Wait = { readonly label: Message; readonly names: Message[] };

/** "Rest" of the sink and "Rest" of the oven → "Rest: Sink, Oven". */
function told(waits: readonly Wait[]): Message {
  return message('run.days.waits', {
    waits: waits.map(({ label, names }) => message('run.days.wait', { label, names })),
  });
}

/** Waits that end by themselves (rests, what cools, an oven's cycle), nearest first; told by the last of those that end together. */
export function runsUntil(view: RunView, nowMs: number): readonly RunsUntil[] {
  const groups: { waits: Wait[]; leftS: number; firstS: number }[] = [];
  for (const timer of view.timers) {
    if (timer.role !== 'hold' || timer.leftS <= 0) continue;
    let group = groups.at(-1);
    if (!group || timer.leftS - group.firstS > TOGETHER_S) {
      group = { waits: [], leftS: timer.leftS, firstS: timer.leftS };
      groups.push(group);
    }
    group.leftS = Math.max(group.leftS, timer.leftS);
    const { label, name } = timerTitle(view, timer);
    const names = name ? [name] : [];
    const same = group.waits.find((wait) => JSON.stringify(wait.label) === JSON.stringify(label));
    if (same) same.names.push(...names);
    else group.waits.push({ label, names });
  }
  return groups.map(({ waits, leftS }) => ({
    waits: told(waits),
    leftS,
    untilMs: nowMs + leftS * MS_PER_SECOND,
  }));
}

/** Work on one fixture in one phase, and the earliest moment it can begin. */
type WorkAhead = {
  readonly work: Message;
  readonly steps: number;
  readonly fromMs: number;
  /** The engine lets a step of it begin now. */
  readonly canBegin: boolean;
};
/** Work of one part of the days to come. */
export type DayOfWork = { readonly when: Message; readonly work: readonly WorkAhead[] };

const EVENING_HOUR = 18;
const NIGHT_ENDS_HOUR = 4;

/** Which of the days ahead it is, by the clock on the kitchen's wall; a night lasts until it ends. */
function dayKind(atMs: number, nowMs: number): 'today' | 'tonight' | 'tomorrow' | 'weekday' {
  const zone = wallZone();
  const at = wallTime(atMs, zone);
  const daysOn = dayNumber(at) - dayNumber(wallTime(nowMs, zone));
  if (daysOn === 0) return at.hour < EVENING_HOUR ? 'today' : 'tonight';
  if (daysOn === 1) return at.hour < NIGHT_ENDS_HOUR ? 'tonight' : 'tomorrow';
  return 'weekday';
}

/** "Today", "Tonight", "Tomorrow", or the day's name. */
export function dayOf(atMs: number, nowMs: number): Message {
  const kind = dayKind(atMs, nowMs);
  return kind === 'weekday'
    ? message('run.days.weekday', { wallMs: atMs, zone: wallZone() })
    : message(`run.days.${kind}`);
}

/** "tonight 22:10", inside a sentence. */
function hourOf(atMs: number, nowMs: number): Message {
  const at = { wallMs: atMs, zone: wallZone() };
  return message(`run.days.at.${dayKind(atMs, nowMs)}`, at);
}

/** Hands with nothing to do for this long are free to eat, sleep or go out, ms. */
const FREE_MS = 4 * 60 * MS_PER_MINUTE;

/**
 * When one can go to bed: the next hours in which nothing is expected of
 * hands, by the timetable where the plan has a start (it knows nights, and that
 * hands do one thing at a time); or when all is over. Where work can begin
 * before the timetable has it, and yet not soon, the hour is that.
 */
export function freeHours(view: RunView, nowMs: number): Message {
  const start = view.plan.days?.startWallMs;
  const soonest = expectedTimes(view, nowMs);
  const planned =
    start === undefined ? soonest : expectedTimes(view, nowMs, { timetableMs: start });
  const busy = view.steps
    .filter(({ step, status }) => step.attention !== 'none' && status !== 'settled')
    .flatMap(({ step: { id } }) => {
      const time = planned.get(id);
      return time ? [{ ...time, soonestMs: soonest.get(id)?.startMs ?? time.startMs }] : [];
    })
    .toSorted((a, b) => a.startMs - b.startMs);
  let fromMs = nowMs;
  for (const [i, { startMs, endMs }] of busy.entries()) {
    if (startMs - fromMs >= FREE_MS) {
      const canMs = Math.min(...busy.slice(i).map(({ soonestMs }) => soonestMs));
      const until = hourOf(canMs - fromMs >= FREE_MS ? Math.min(canMs, startMs) : startMs, nowMs);
      return fromMs - nowMs < MS_PER_MINUTE
        ? message('run.days.free-now', { until })
        : message('run.days.free', { from: hourOf(fromMs, nowMs), until });
    }
    fromMs = Math.max(fromMs, endMs);
  }
  return message('run.days.all-over', { at: hourOf(fromMs, nowMs) });
}

/** Under which heading it stands: what the engine lets begin now, what it will when hands are free, and later days. */
function headingOf({ canBegin, fromMs }: WorkAhead, nowMs: number): Message {
  if (canBegin) return message('run.days.now');
  return fromMs - nowMs < MS_PER_MINUTE ? message('run.days.next') : dayOf(fromMs, nowMs);
}

function workOf(view: RunView, { step }: StepView): Message {
  const name = fixtureName(view, step.fixture);
  const phase = message(`common.phase.${step.phase}`);
  return name === undefined ? step.title : message('run.days.work.at', { phase, name });
}

/**
 * What hands can begin, and when, day by day; one line for each fixture and
 * phase. What can begin now is what the engine says can; the moments of the
 * rest are the engine's own too, by what each step needs and the rest days.
 */
export function workAhead(view: RunView, nowMs: number): readonly DayOfWork[] {
  const times = expectedTimes(view, nowMs);
  const lines = new Map<string, WorkAhead>();
  for (const step of view.steps) {
    const waits = step.status === 'waiting' || step.status === 'ready';
    if (step.step.attention === 'none' || !waits) continue;
    const work = workOf(view, step);
    const key = JSON.stringify(work);
    const line = lines.get(key);
    lines.set(key, {
      work,
      steps: (line?.steps ?? 0) + 1,
      fromMs: Math.min(line?.fromMs ?? Infinity, times.get(step.step.id)?.startMs ?? nowMs),
      canBegin: step.status === 'ready' || line?.canBegin === true,
    });
  }
  const days = new Map<string, { when: Message; work: WorkAhead[] }>();
  const inOrder = [...lines.values()].toSorted(
    (a, b) => Number(b.canBegin) - Number(a.canBegin) || a.fromMs - b.fromMs,
  );
  for (const line of inOrder) {
    const when = headingOf(line, nowMs);
    const day = days.get(JSON.stringify(when)) ?? { when, work: [] };
    day.work.push(line);
    days.set(JSON.stringify(when), day);
  }
  return [...days.values()];
}
