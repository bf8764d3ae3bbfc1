import type { LanePoint, Surface } from '../model/types.ts';

/** Places seen from a back edge: first along it, then away from it toward the front, metres. */
export type Frame = {
  readonly origin: LanePoint;
  readonly along: LanePoint;
  readonly front: LanePoint;
};

/** A millionth of a millimetre: takes the last bits of the rotation off edges that are parallel. */
const STEPS_PER_M = 1e9;

function snap(value: number): number {
  return Math.round(value * STEPS_PER_M) / STEPS_PER_M;
}

/** A frame on the line from `a` to `b`, front on the side where `inside` lies. */
export function frameOn(a: LanePoint, b: LanePoint, inside: LanePoint): Frame {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const along: LanePoint = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const side = along[0] * (inside[1] - a[1]) - along[1] * (inside[0] - a[0]);
  const front: LanePoint = side >= 0 ? [-along[1], along[0]] : [along[1], -along[0]];
  return { origin: a, along, front };
}

/** The same lines, poured from the other side. */
export function turned(frame: Frame): Frame {
  return { ...frame, front: [-frame.front[0], -frame.front[1]] };
}

function intoFrame(frame: Frame, p: LanePoint): LanePoint {
  const dx = p[0] - frame.origin[0];
  const dy = p[1] - frame.origin[1];
  return [
    snap(dx * frame.along[0] + dy * frame.along[1]),
    snap(dx * frame.front[0] + dy * frame.front[1]),
  ];
}

export function outOfFrame(frame: Frame, p: LanePoint): LanePoint {
  return [
    frame.origin[0] + p[0] * frame.along[0] + p[1] * frame.front[0],
    frame.origin[1] + p[0] * frame.along[1] + p[1] * frame.front[1],
  ];
}

export function surfaceIntoFrame(frame: Frame, surface: Surface): Surface {
  return {
    outer: surface.outer.map((p) => intoFrame(frame, p)),
    holes: surface.holes.map((hole) => hole.map((p) => intoFrame(frame, p))),
  };
}
