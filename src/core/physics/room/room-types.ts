import type { Band } from '../../units/index.ts';

/** Heat and steam given to the room between two moments. */
export type HeatPiece = {
  readonly fromS: number;
  readonly toS: number;
  readonly heatW: number;
  readonly moistureKgS?: number;
};

export type Hood = {
  /** Share of the plume taken away, 0 to 1; nothing for a recirculating hood. */
  readonly capture: Band;
  /** Air drawn out of the room, m³/s. */
  readonly flowM3S: number;
};

export type OpenWindow = {
  readonly areaM2: number;
  readonly heightM: number;
  readonly open: boolean;
};

export type RoomInput = {
  readonly volumeM3: number;
  readonly heat: readonly HeatPiece[];
  readonly hood: Hood;
  readonly window: OpenWindow;
  readonly windMS?: number;
  /** Walls, ceiling and floor that the air touches. */
  readonly wallAreaM2: number;
  /** Of the walls for a swing of an hour: about 4 for wood, 6 for plasterboard, 7 for brick and plaster. */
  readonly wallAdmittanceWM2K?: number;
  /** Air outside: a number, or a band where it is only expected. */
  readonly outdoorC: number | Band;
  readonly startC: number;
  /** Thin air holds less heat; default sea level. */
  readonly altitudeM?: number;
  readonly outdoorHumidityPct?: number;
  readonly startHumidityPct?: number;
  /** Through cracks, with all shut; default: what tight and leaky houses have. */
  readonly leakPerH?: number | Band;
  /** Share of the heat that goes to the walls as radiation. */
  readonly radiantShare?: number;
  /** Length of the curve; default: the end of the last heat and ten minutes more. */
  readonly untilS?: number;
};

export type RoomPoint = {
  readonly timeS: number;
  readonly airC: number;
  readonly humidityPct: number;
  readonly heatIndexC: number;
};
