import { boundingBox } from '../../../../../core/geometry/index.ts';
import type { Kitchen } from '../../../../../core/kitchen/index.ts';
import type { Frame } from '../../../../pictures/kitchen-frame.ts';
import { extentOf, WALL_M } from '../../room/extent.ts';

/** The part of the plan that is looked at, metres; x to the right, y away from the viewer. */
export type View = {
  readonly xM: number;
  readonly yM: number;
  readonly widthM: number;
  readonly heightM: number;
};

const CM_PER_M = 100;
/** Free paper round the room, for walls: at least so much, m, and at least that share of it. */
const MARGIN_M = 0.25;
const MARGIN_SHARE = 0.04;
/** Where lengths stand round it: two rows of them on each side, px. */
const LENGTHS_PX = 44;

/** How large a drawing is on the screen. */
export type OnScreen = { readonly widthPx: number; readonly heightPx: number };

/** Margin of `sideM` on both its sides, m, that is {@link LENGTHS_PX} and a wall once it is drawn so long. */
function lengthsM(sideM: number, sidePx: number): number {
  const share = LENGTHS_PX / Math.max(sidePx, 4 * LENGTHS_PX);
  return (WALL_M + share * sideM) / (1 - 2 * share);
}

/** Closest look: about one sink across the screen. */
const NEAREST_M = 0.8;
const FARTHEST_M = 60;

/** Everything that is drawn; with the size of the drawing on the screen there is room for lengths round it. */
export function viewOfAll(kitchen: Kitchen, lengthsOn?: OnScreen): View {
  const box = boundingBox(extentOf(kitchen));
  const [widthM, heightM] = [box.xMaxM - box.xMinM, box.yMaxM - box.yMinM];
  const leastM = Math.max(MARGIN_M, MARGIN_SHARE * Math.max(widthM, heightM));
  const marginM = lengthsOn
    ? Math.max(leastM, lengthsM(widthM, lengthsOn.widthPx), lengthsM(heightM, lengthsOn.heightPx))
    : leastM;
  return {
    xM: box.xMinM - marginM,
    yM: box.yMinM - marginM,
    widthM: widthM + 2 * marginM,
    heightM: heightM + 2 * marginM,
  };
}

/** Nearer (factor above 1) or farther, about a point or the middle. */
export function zoomed(
  view: View,
  factor: number,
  about: readonly [number, number] = [view.xM + view.widthM / 2, view.yM + view.heightM / 2],
): View {
  const widthM = Math.min(FARTHEST_M, Math.max(NEAREST_M, view.widthM / factor));
  const heightM = (view.heightM * widthM) / view.widthM;
  return { xM: about[0] - widthM / 2, yM: about[1] - heightM / 2, widthM, heightM };
}

/** One unit of the drawing is a centimetre; y grows downwards there. */
export function frameOfView(view: View): Frame {
  const widthCm = view.widthM * CM_PER_M;
  const heightCm = view.heightM * CM_PER_M;
  return {
    viewBox: `0 0 ${widthCm} ${heightCm}`,
    widthCm,
    heightCm,
    at: ([x, y]) => [(x - view.xM) * CM_PER_M, (view.yM + view.heightM - y) * CM_PER_M],
  };
}

/** True when something of the kitchen lies outside what is looked at. */
export function outOfView(view: View, kitchen: Kitchen): boolean {
  const box = boundingBox(extentOf(kitchen));
  return (
    box.xMinM < view.xM ||
    box.yMinM < view.yM ||
    box.xMaxM > view.xM + view.widthM ||
    box.yMaxM > view.yM + view.heightM
  );
}
