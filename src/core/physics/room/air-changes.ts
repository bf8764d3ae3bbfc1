import { SECONDS_PER_HOUR, asBand, band, exactly, type Band } from '../../units/index.ts';
import type { OpenWindow } from './room-types.ts';
import { windowFlow } from './window-flow.ts';

/** Wind at the window where none is told, m/s: common practice, no published source. */
export const USUAL_WIND_MS = 2;
/** Inside less outside for which the window is reckoned in the air balance, K: common practice, no published source. */
const WARM_ROOM_K = 8;
/**
 * Air that comes through cracks with all shut, 1/h: a test house from tight to
 * leaky had 0.10 to 0.90; half is usual. Goto & Tamura 1984.
 */
export const LEAK_PERH: Band = band(0.1, 0.5, 0.9);

/** More air than this a kitchen is not taken to get, 1/h, whatever window and hood are told. */
export const MOST_CHANGES_PERH = 400;

/**
 * Air changes of a kitchen through its window and cracks, without the hood, 1/h.
 * The band spans the methods for the window and houses from tight to leaky.
 * @throws OutOfRangeError
 * Source: windowFlow; Goto & Tamura 1984 for the cracks.
 */
export function airChanges(of: {
  readonly volumeM3: number;
  readonly window: OpenWindow;
  readonly windMS?: number;
  readonly leakPerH?: number | Band;
}): Band {
  const leak = asBand(of.leakPerH ?? LEAK_PERH);
  const { areaM2, heightM, open } = of.window;
  const flow =
    open && areaM2 > 0
      ? windowFlow({
          areaM2,
          heightM,
          differenceK: WARM_ROOM_K,
          windMS: of.windMS ?? USUAL_WIND_MS,
        }).flowM3S
      : exactly(0);
  const at = (corner: keyof Band): number =>
    leak[corner] + (flow[corner] * SECONDS_PER_HOUR) / of.volumeM3;
  return band(at('low'), at('typical'), at('high'));
}
