import { message } from '../../messages/index.ts';
import type { Heights, Kitchen, Opening, WallPlace } from '../model/kitchen.ts';
import { foundValue, problemAt, type KitchenProblem } from '../model/problem.ts';
import { wallOf } from '../queries/walls.ts';
import { polygonFault } from './polygons.ts';
import { edgesHold, onePolygon } from './shapes.ts';

/** A wall is measured twice by hand: this much more is rounding, m. */
const SLACK_M = 0.02;

function* heightsHold(heights: Heights | undefined, at: string): Generator<KitchenProblem> {
  if (!heights || heights.toM > heights.fromM) return;
  const allowed = message('problems.heights.allowed', { fromM: heights.fromM });
  const advice = message('problems.heights.advice');
  yield problemAt(`${at}.heights.toM`, foundValue(heights.toM), allowed, advice);
}

/** It is in a wall that there is, and no longer than what is left of it. */
function* liesInWall(
  { room }: Kitchen,
  { wall, atM, widthM }: Opening | WallPlace,
  at: string,
): Generator<KitchenProblem> {
  if (!room.outline) {
    const allowed = message('problems.wall.needs-outline');
    yield problemAt(`${at}.wall`, foundValue(wall), allowed, message('problems.wall.tell-outline'));
    return;
  }
  const wrong = [...edgesHold(room.outline, [wall], `${at}.wall`)];
  if (wrong.length > 0) {
    yield* wrong.map((problem) => ({ ...problem, path: `${at}.wall` }));
    return;
  }
  const lengthM = wallOf(room.outline, wall)?.lengthM ?? 0;
  if (atM + widthM <= lengthM + SLACK_M) return;
  yield problemAt(
    `${at}.widthM`,
    foundValue(widthM),
    message('problems.wall.fits', { leftM: Math.max(0, lengthM - atM), lengthM, atM }),
    message('problems.wall.shorten'),
  );
}

/** Walls enclose something; what is in them or hangs on them fits there. */
export function* roomWallsHold(kitchen: Kitchen): Generator<KitchenProblem> {
  const { outline, openings = [] } = kitchen.room;
  for (const [i, fixture] of kitchen.fixtures.entries())
    yield* heightsHold(fixture.heights, `fixtures[${i}]`);
  if (outline && polygonFault(outline)) {
    yield* onePolygon('room.outline', outline);
    return;
  }
  for (const [i, opening] of openings.entries()) {
    yield* liesInWall(kitchen, opening, `room.openings[${i}]`);
    yield* heightsHold(opening.heights, `room.openings[${i}]`);
  }
  for (const [i, fixture] of kitchen.fixtures.entries())
    if ('wallPlace' in fixture && fixture.wallPlace)
      yield* liesInWall(kitchen, fixture.wallPlace, `fixtures[${i}].wallPlace`);
}
