import { band, OutOfRangeError, inRange, type Band } from '../../units/index.ts';
import { USUAL_ROOM_C } from '../common/constants.ts';
import { heatingPowerW } from '../electricity/heating-power.ts';
import { checkLump, lumpSeconds, steadyTempC, type Lump } from '../surface/lumped.ts';
import { glowBody, type GlowBody, type GlowCorner } from '../tables/burners.ts';
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
  /** Voltage that `ratedW` is for, and the one it gets; an electric burner's power goes with the square. Both or neither. */
  readonly ratedV?: number;
  readonly supplyV?: number;
  readonly roomC?: number;
};

/** A flame does not ask for volts. */
function hasElement(burner: string | undefined): boolean {
  return burner === undefined || !(burner.startsWith('gas') || burner === 'commercial-open');
}

/**
 * Share of its rated power that an electric burner gets.
 * @throws OutOfRangeError
 */
export function suppliedShare({ burner, ratedV, supplyV }: GlowInput): number {
  if (ratedV === undefined || supplyV === undefined || !hasElement(burner)) return 1;
  return heatingPowerW({ ratedW: 1, ratedV, supplyV }).powerW;
}

/**
 * The body that glows: catalogue values first, given numbers over them.
 * @throws OutOfRangeError when a number is missing and no burner is named
 */
export function glowLump(of: GlowInput, corner: GlowCorner = 'typical'): Lump {
  const base = of.burner === undefined ? undefined : glowBody(of.burner, of.ratedW, corner);
  const value = (input: keyof GlowBody): number => {
    const found = of[input] ?? base?.[input];
    if (found !== undefined) return found;
    throw new OutOfRangeError(input, 'not given', 'a number, or name a burner', 'Give it.');
  };
  return checkLump({
    powerW: value('powerW') * suppliedShare(of),
    areaM2: value('areaM2'),
    emissivity: value('emissivity'),
    heatCapacityJK: value('heatCapacityJK'),
    filmWM2K: value('filmWM2K'),
    roomC: inRange('roomC', of.roomC ?? USUAL_ROOM_C, -10, 50),
  });
}

/** Seconds until a body is at `toC`, or all but at its steady temperature where that is lower. */
function secondsTo(body: Lump, toC: number): number {
  const reachedC = Math.min(toC, steadyTempC(body) - NEARLY_K);
  return lumpSeconds(body, body.roomC, reachedC) ?? 0;
}

/**
 * Seconds from lighting to a visible glow. low: the hottest of its type, seen
 * in twilight (474 °C); typical: the Draper point (525 °C); high: the later of
 * seen with the kitchen lamp on (`litC`, about 690 °C) and the coolest of its
 * type at the Draper point, or nearly its steady temperature where that is lower.
 * `surelyGlows` is false where the coolest of its type stays below the Draper point.
 * @throws OutOfRangeError also when the usual body never reaches the Draper point
 * Source: lumped body with film and radiation (Incropera ch. 5.3),
 * Stefan–Boltzmann; the ends of a coil from a thermal imager (shared/burners.json).
 */
export function glowTime(of: GlowInput): {
  readonly timeS: Band;
  readonly steadyC: Band;
  readonly litC: number;
  readonly surelyGlows: boolean;
} {
  const body = glowLump(of);
  const [hottest, coolest] = [glowLump(of, 'hottest'), glowLump(of, 'coolest')];
  const steadyC = band(steadyTempC(coolest), steadyTempC(body), steadyTempC(hottest));
  const typical = lumpSeconds(body, body.roomC, DRAPER_C);
  if (typical === undefined || steadyC.typical - NEARLY_K <= DRAPER_C) {
    throw new OutOfRangeError(
      'powerW',
      body.powerW,
      `enough to hold more than ${DRAPER_C + NEARLY_K} °C`,
      `It would stay at ${steadyC.typical.toFixed(0)} °C and never glow: ask which method this burner needs.`,
    );
  }
  const litC = draperPoint({ lux: LIT_KITCHEN_LX, emissivity: body.emissivity || 1 }).tempC;
  const low = Math.min(typical, secondsTo(hottest, TWILIGHT_C));
  const high = Math.max(typical, secondsTo(body, litC), secondsTo(coolest, DRAPER_C));
  const surelyGlows = steadyC.low - NEARLY_K > DRAPER_C;
  return { timeS: band(low, typical, high), steadyC, litC, surelyGlows };
}
