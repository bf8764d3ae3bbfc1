import { coolToTouch, glowTime } from '../../physics/index.ts';
import type { Burner } from '../../kitchen/index.ts';
import { OutOfRangeError, type Band } from '../../quantity/index.ts';
import { burnerRow, touchC } from './tables.ts';
import { ROOM_C } from './vessels.ts';

export type BurnerReckoned = {
  /** From lighting to a glow that is seen. */
  readonly glowS: Band;
  readonly glowC: number;
  /** From off until it may be touched, s. */
  readonly coolS: number;
  /** What to look for. */
  readonly visible: string;
};

/**
 * Warm-up and cool-down of a burner; none when nothing of it glows, or when
 * its power is outside what the model answers for.
 */
export function reckonBurner(burner: Burner): BurnerReckoned | undefined {
  const row = burnerRow(burner.type);
  if (!row) return undefined;
  // A larger burner of one type is longer, not hotter.
  const scale = burner.ratedW / row.ratedW.typical;
  const body = {
    powerW: burner.ratedW * row.absorbedShare,
    areaM2: row.areaM2 * scale,
    emissivity: row.emissivity,
    heatCapacityJK: row.heatCapacityJK * scale,
    filmWM2K: row.filmWM2K,
    roomC: ROOM_C,
  };
  try {
    const { timeS, steadyC } = glowTime(body);
    const after = {
      powerW: body.powerW,
      areaM2: row.after.areaM2 * scale,
      emissivity: row.after.emissivity,
      heatCapacityJK: row.after.heatCapacityJK * scale,
      filmWM2K: row.filmWM2K,
      roomC: ROOM_C,
    };
    const cooled = coolToTouch({
      ...after,
      fromC: row.after.fromC ?? steadyC,
      touchC: touchC(row.after.kind),
    });
    return { glowS: timeS, glowC: steadyC, coolS: cooled.timeS, visible: row.visible };
  } catch (refusal) {
    if (refusal instanceof OutOfRangeError) return undefined;
    throw refusal;
  }
}
