import { band, inRange, OutOfRangeError, type Band } from '../quantity/index.ts';

/** Stefan-Boltzmann, W/(m² K⁴), CODATA 2018. */
const SIGMA = 5.670374419e-8;
const KELVIN = 273.15;
/** First visible red in a dark room (Draper point, 798 K). */
export const DRAPER_C = 525;
/** Red that is seen in a lit kitchen: about 600 °C is twelve times as bright as the Draper point (luminance of a black body). */
const LIT_ROOM_C = 600;
const STEP_S = 0.5;
const LONGEST_S = 4 * 3600;

/** A burner as one lump of metal. */
export type GlowBody = {
  readonly powerW: number;
  readonly areaM2: number;
  readonly emissivity: number;
  readonly heatCapacityJK: number;
  readonly filmWM2K: number;
  readonly roomC: number;
};

function lossW(body: GlowBody, tempC: number): number {
  const hotK = tempC + KELVIN;
  const roomK = body.roomC + KELVIN;
  return (
    body.filmWM2K * body.areaM2 * (tempC - body.roomC) +
    body.emissivity * SIGMA * body.areaM2 * (hotK ** 4 - roomK ** 4)
  );
}

/** One fourth-order Runge-Kutta step of m c dT/dt = P − losses. */
function next(body: GlowBody, powerW: number, tempC: number, stepS: number): number {
  const rate = (t: number): number => (powerW - lossW(body, t)) / body.heatCapacityJK;
  const a = rate(tempC);
  const b = rate(tempC + (a * stepS) / 2);
  const c = rate(tempC + (b * stepS) / 2);
  const d = rate(tempC + c * stepS);
  return tempC + ((a + 2 * b + 2 * c + d) * stepS) / 6;
}

/** Seconds until the body passes `untilC`; undefined when it never does. */
function secondsUntil(
  body: GlowBody,
  powerW: number,
  fromC: number,
  untilC: number,
): number | undefined {
  const rising = untilC > fromC;
  let tempC = fromC;
  for (let timeS = 0; timeS < LONGEST_S; timeS += STEP_S) {
    const after = next(body, powerW, tempC, STEP_S);
    if (rising ? after >= untilC : after <= untilC)
      return timeS + (STEP_S * (untilC - tempC)) / (after - tempC);
    tempC = after;
  }
  return undefined;
}

function steadyC(body: GlowBody): number {
  let low = body.roomC;
  let high = 3000;
  for (let k = 0; k < 60; k += 1) {
    const middle = (low + high) / 2;
    if (lossW(body, middle) < body.powerW) low = middle;
    else high = middle;
  }
  return low;
}

function checked(body: GlowBody): GlowBody {
  inRange('powerW', body.powerW, 50, 20_000);
  inRange('areaM2', body.areaM2, 1e-4, 1);
  inRange('emissivity', body.emissivity, 0.01, 1);
  inRange('heatCapacityJK', body.heatCapacityJK, 1, 20_000);
  inRange('filmWM2K', body.filmWM2K, 0, 200);
  return body;
}

/**
 * Warm-up to visible glow and the steady temperature: lumped, with convection
 * and radiation. low: seen in the dark (525 °C); high: seen in a lit kitchen
 * (600 °C).
 * @throws OutOfRangeError, also when the steady temperature stays below a glow
 */
export function glowTime(body: GlowBody): { readonly timeS: Band; readonly steadyC: number } {
  checked(body);
  const steady = steadyC(body);
  const dark = secondsUntil(body, body.powerW, body.roomC, DRAPER_C);
  const lit = secondsUntil(body, body.powerW, body.roomC, LIT_ROOM_C);
  if (dark === undefined || lit === undefined)
    throw new OutOfRangeError(
      'powerW',
      body.powerW,
      `enough to reach ${LIT_ROOM_C} °C`,
      `It would settle at ${Math.round(steady)} °C and show no glow in a lit kitchen.`,
    );
  return { timeS: band(dark, (dark + lit) / 2, lit), steadyC: steady };
}

/**
 * Seconds from `fromC`, switched off, to `touchC`.
 * @param input.touchC surface that may be touched, °C
 * @throws OutOfRangeError
 */
export function coolToTouch(
  input: GlowBody & { readonly fromC: number; readonly touchC: number },
): { readonly timeS: number } {
  checked(input);
  inRange('touchC', input.touchC, input.roomC + 2, input.fromC);
  const timeS = secondsUntil(input, 0, input.fromC, input.touchC);
  if (timeS === undefined)
    throw new OutOfRangeError('touchC', input.touchC, `reached within ${LONGEST_S / 3600} h`);
  return { timeS };
}
