import { TABLE } from '../model/table.ts';
import type { DipWay, PurgePot } from '../model/types.ts';

type Sides = readonly [number, number, number];
type Round = Pick<PurgePot, 'diameterM' | 'depthM'>;

/** Angles at which a leaning piece is tried, from lying to standing. */
const ANGLES = 90;

/** The three sides in every order. */
function orders([a, b, c]: Sides): readonly Sides[] {
  return [
    [a, b, c],
    [a, c, b],
    [b, a, c],
    [b, c, a],
    [c, a, b],
    [c, b, a],
  ];
}

/**
 * Whether a box lies under water, leaning as it will: two sides in an upright
 * plane through the pot, the third across it.
 */
function goesUnder(sides: Sides, { diameterM, depthM }: Round): boolean {
  return orders(sides).some(([long, thick, across]) => {
    if (across > diameterM) return false;
    const chordM = Math.sqrt(diameterM ** 2 - across ** 2);
    for (let step = 0; step <= ANGLES; step += 1) {
      const angle = ((Math.PI / 2) * step) / ANGLES;
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      if (long * cos + thick * sin <= chordM && long * sin + thick * cos <= depthM) return true;
    }
    return false;
  });
}

/**
 * Whether one piece goes under water in a pot: whole, or first one half and
 * then the other, each a little further than half. Undefined: not at all.
 */
export function wayInto(sides: Sides, pot: Round): DipWay | undefined {
  if (goesUnder(sides, pot)) return 'whole';
  const { diameterM, depthM } = pot;
  const halves = orders(sides).some(
    ([up, a, b]) => up * (0.5 + TABLE.pot.overlapShare) <= depthM && Math.hypot(a, b) <= diameterM,
  );
  return halves ? 'by-halves' : undefined;
}

/** A round pot of usual shape, from its volume. */
export function potOf(volumeL: number): Round {
  const { heightPerDiameter } = TABLE.pot;
  const diameterM = Math.cbrt((4 * volumeL) / 1000 / (Math.PI * heightPerDiameter));
  return { diameterM, depthM: diameterM * heightPerDiameter };
}

/** Steps in which a pot that is still to be had is searched, L. */
const STEP_L = 1;
/** The largest pot that one can have, L. */
const LARGEST_POT_L = 200;

/** Smallest pot of usual shape, in whole litres, that takes a piece at least by halves. */
export function leastPotL(sides: Sides): number {
  for (let volumeL = STEP_L; volumeL < LARGEST_POT_L; volumeL += STEP_L)
    if (wayInto(sides, potOf(volumeL))) return volumeL;
  return LARGEST_POT_L;
}
