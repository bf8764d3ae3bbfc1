import { HANDS } from '../context/demands.ts';
import { asWritten, message, type Message } from '../../messages/index.ts';
import type { Plan, Step, StepKind } from '../model/index.ts';
import { SECONDS_PER_HOUR } from '../../units/index.ts';
import { inOrder, thingOf } from './groups.ts';

/** What happens to a thing while no hands are on it, or with water. */
type Happening = 'rest' | 'thaw' | 'water' | 'heat' | 'cool' | 'other';

/** One stretch of one thing, s after the start. */
export type CourseBar = {
  readonly happening: Happening;
  /** In the order of time. */
  readonly steps: readonly string[];
  readonly fromS: number;
  readonly toS: number;
  /** When something that needs it begins: until then it may take longer. Absent: nothing waits for it. */
  readonly waitedForS?: number;
};

/** A fixture or a vessel; its bars follow each other. */
export type CourseRow = {
  /** Its id; empty for the whole kitchen. */
  readonly thing: string;
  /** Absent: the whole kitchen. */
  readonly name?: Message;
  readonly bars: readonly CourseBar[];
};

const HAPPENING: Partial<Readonly<Record<StepKind, Happening>>> = {
  rest: 'rest',
  thaw: 'thaw',
  dry: 'water',
  boil: 'water',
  pour: 'water',
  'boil-over': 'water',
  glow: 'heat',
  'self-clean': 'heat',
  'high-heat': 'heat',
  steam: 'heat',
  cool: 'cool',
};

/** Stretches of one kind that are nearer than this are one, s: a judgement. */
const APART_S = SECONDS_PER_HOUR;
/** Times of a timetable are whole milliseconds. */
const TOUCH_S = 0.01;

const happeningOf = ({ kind }: Step): Happening => HAPPENING[kind] ?? 'other';

/** Does it stand in a row? Work of hands alone stands in the lanes of people. */
function isShown(step: Step): boolean {
  return happeningOf(step) !== 'other' || (step.demands[HANDS] ?? 0) === 0;
}

/** When the first step begins that needs one of these. */
function waitedForS({ steps, timetable }: Plan, ids: readonly string[]): number | undefined {
  const starts = steps
    .filter(({ needs }) => needs.some(({ step }) => ids.includes(step)))
    .flatMap(({ id }) => timetable.startS[id] ?? []);
  return starts.length > 0 ? Math.min(...starts) : undefined;
}

/** Stretches of one kind that follow each other closely become one. */
function joined(bars: readonly CourseBar[]): readonly CourseBar[] {
  const whole: CourseBar[] = [];
  for (const bar of bars) {
    const at = whole.findLastIndex(({ happening }) => happening === bar.happening);
    const before = whole[at];
    if (!before || bar.happening === 'other' || bar.fromS - before.toS > APART_S) whole.push(bar);
    else
      whole[at] = {
        ...before,
        steps: [...before.steps, ...bar.steps],
        toS: Math.max(before.toS, bar.toS),
      };
  }
  return whole;
}

/** Where one begins before the one before it is over, it is shown from there on; what has no room left is part of it. */
function apart(bars: readonly CourseBar[]): readonly CourseBar[] {
  const clear: CourseBar[] = [];
  for (const bar of bars.toSorted((a, b) => a.fromS - b.fromS)) {
    const before = clear.at(-1);
    const fromS = Math.max(bar.fromS, before?.toS ?? bar.fromS);
    if (before && bar.toS - fromS <= TOUCH_S)
      clear[clear.length - 1] = { ...before, steps: [...before.steps, ...bar.steps] };
    else clear.push({ ...bar, fromS });
  }
  return clear;
}

function nameOf({ kitchen }: Plan, step: Step): Message | undefined {
  const fixture = kitchen.fixtures.find(({ id }) => id === step.fixture);
  if (fixture) return asWritten(fixture.name);
  if (step.work.on === 'utensils') return message('utensils.all');
  return step.work.on === 'vessel' ? step.work.vessel.name : undefined;
}

/**
 * What rests, heats, cools and is poured, a row a thing, in the order in which it begins. Every
 * timed step that no hands are on is in one bar; the bars of a row never overlap.
 */
export function courseRows(plan: Plan): readonly CourseRow[] {
  const things = new Map<string, Step[]>();
  for (const step of inOrder(plan)) {
    if (!isShown(step)) continue;
    const thing = thingOf(step);
    things.set(thing, [...(things.get(thing) ?? []), step]);
  }
  return [...things].map(([thing, steps]): CourseRow => {
    const bars = steps.map((step): CourseBar => {
      const fromS = plan.timetable.startS[step.id] ?? 0;
      const toS = fromS + step.durationS.typical;
      return { happening: happeningOf(step), steps: [step.id], fromS, toS };
    });
    const [first] = steps;
    const name = first && nameOf(plan, first);
    const told = apart(joined(bars)).map((bar): CourseBar => {
      const atS = waitedForS(plan, bar.steps);
      return atS !== undefined && atS >= bar.toS ? { ...bar, waitedForS: atS } : bar;
    });
    return { thing, ...(name && { name }), bars: told };
  });
}
