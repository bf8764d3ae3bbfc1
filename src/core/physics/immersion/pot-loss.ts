import { band, inRange, type Band } from '../../units/index.ts';

/** W/m² for each Btu/(h ft²): the International Table Btu on a square foot of 0.3048 m sides. */
const WM2_BTUHFT2 = 1055.05585262 / 3600 / 0.3048 ** 2;
/** Water of 210 °F in air of 60 °F loses this much from its surface and through bare walls. */
const SURFACE_WM2 = 3600 * WM2_BTUHFT2;
const WALL_WM2 = 360 * WM2_BTUHFT2;
/** The table is a rough estimate, in a kitchen the air is stiller and wetter than round a tank. */
const SURFACE_LOW = 0.5;
const SURFACE_HIGH = 1.15;
/** Share that still gets away under a lid; usual practice, no published source. */
const LID = band(0.05, 0.15, 0.3);

/**
 * What a round pot loses at the boil, W: from its surface, or under a lid, and
 * through its wall.
 * @param of diameterM 0.05 to 1.5 m, heightM 0.02 to 1.5 m
 * @throws OutOfRangeError
 * Source: engineering table of losses from open tanks at 210 °F.
 */
export function potLoss(of: {
  readonly diameterM: number;
  readonly heightM: number;
  readonly lid: boolean;
}): { readonly lossW: Band } {
  const diameterM = inRange('diameterM', of.diameterM, 0.05, 1.5);
  const heightM = inRange('heightM', of.heightM, 0.02, 1.5);
  const surfaceW = SURFACE_WM2 * Math.PI * (diameterM / 2) ** 2;
  const wallW = WALL_WM2 * Math.PI * diameterM * heightM;
  const share = of.lid ? LID : band(SURFACE_LOW, 1, SURFACE_HIGH);
  return {
    lossW: band(
      surfaceW * share.low + wallW * SURFACE_LOW,
      surfaceW * share.typical + wallW,
      surfaceW * share.high + wallW * SURFACE_HIGH,
    ),
  };
}
