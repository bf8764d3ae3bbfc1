import { band, inRange, type Band } from '../quantity/index.ts';

/** Volumetric heat capacity of air, J/(m³ K): ρc ≈ 1200. */
const AIR_J_M3K = 1200;
/** Heat-transfer film between air and walls, W/(m² K): 1 / 0.12 m²K/W. */
const FILM_W_M2K = 8.3;
/** Lined walls as seen over an hour: what the surface layer stores, J/(m² K) (about 13 mm of plasterboard). From memory. */
const WALL_J_M2K = 11_000;
/** And what passes through that layer into the wall, W/(m² K). From memory. */
const WALL_W_M2K = 2;
const GRAVITY_M_S2 = 9.81;
const STEP_S = 5;
/** Air changes of a closed kitchen through its cracks, per hour. Common practice, no published source. */
const LEAK_PER_H = 0.5;
/** Share of the plume a vented hood takes (measured 15 to over 98 %; back burners better). */
const CAPTURE: Band = { low: 0.3, typical: 0.6, high: 0.85 };

export type RoomInput = {
  readonly volumeM3: number;
  readonly wallAreaM2: number;
  readonly hoodFlowM3S: number;
  readonly windowAreaM2: number;
  readonly windowHeightM: number;
  readonly outdoorC: number;
  readonly startC: number;
  /** Heat of all burners that are lit together, W. */
  readonly heatW: number;
  readonly minutes: number;
};

/** Warren and Parkins 1984, stack: Q = (0.61/3) A √(g H ΔT / T). */
export function windowFlowM3S(input: {
  readonly areaM2: number;
  readonly heightM: number;
  readonly insideC: number;
  readonly outdoorC: number;
}): number {
  const warmer = Math.abs(input.insideC - input.outdoorC);
  const meanK = (input.insideC + input.outdoorC) / 2 + 273.15;
  return (0.61 / 3) * input.areaM2 * Math.sqrt((GRAVITY_M_S2 * input.heightM * warmer) / meanK);
}

type Curve = readonly { readonly timeS: number; readonly airC: number }[];

function curveOf(room: RoomInput, capture: number): Curve {
  const hooded = room.hoodFlowM3S > 0 ? 1 - capture : 1;
  let airC = room.startC;
  let wallC = room.startC;
  const curve: { timeS: number; airC: number }[] = [{ timeS: 0, airC }];
  for (let timeS = STEP_S; timeS <= room.minutes * 60; timeS += STEP_S) {
    const freshM3S =
      (LEAK_PER_H * room.volumeM3) / 3600 +
      room.hoodFlowM3S +
      windowFlowM3S({
        areaM2: room.windowAreaM2,
        heightM: room.windowHeightM,
        insideC: airC,
        outdoorC: room.outdoorC,
      });
    const wallW = FILM_W_M2K * room.wallAreaM2 * (airC - wallC);
    const netW = room.heatW * hooded - wallW - AIR_J_M3K * freshM3S * (airC - room.outdoorC);
    airC += (netW * STEP_S) / (AIR_J_M3K * room.volumeM3);
    const intoWallW = WALL_W_M2K * room.wallAreaM2 * (wallC - room.startC);
    wallC += ((wallW - intoWallW) * STEP_S) / (WALL_J_M2K * room.wallAreaM2);
    if (timeS % 60 === 0) curve.push({ timeS, airC });
  }
  return curve;
}

/**
 * Air temperature of one closed room with heat in it: two nodes (air and wall
 * surface), hood, window by its stack, cracks. The band is the hood's capture.
 * Advice, never proof that the air is safe.
 * @throws OutOfRangeError
 */
export function roomHeat(input: RoomInput): { readonly peakC: Band; readonly curve: Curve } {
  inRange('volumeM3', input.volumeM3, 5, 5000);
  inRange('heatW', input.heatW, 0, 200_000);
  inRange('minutes', input.minutes, 1, 1440);
  const peak = (capture: number): number =>
    Math.max(...curveOf(input, capture).map((point) => point.airC));
  return {
    peakC: band(peak(CAPTURE.high), peak(CAPTURE.typical), peak(CAPTURE.low)),
    curve: curveOf(input, CAPTURE.typical),
  };
}

/** Above this the work is called off: heat index 103 °F (39.4 °C) begins "danger" (National Weather Service). */
export const ROOM_LIMIT_C = 39;

/**
 * How many like burners may glow together before the room passes the limit:
 * the largest of 1 to `most`. One is always allowed: without it nothing can be done.
 * @throws OutOfRangeError
 */
export function burnersAtOnce(
  input: RoomInput & { readonly burnerW: number; readonly most: number },
): number {
  let allowed = 1;
  for (let count = 2; count <= input.most; count += 1) {
    const { peakC } = roomHeat({ ...input, heatW: input.burnerW * count });
    if (peakC.typical > ROOM_LIMIT_C) break;
    allowed = count;
  }
  return allowed;
}
