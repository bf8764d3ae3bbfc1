import { inRange } from '../../units/index.ts';
import { STEFAN_BOLTZMANN_WM2K4, ZERO_C_K } from '../common/constants.ts';

/** A body of one temperature that gains power and loses heat by film and radiation. */
export type Lump = {
  readonly powerW: number;
  readonly areaM2: number;
  readonly emissivity: number;
  readonly heatCapacityJK: number;
  /** Film coefficient: one number, or by the temperature of the body (still air). */
  readonly filmWM2K: number | ((tempC: number) => number);
  readonly roomC: number;
  /** Surroundings that radiate; default: the room. */
  readonly wallsC?: number;
};

/** Largest change of temperature in one step of the integration, K. */
const STEP_K = 4;
const MOST_STEPS = 20_000;
/** Largest step as a share of the time constant of the body where it is. */
const SHARE_OF_CONSTANT = 0.1;
/** Hottest steady temperature looked for, °C: above the melting point of heating wire. */
const HOTTEST_C = 3000;

/**
 * Refuses a body outside of what the models know.
 * @throws OutOfRangeError
 */
export function checkLump(body: Lump): Lump {
  inRange('powerW', body.powerW, 0, 40_000);
  inRange('areaM2', body.areaM2, 1e-6, 10);
  inRange('emissivity', body.emissivity, 0, 1);
  inRange('heatCapacityJK', body.heatCapacityJK, 0.1, 1e6);
  inRange('filmWM2K', filmAt(body, body.roomC), 0, 5000);
  inRange('roomC', body.roomC, -30, 300);
  return body;
}

function filmAt({ filmWM2K }: Lump, tempC: number): number {
  return typeof filmWM2K === 'number' ? filmWM2K : filmWM2K(tempC);
}

/** Heat lost at a temperature, W. */
function lostW(body: Lump, tempC: number): number {
  const wallsK = (body.wallsC ?? body.roomC) + ZERO_C_K;
  const radiated =
    body.emissivity * STEFAN_BOLTZMANN_WM2K4 * ((tempC + ZERO_C_K) ** 4 - wallsK ** 4);
  return body.areaM2 * (filmAt(body, tempC) * (tempC - body.roomC) + radiated);
}

/** Temperature at which gain and loss balance, °C, by bisection to a thousandth. */
export function steadyTempC(body: Lump): number {
  let low = Math.min(body.roomC, body.wallsC ?? body.roomC);
  let high = HOTTEST_C;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (lostW(body, middle) < body.powerW) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

export type LumpPoint = { readonly timeS: number; readonly tempC: number };

/** One Runge–Kutta step of the fourth order; Lump's dT/dt does not depend on time. */
function step(slope: (tempC: number) => number, tempC: number, dt: number): number {
  const k1 = slope(tempC);
  const k2 = slope(tempC + (k1 * dt) / 2);
  const k3 = slope(tempC + (k2 * dt) / 2);
  const k4 = slope(tempC + k3 * dt);
  return tempC + (dt * (k1 + 2 * k2 + 2 * k3 + k4)) / 6;
}

/** Length of the step that ends on `toC`, by bisection within a step that passes it. */
function partOfStep(
  slope: (tempC: number) => number,
  tempC: number,
  toC: number,
  whole: number,
): number {
  let low = 0;
  let high = whole;
  for (let i = 0; i < 40; i += 1) {
    const middle = (low + high) / 2;
    const passed = (step(slope, tempC, middle) - toC) * Math.sign(toC - tempC) >= 0;
    if (passed) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/**
 * Temperatures from `fromC` until `toC` is passed, the last point on it. Empty when the body never gets there.
 */
export function lumpPath(body: Lump, fromC: number, toC: number): readonly LumpPoint[] {
  const direction = Math.sign(toC - fromC);
  const slope = (tempC: number) => (body.powerW - lostW(body, tempC)) / body.heatCapacityJK;
  const points: LumpPoint[] = [{ timeS: 0, tempC: fromC }];
  if (direction === 0) return points;
  // The far end must be passed, not only approached.
  if (slope(toC) * direction <= 0) return [];
  let timeS = 0;
  let tempC = fromC;
  for (let i = 0; i < MOST_STEPS; i += 1) {
    const smallK = Math.min(STEP_K, Math.abs(toC - fromC) / 50);
    // Near the steady temperature the slope vanishes; the step may not outgrow the time constant.
    const perS = (slope(tempC - 1) - slope(tempC + 1)) / 2;
    const dt = Math.min(
      smallK / Math.abs(slope(tempC)),
      perS > 0 ? SHARE_OF_CONSTANT / perS : Number.POSITIVE_INFINITY,
    );
    const next = step(slope, tempC, dt);
    if ((next - toC) * direction >= 0) {
      points.push({ timeS: timeS + partOfStep(slope, tempC, toC, dt), tempC: toC });
      return points;
    }
    timeS += dt;
    tempC = next;
    points.push({ timeS, tempC });
  }
  return [];
}

/** Seconds from one temperature to another; undefined when the body never gets there. */
export function lumpSeconds(body: Lump, fromC: number, toC: number): number | undefined {
  return lumpPath(body, fromC, toC).at(-1)?.timeS;
}
