import type { Course, CourseBar, CourseRow, Plan } from '../../../core/plan/index.ts';
import { laneBars, rowBars, type DrawnBar, type LaneBar } from './bars.ts';
import {
  AXIS_PX,
  drawnDueS,
  frameOf,
  inLines,
  NAME_PX,
  rowPx,
  type Ends,
  type Frame,
  type WallClock,
} from './frame.ts';
import { threadOf } from './thread.ts';

/** How people and things are called. */
export type Names = {
  readonly person: (at: number) => string;
  readonly thing: (row: CourseRow) => string;
};

type Placed<B extends DrawnBar> = {
  readonly name: string;
  /** Its name as written, in one line or more. */
  readonly lines: readonly string[];
  readonly y: number;
  readonly heightPx: number;
  readonly barY: number;
  readonly bars: readonly B[];
};
type PlacedLane = Placed<LaneBar> & { readonly watches: readonly DrawnBar[] };
type PlacedRow = Placed<DrawnBar & CourseBar>;

/** Where everything of the picture lies, px. */
export type Layout = {
  readonly frame: Frame;
  /** Where the first lane begins, and where the last ends. */
  readonly top: number;
  readonly ruleY: number;
  readonly lanes: readonly PlacedLane[];
  readonly rows: readonly PlacedRow[];
  readonly heightPx: number;
  /** Along the bars that decide the end; an SVG path. */
  readonly thread: string;
};

export const LANE_BAR_PX = 17;
export const ROW_BAR_PX = 14;
export const FOOT_PX = 26;
const DUE_PX = 18;
const GAP_PX = 12;
const LANE_PX = 38;
/** With the name over it. */
const NARROW_LANE_PX = 50;

/** What is not begun any more looks like nothing that is done. */
function withCut<B extends DrawnBar>(bar: B, cut: Course['cut']): B {
  if (!cut) return bar;
  const isGone =
    bar.fromS >= cut.atS
      ? bar.steps.some((id) => cut.steps.has(id))
      : bar.steps.every((id) => cut.steps.has(id));
  return isGone ? { ...bar, look: 'gone' } : bar;
}

function placedLanes(
  plan: Plan,
  { lanes, cut }: Course,
  frame: Frame,
  top: number,
  names: Names,
): readonly PlacedLane[] {
  const heightPx = frame.isNarrow ? NARROW_LANE_PX : LANE_PX;
  return lanes.map((lane, at) => {
    const y = top + at * heightPx;
    const name = names.person(at);
    const watches = lane.watches.map(({ step, fromS, toS }) => {
      const x = frame.x(fromS);
      return { steps: [step], fromS, toS, person: at, x, w: frame.x(toS) - x, look: 'watch' };
    });
    const barY = y + heightPx - LANE_BAR_PX - 5;
    const bars = laneBars(plan, lane, at, frame).map((bar) => withCut(bar, cut));
    return { name, lines: [name], y, heightPx, barY, bars, watches };
  });
}

function placedRows(
  { rows, cut }: Course,
  frame: Frame,
  top: number,
  names: Names,
): readonly PlacedRow[] {
  let y = top;
  return rows.map((row) => {
    const name = names.thing(row);
    const lines = frame.isNarrow ? [name] : inLines(name, NAME_PX, frame.leftPx - 12);
    const heightPx = rowPx(frame, lines.length);
    const barY = frame.isNarrow ? y + 17 : y + (heightPx - ROW_BAR_PX) / 2;
    const bars = rowBars(row.bars, frame).map((bar) => withCut(bar, cut));
    const placed = { name, lines, y, heightPx, barY, bars };
    y += heightPx;
    return placed;
  });
}

/**
 * The picture of a course at some width.
 * @param widthPx of the whole picture, names included; 280 at least
 */
export function layoutOf(
  plan: Plan,
  course: Course,
  clock: WallClock,
  ends: Ends,
  widthPx: number,
  names: Names,
): Layout {
  const frame = frameOf(plan, course, clock, ends, {
    widthPx,
    names: [...course.lanes.map((_, at) => names.person(at)), ...course.rows.map(names.thing)],
  });
  const isDueDrawn = drawnDueS(ends, plan.timetable.finishS) !== undefined;
  const top = AXIS_PX + (isDueDrawn ? DUE_PX : 0);
  const lanes = placedLanes(plan, course, frame, top, names);
  const last = lanes.at(-1);
  const lanesEnd = last ? last.y + last.heightPx : top;
  const rows = placedRows(course, frame, lanesEnd + GAP_PX, names);
  const lowest = rows.at(-1);
  const feet = (placed: readonly Placed<DrawnBar>[], barPx: number) =>
    placed.flatMap(({ bars, barY }) => bars.map(({ steps }) => ({ steps, y: barY + barPx })));
  return {
    frame,
    top,
    ruleY: lanesEnd + GAP_PX / 2,
    lanes,
    rows,
    heightPx: (lowest ? lowest.y + lowest.heightPx : lanesEnd) + FOOT_PX,
    thread: threadOf(
      course.chain,
      [...feet(lanes, LANE_BAR_PX), ...feet(rows, ROW_BAR_PX)],
      frame.x,
    ),
  };
}

/** A press this far beside a bar still means it, px. */
const NEAR_PX = 26;

/** The bar that a press means: in its row, the nearest one. */
export function barAt({ lanes, rows }: Layout, x: number, y: number): DrawnBar | undefined {
  const row = [...lanes, ...rows].find((one) => y >= one.y && y < one.y + one.heightPx);
  const away = ({ x: left, w }: DrawnBar) => Math.max(left - x, x - left - w, 0);
  const bar = row?.bars.toSorted((a, b) => away(a) - away(b))[0];
  return bar && away(bar) <= NEAR_PX ? bar : undefined;
}
