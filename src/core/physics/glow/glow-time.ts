import { band, OutOfRangeError, inRange, type Band } from '../../units/index.ts';
import { USUAL_ROOM_C } from '../common/constants.ts';
import { checkLump, lumpSeconds, steadyTempC, type Lump } from '../surface/lumped.ts';
import { glowBody, type GlowBody } from '../tables/burners.ts';
import { DRAPER_C, draperPoint } from './colours.ts';

/** A red is seen in twilight from here, °C; workshop scale of visible red, read in a copy. */
const TWILIGHT_C = 474;
/** Light on a stove with the kitchen lamp on, lx; common practice, no published source. */
const LIT_KITCHEN_LX = 200;
/** Nearer than this to the steady temperature no moment can be named, K. */
const NEARLY_K = 2;

/** Either the numbers of one body, or a burner type of the catalogue with its rated power. */
export type GlowInput = Partial<GlowBody> & {
  readonly burner?: string;
  readonly ratedW?: number;
  readonly roomC?: number;
};

/**
 * The body that glows: catalogue values first, given numbers over them.
 * @throws OutOfRangeError when a number is missing and no burner is named
 */
export function glowLump(of: GlowInput): Lump {
  const base = of.burner === undefined ? undefined : glowBody(of.burner, of.ratedW);
  const value = (input: keyof GlowBody): number => {
    const found = of[input] ?? base?.[input];
    if (found !== undefined) return found;
    throw new OutOfRangeError(input, 'not given', 'a number, or name a burner', 'Give it.');
  };
  return checkLump({
    powerW: value('powerW'),
    areaM2: value('areaM2'),
    emissivity: value('emissivity'),
    heatCapacityJK: value('heatCapacityJK'),
    filmWM2K: value('filmWM2K'),
    roomC: inRange('roomC', of.roomC ?? USUAL_ROOM_C, -10, 50),
  });
}

/**
 * Seconds from lighting to a visible glow. low: seen in twilight (474 °C);
 * typical: the Draper point (525 °C); high: seen with the kitchen lamp on
 * (`litC`, about 615 °C), or nearly the steady temperature where that is lower.
 * @throws OutOfRangeError also when the body never reaches the Draper point
 * Source: lumped body with film and radiation (Incropera ch. 5.3), Stefan–Boltzmann.
 */
export function glowTime(of: GlowInput): {
  readonly timeS: Band;
  readonly steadyC: number;
  readonly litC: number;
} {
  const body = glowLump(of);
  const steadyC = steadyTempC(body);
  const seconds = (toC: number) => lumpSeconds(body, body.roomC, toC);
  const typical = seconds(DRAPER_C);
  if (typical === undefined || steadyC - NEARLY_K <= DRAPER_C) {
    throw new OutOfRangeError(
      'powerW',
      body.powerW,
      `enough to hold more than ${DRAPER_C + NEARLY_K} °C`,
      `It would stay at ${steadyC.toFixed(0)} °C and never glow: ask which method this burner needs.`,
    );
  }
  const litC = draperPoint({ lux: LIT_KITCHEN_LX, emissivity: body.emissivity || 1 }).tempC;
  const high = seconds(Math.min(litC, steadyC - NEARLY_K)) ?? typical;
  const low = seconds(Math.min(TWILIGHT_C, DRAPER_C)) ?? typical;
  return { timeS: band(low, typical, Math.max(high, typical)), steadyC, litC };
}
