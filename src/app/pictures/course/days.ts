import { dayNumber, wallTime } from '../../../core/calendar/index.ts';
import { midnightsBetween } from '../../../core/plan/index.ts';
import { MS_PER_HOUR, MS_PER_MINUTE, MS_PER_SECOND } from '../../../core/units/index.ts';
import type { Frame, WallClock } from './frame.ts';

export type PartOfDay = 'morning' | 'afternoon' | 'evening' | 'night';

/** Hours at which the parts of a day begin: as people speak of them. */
const PARTS: readonly (readonly [fromHour: number, part: PartOfDay])[] = [
  [0, 'night'],
  [5, 'morning'],
  [12, 'afternoon'],
  [18, 'evening'],
  [23, 'night'],
];

export function partOfDay(wallMs: number, zone: string): PartOfDay {
  const { hour } = wallTime(wallMs, zone);
  return PARTS.findLast(([from]) => hour >= from)?.[1] ?? 'night';
}

/** A stretch of the axis with what it is called. */
type Named<T> = { readonly left: number; readonly right: number; readonly of: T };

/** Days of the axis, by the midnights of the kitchen's wall. */
export function daysOf(frame: Frame, clock: WallClock): readonly Named<number>[] {
  const endMs = clock.startWallMs + frame.toS * MS_PER_SECOND;
  const starts = [clock.startWallMs, ...midnightsBetween(clock.startWallMs, endMs, clock.zone)];
  const x = (atMs: number) => frame.x((atMs - clock.startWallMs) / MS_PER_SECOND);
  return starts.map((atMs, n) => ({
    left: x(atMs),
    right: x(starts[n + 1] ?? endMs),
    of: atMs + 1,
  }));
}

/** Room between two ticks, px. */
const TICK_PX = 46;
const STEPS_H = [1, 2, 3, 6, 12] as const;

function wholeHours(frame: Frame, { startWallMs, zone }: WallClock): readonly number[] {
  const past = wallTime(startWallMs, zone).minute;
  const first =
    startWallMs - (startWallMs % MS_PER_MINUTE) + (past === 0 ? 0 : 60 - past) * MS_PER_MINUTE;
  const endMs = startWallMs + frame.toS * MS_PER_SECOND;
  const hours: number[] = [];
  for (let atMs = first; atMs <= endMs; atMs += MS_PER_HOUR) hours.push(atMs);
  return hours;
}

type Tick = { readonly x: number; readonly wallMs: number };

/** Whole hours of the wall with room for their figures; those inside folded nights are left out. */
export function ticksOf(
  frame: Frame,
  clock: WallClock,
  isIdle: (atS: number) => boolean,
): readonly Tick[] {
  const awake = wholeHours(frame, clock)
    .map((wallMs) => ({ wallMs, atS: (wallMs - clock.startWallMs) / MS_PER_SECOND }))
    .filter(({ atS }) => !isIdle(atS))
    .map(({ wallMs, atS }) => ({ wallMs, x: frame.x(atS) }));
  const perHourPx = Math.max(...awake.slice(1).map(({ x }, n) => x - (awake[n]?.x ?? x)), 1);
  const stepH = STEPS_H.find((hours) => hours * perHourPx >= TICK_PX) ?? 24;
  const ticks: Tick[] = [];
  for (const tick of awake) {
    if (wallTime(tick.wallMs, clock.zone).hour % stepH !== 0) continue;
    if (tick.x - (ticks.at(-1)?.x ?? -TICK_PX) >= TICK_PX * 0.95) ticks.push(tick);
  }
  return ticks;
}

/** Mornings, afternoons and evenings of work, as far as they are not folded away. */
export function partsOf(
  frame: Frame,
  clock: WallClock,
  isIdle: (atS: number) => boolean,
): readonly Named<PartOfDay>[] {
  const parts: { left: number; right: number; of: PartOfDay; day: number }[] = [];
  const stepMs = 30 * MS_PER_MINUTE;
  const endMs = clock.startWallMs + frame.toS * MS_PER_SECOND;
  for (let atMs = clock.startWallMs; atMs < endMs; atMs += stepMs) {
    const atS = (atMs - clock.startWallMs) / MS_PER_SECOND;
    if (isIdle(atS + 1)) continue;
    const of = partOfDay(atMs, clock.zone);
    const day = dayNumber(wallTime(atMs, clock.zone));
    const right = frame.x(Math.min(atS + stepMs / MS_PER_SECOND, frame.toS));
    const last = parts.at(-1);
    if (last && last.of === of && last.day === day) last.right = right;
    else parts.push({ left: frame.x(atS), right, of, day });
  }
  return parts;
}
