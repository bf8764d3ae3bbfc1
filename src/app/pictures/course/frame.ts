import { foldedScale, type Course, type Plan, type TimeScale } from '../../../core/plan/index.ts';
import { unfenced } from '../../../core/messages/index.ts';
import { MS_PER_SECOND, SECONDS_PER_HOUR } from '../../../core/units/index.ts';

/** The clock a course is told by. */
export type WallClock = { readonly startWallMs: number; readonly zone: string };

/** What a plan is held against, s after its start. */
export type Ends = {
  /** The hour it must be done by, and when what must be done is done. */
  readonly due?: { readonly byS: number; readonly doneS: number; readonly of: 'purge' | 'all' };
  /** Nine plays of ten end by then; absent until it is worked out. */
  readonly nineInTenS?: number;
};

/** Where everything of a course lies, px. */
export type Frame = {
  readonly widthPx: number;
  /** Where time begins; left of it stand the names. */
  readonly leftPx: number;
  /** Names stand over their rows: there is no room beside them. */
  readonly isNarrow: boolean;
  readonly fromS: number;
  readonly toS: number;
  readonly x: (atS: number) => number;
  readonly atX: (x: number) => number;
  readonly wall: (atS: number) => { readonly wallMs: number; readonly zone: string };
};

/** Night takes this share of the room that an hour of work has. */
const NIGHT_SHARE = 0.2;
/** Below this names stand over their rows, px. */
const NARROW_PX = 640;
const MOST_LEFT_PX = 210;
const LEAST_LEFT_PX = 110;
const EDGE_PX = 8;
/** A deadline further behind the end than this share of the work is told, not drawn. */
const NEAR = 0.35;
const NEAR_S = 6 * SECONDS_PER_HOUR;
/** Time is drawn so far behind the last end that it can be seen to be over. */
const AFTER = 0.012;

/** Width that a text takes at most, px; a little more than the face needs. */
export function textPx(text: string, sizePx: number): number {
  return unfenced(text).length * sizePx * 0.53;
}

/** A name in lines of at most so many px; a single word is never cut. */
export function inLines(name: string, sizePx: number, mostPx: number): readonly string[] {
  const lines: string[] = [];
  // Each line finds its own direction; a fence must not be open over two of them.
  for (const word of unfenced(name).split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textPx(`${last} ${word}`, sizePx) <= mostPx)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** The deadline, where it lies near enough to be drawn. */
export function drawnDueS({ due }: Ends, finishS: number): number | undefined {
  if (!due || due.byS <= 0) return undefined;
  return due.byS <= finishS + Math.max(NEAR * finishS, NEAR_S) ? due.byS : undefined;
}

export function frameOf(
  { timetable }: Plan,
  course: Course,
  clock: WallClock,
  ends: Ends,
  { widthPx, names }: { readonly widthPx: number; readonly names: readonly string[] },
): Frame {
  const isNarrow = widthPx < NARROW_PX;
  const longest = Math.max(0, ...names.map((name) => textPx(name, NAME_PX)));
  const leftPx = isNarrow
    ? 0
    : Math.max(LEAST_LEFT_PX, Math.min(MOST_LEFT_PX, longest + 2 * EDGE_PX));
  const lastS = Math.max(
    timetable.finishS,
    ends.nineInTenS ?? 0,
    drawnDueS(ends, timetable.finishS) ?? 0,
    1,
  );
  const toS = lastS * (1 + AFTER);
  const scale: TimeScale = foldedScale({ fromS: 0, toS }, course.idle, NIGHT_SHARE);
  const roomPx = Math.max(1, widthPx - leftPx - EDGE_PX);
  return {
    widthPx,
    leftPx,
    isNarrow,
    fromS: 0,
    toS,
    x: (atS) => leftPx + scale.at(atS) * roomPx,
    atX: (x) => scale.back((x - leftPx) / roomPx),
    wall: (atS) => ({
      wallMs: clock.startWallMs + Math.round(atS) * MS_PER_SECOND,
      zone: clock.zone,
    }),
  };
}

/** Where rows may begin: under the days, their parts and the hours, px. */
export const AXIS_PX = 56;

/** Size of the names of rows, px. */
export const NAME_PX = 14;

/** A row's height: its bar, and its name in as many lines as it needs. */
export function rowPx(frame: Frame, lines: number): number {
  if (frame.isNarrow) return 17 + 17;
  return Math.max(22, lines * 15 + 6);
}
