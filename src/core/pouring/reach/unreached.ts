import { insidePoint } from '../../geometry/index.ts';
import { subtract } from '../coverage/clip.ts';
import { capsule, COVERAGE_TOLERANCE_M, isThin, segmentsOf } from '../coverage/coverage.ts';
import { surfaceAreaM2, upright } from '../model/plane.ts';
import type { Lane, Surface, Unreached } from '../model/types.ts';

/** Spots of the surface farther than half a swath from every lane, the largest first. */
export function unreachedBy(
  lanes: readonly Pick<Lane, 'points'>[],
  pieces: readonly Surface[],
  swathM: number,
): readonly Unreached[] {
  const reachM = swathM / 2 + COVERAGE_TOLERANCE_M;
  const wetted = segmentsOf(lanes).map((segment) => capsule(segment, reachM));
  return pieces
    .flatMap(({ outer, holes }) =>
      subtract([upright(outer)], [...holes.map(upright), ...wetted]).filter((s) => !isThin(s)),
    )
    .map((spot) => ({
      areaM2: surfaceAreaM2(spot),
      at: insidePoint(spot.outer),
      outline: spot.outer,
    }))
    .toSorted((p, q) => q.areaM2 - p.areaM2);
}
