import { boundingBox, boxCorners, type Polygon } from '../../../../core/geometry/index.ts';
import { drawnOutlines, type Kitchen } from '../../../../core/kitchen/index.ts';
import { roomBox } from '../../../../core/editing/index.ts';
import type { Frame } from '../../../pictures/kitchen-frame.ts';

/** The part of the plan that is looked at, metres; x to the right, y away from the viewer. */
export type View = {
  readonly xM: number;
  readonly yM: number;
  readonly widthM: number;
  readonly heightM: number;
};

const CM_PER_M = 100;
/** Free paper round the room, m. */
const MARGIN_M = 0.3;
/** Closest look: about one sink across the screen. */
const NEAREST_M = 0.8;
const FARTHEST_M = 60;

/** The walls as far as anybody knows, as an outline. */
export function roomOf(kitchen: Kitchen): Polygon {
  return boxCorners(roomBox(kitchen));
}

export function viewOfAll(kitchen: Kitchen): View {
  const box = boundingBox([roomOf(kitchen), ...drawnOutlines(kitchen)].flat());
  return {
    xM: box.xMinM - MARGIN_M,
    yM: box.yMinM - MARGIN_M,
    widthM: box.xMaxM - box.xMinM + 2 * MARGIN_M,
    heightM: box.yMaxM - box.yMinM + 2 * MARGIN_M,
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
  const box = boundingBox(drawnOutlines(kitchen).flat());
  return (
    box.xMinM < view.xM ||
    box.yMinM < view.yM ||
    box.xMaxM > view.xM + view.widthM ||
    box.yMaxM > view.yM + view.heightM
  );
}
