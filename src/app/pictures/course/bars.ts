import type { Message } from '../../../core/messages/index.ts';
import {
  stepGroups,
  type CourseBar,
  type PersonLane,
  type Plan,
  type StepGroup,
} from '../../../core/plan/index.ts';
import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../../core/units/index.ts';
import { textPx, type Frame } from './frame.ts';

/** What is pressed: a bar of a lane or of a row, with its steps. */
export type Pressed = {
  readonly steps: readonly string[];
  readonly fromS: number;
  readonly toS: number;
  /** Number of the lane, from 0; absent: a row. */
  readonly person?: number;
};

/** A bar as drawn, px. */
export type DrawnBar = Pressed & {
  readonly x: number;
  readonly w: number;
  readonly look: string;
};

/** Work on one thing that is interrupted for less than this is one bar, s. */
const TOGETHER_S = 30 * SECONDS_PER_MINUTE;
/** Bars of one kind nearer than this stand under one word, s. */
const RUN_S = 1.5 * SECONDS_PER_HOUR;
const LEAST_PX = 2.5;

/** A width that can be seen, and that never reaches over the next one. */
function widthPx(x: number, toX: number, nextX: number): number {
  return Math.max(1, Math.min(Math.max(LEAST_PX, toX - x), nextX - x - 0.75));
}

function groupsById(plan: Plan): ReadonlyMap<string, StepGroup> {
  return new Map(
    stepGroups(plan).flatMap((group) => group.steps.map(({ id }) => [id, group] as const)),
  );
}

export type LaneBar = DrawnBar & { readonly family: StepGroup['family'] };

/** The turns of a person; what belongs together and follows closely is one bar. */
export function laneBars(
  plan: Plan,
  { hands }: PersonLane,
  person: number,
  frame: Frame,
): readonly LaneBar[] {
  const groups = groupsById(plan);
  const told: (Pressed & { group: StepGroup | undefined })[] = [];
  for (const { step, fromS, toS } of hands) {
    const group = groups.get(step);
    const last = told.at(-1);
    if (last && last.group === group && fromS - last.toS < TOGETHER_S)
      told[told.length - 1] = { ...last, steps: [...last.steps, step], toS };
    else told.push({ steps: [step], fromS, toS, person, group });
  }
  return told.map(({ group, ...bar }, n) => {
    const x = frame.x(bar.fromS);
    const next = told[n + 1];
    const family = group?.family ?? 'finish';
    const w = widthPx(x, frame.x(bar.toS), next ? frame.x(next.fromS) : Infinity);
    return { ...bar, x, w, look: family, family };
  });
}

type Run = { readonly x: number; readonly family: StepGroup['family'] };

/** Where a word for a run of alike bars has room, before the next run or a day of rest with its own name begins. */
export function runsOf(
  bars: readonly LaneBar[],
  frame: Frame,
  wordOf: (family: StepGroup['family']) => string,
  sizePx: number,
  restsX: readonly number[] = [],
): readonly Run[] {
  const runs: { x: number; toS: number; family: StepGroup['family'] }[] = [];
  for (const { x, fromS, toS, family } of bars) {
    const last = runs.at(-1);
    if (last && last.family === family && fromS - last.toS < RUN_S) last.toS = toS;
    else runs.push({ x, toS, family });
  }
  return runs.filter(({ x, family }, n) => {
    const ends = [runs[n + 1]?.x ?? frame.widthPx, ...restsX.filter((restX) => restX > x)];
    const roomPx = Math.min(...ends) - x;
    return textPx(wordOf(family), sizePx) <= roomPx - 4;
  });
}

/** Bars of a row as drawn. */
export function rowBars(
  bars: readonly CourseBar[],
  frame: Frame,
): readonly (DrawnBar & CourseBar)[] {
  return bars.map((bar, n) => {
    const x = frame.x(bar.fromS);
    const next = bars[n + 1];
    const w = widthPx(x, frame.x(bar.toS), next ? frame.x(next.fromS) : Infinity);
    return { ...bar, x, w, look: bar.happening };
  });
}

export type Label = { readonly x: number; readonly text: string; readonly isInside: boolean };

/** The longest of some texts that fits into a bar, else that fits behind it; none where none fits. */
export function labelFor(
  { x, w }: Pick<DrawnBar, 'x' | 'w'>,
  nextX: number,
  texts: readonly string[],
  sizePx: number,
): Label | undefined {
  const inside = texts.find((text) => textPx(text, sizePx) + 8 <= w);
  if (inside !== undefined) return { x: x + 5, text: inside, isInside: true };
  const behind = texts.find((text) => textPx(text, sizePx) + 8 <= nextX - x - w);
  return behind === undefined ? undefined : { x: x + w + 4, text: behind, isInside: false };
}

/** What a step is done on, as the household calls it. */
export function nameOf(plan: Plan, step: string): Message | string | undefined {
  const found = plan.steps.find(({ id }) => id === step);
  if (found?.work.on === 'vessel') return found.work.vessel.name;
  return plan.kitchen.fixtures.find(({ id }) => id === found?.fixture)?.name;
}
