import { say } from '../../../context/language.ts';
import type { RunView, StepView } from '../../../../core/run/index.ts';
import { PHASE_NAMES } from '../../../labels/names.ts';
import { isBegun } from '../step/concurrent-steps.ts';
import { fixtureName } from '../step/step-text.ts';

/** Something that runs by itself, and when it is over. */
export type RunsUntil = {
  /** What ends together is told together. */
  readonly names: readonly string[];
  readonly leftS: number;
  readonly untilMs: number;
};

/** Waits that end this close to each other are one line, s. */
const TOGETHER_S = 300;

/** Waits that end by themselves (rests, what cools, an oven's cycle), nearest first; told by the last of those that end together. */
export function runsUntil(view: RunView, nowMs: number): readonly RunsUntil[] {
  const groups: { names: string[]; leftS: number; firstS: number }[] = [];
  for (const clock of view.timers) {
    if (clock.role !== 'hold' || clock.leftS <= 0) continue;
    const last = groups.at(-1);
    if (last && clock.leftS - last.firstS <= TOGETHER_S) {
      last.names.push(clock.label);
      last.leftS = Math.max(last.leftS, clock.leftS);
    } else groups.push({ names: [clock.label], leftS: clock.leftS, firstS: clock.leftS });
  }
  return groups.map(({ names, leftS }) => ({ names, leftS, untilMs: nowMs + leftS * 1000 }));
}

/** "Rest: Sink" and "Rest: Oven" → "Rest: Sink, Oven". */
export function namesInWords(names: readonly string[]): string {
  const heads = new Map<string, string[]>();
  for (const name of names) {
    const [head = '', ...rest] = name.split(': ');
    const of = rest.join(': ');
    heads.set(head, [...(heads.get(head) ?? []), ...(of === '' ? [] : [of])]);
  }
  return [...heads]
    .map(([head, of]) => (of.length > 0 ? `${head}: ${of.join(', ')}` : head))
    .join('; ');
}

/** Work on one fixture in one phase, and the earliest moment it can begin. */
export type CanBegin = { readonly name: string; readonly steps: number; readonly fromMs: number };
export type DayOfWork = { readonly when: string; readonly work: readonly CanBegin[] };

/** A rest day moves what would begin inside it to its end. */
function outsideRestDays(view: RunView, atMs: number): number {
  const days = view.plan.days?.restDays ?? [];
  const inside = days.find((day) => day.fromWallMs <= atMs && atMs < day.toWallMs);
  return inside ? inside.toWallMs : atMs;
}

/**
 * The earliest moment each step can begin, by what it needs alone: nobody has
 * to wait for hands, and every step takes its typical time.
 */
export function earliestMs(view: RunView, nowMs: number): ReadonlyMap<string, number> {
  const byId = new Map(view.steps.map((step) => [step.step.id, step]));
  const starts = new Map<string, number>();
  const endMs = (step: StepView): number => {
    if (step.status === 'settled') return nowMs;
    if (!isBegun(step)) return startMs(step) + step.step.durationS.typical * 1000;
    const holds = step.timers.filter(({ role }) => role === 'hold').map(({ leftS }) => leftS);
    return nowMs + Math.max(0, ...holds) * 1000;
  };
  const startMs = (step: StepView): number => {
    const known = starts.get(step.step.id);
    if (known !== undefined) return known;
    const needed = step.step.needs.flatMap((need) => byId.get(need.step) ?? []);
    const ends = needed.map(endMs);
    const hands = step.step.attention !== 'none';
    const soonest = Math.max(nowMs, ...ends);
    const at = hands ? outsideRestDays(view, soonest) : soonest;
    starts.set(step.step.id, at);
    return at;
  };
  for (const step of view.steps) startMs(step);
  return starts;
}

const EVENING_HOUR = 18;
const NIGHT_ENDS_HOUR = 4;

/** "Now", "Today", "Tonight", "Tomorrow", or the day's name. */
export function whenInWords(atMs: number, nowMs: number): string {
  if (atMs - nowMs < 60_000) return 'Now';
  const at = new Date(atMs);
  const now = new Date(nowMs);
  const midnight = (date: Date, add = 0): number =>
    new Date(date.getFullYear(), date.getMonth(), date.getDate() + add).getTime();
  if (midnight(at) === midnight(now)) return at.getHours() < EVENING_HOUR ? 'Today' : 'Tonight';
  if (midnight(at) === midnight(now, 1))
    return at.getHours() < NIGHT_ENDS_HOUR ? 'Tonight' : 'Tomorrow';
  return at.toLocaleDateString('en-GB', { weekday: 'long' });
}

/** What hands can begin, and when, day by day; one line for each fixture and phase. */
export function workAhead(view: RunView, nowMs: number): readonly DayOfWork[] {
  const starts = earliestMs(view, nowMs);
  const lines = new Map<string, { name: string; steps: number; fromMs: number }>();
  for (const step of view.steps) {
    if (step.step.attention === 'none' || step.status === 'settled' || isBegun(step)) continue;
    const fromMs = starts.get(step.step.id) ?? nowMs;
    const where = fixtureName(view, step.step.fixture);
    const name = where === '' ? say(step.step.title) : `${PHASE_NAMES[step.step.phase]}: ${where}`;
    const line = lines.get(name);
    if (line) {
      line.steps += 1;
      line.fromMs = Math.min(line.fromMs, fromMs);
    } else lines.set(name, { name, steps: 1, fromMs });
  }
  const days = new Map<string, CanBegin[]>();
  for (const line of [...lines.values()].toSorted((a, b) => a.fromMs - b.fromMs)) {
    const when = whenInWords(line.fromMs, nowMs);
    days.set(when, [...(days.get(when) ?? []), line]);
  }
  return [...days].map(([when, work]) => ({ when, work }));
}
