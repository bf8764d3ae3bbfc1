import { band, inRange, type Band } from '../../units/index.ts';
import { GRAVITY_MS2, USUAL_ROOM_C } from '../common/constants.ts';
import { water } from '../water/water.ts';
import { flowM3S } from './flow.ts';
import { steamLoss } from './steam-loss.ts';

/** Height a household kettle is held over the surface, m; common practice, no published source. */
export const SPOUT_HEIGHT_M = 0.2;
/** Speed of the stream as it leaves the spout, m/s; common practice, no published source. */
const SPOUT_SPEED_MS = 0.3;
/** Air half way between room and stream: conductivity W/(m K), diffusivity m²/s. Incropera A.4, from memory. */
const AIR_WMK = 0.029;
const AIR_M2S = 2.8e-5;
/** Equal lengths of the fall. */
const STEPS = 24;
/** Halvings that find the skin's temperature to a ten-thousandth of a kelvin. */
const HALVINGS = 20;

/** Speed of a stream after a fall, m/s. */
export function streamSpeedMS(fallM: number): number {
  return Math.sqrt(SPOUT_SPEED_MS ** 2 + 2 * GRAVITY_MS2 * fallM);
}

/** Radius of a stream after a fall, m. */
export function streamRadiusM(flow: number, fallM: number): number {
  return Math.sqrt(flow / (Math.PI * streamSpeedMS(fallM)));
}

export type Fall = {
  readonly flowLMin: number;
  /** Water at the spout, °C. */
  readonly spoutC: number;
  /** Boiling point of the place, °C. */
  readonly boilingC: number;
  readonly fallM?: number;
};

type Meeting = {
  readonly bulkC: number;
  readonly radiusM: number;
  /** Since it left the spout. */
  readonly timeS: number;
};

/** Air that a thin stream has just met takes heat as still air does round a cylinder, W/(m² K). */
function airWM2K({ radiusM, timeS }: Meeting): number {
  return (AIR_WMK / radiusM) * (1 / Math.sqrt((Math.PI * AIR_M2S * timeS) / radiusM ** 2) + 0.5);
}

/** Heat through the skin of a smooth stream, W/m²: what the water below gives the skin and the skin gives the air. */
function smoothWM2(meeting: Meeting, outK: (tempC: number) => number): number {
  const { bulkC, timeS } = meeting;
  const { densityKgM3, heatCapacityJKgK, conductivityWMK } = water({ tempC: bulkC });
  const inWM2K = Math.sqrt((conductivityWMK * densityKgM3 * heatCapacityJKgK) / (Math.PI * timeS));
  const outWM2K = airWM2K(meeting);
  let [low, high] = [USUAL_ROOM_C, bulkC];
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (low + high) / 2;
    if (inWM2K * (bulkC - middle) > outWM2K * outK(middle)) low = middle;
    else high = middle;
  }
  return inWM2K * (bulkC - low);
}

function lossOf(of: Required<Fall>, outK: (tempC: number) => number, mixes: boolean): number {
  const flow = flowM3S(of.flowLMin);
  const { densityKgM3, heatCapacityJKgK } = water({ tempC: of.spoutC });
  const stepM = of.fallM / STEPS;
  let bulkC = of.spoutC;
  let timeS = 0;
  for (let i = 0; i < STEPS; i += 1) {
    const fallenM = (i + 0.5) * stepM;
    const stepS = stepM / streamSpeedMS(fallenM);
    const radiusM = streamRadiusM(flow, fallenM);
    const meeting = { bulkC, radiusM, timeS: timeS + stepS / 2 };
    const leavingWM2 = mixes ? airWM2K(meeting) * outK(bulkC) : smoothWM2(meeting, outK);
    const skinM2 = 2 * Math.PI * radiusM * stepM;
    bulkC -= (leavingWM2 * skinM2) / (flow * densityKgM3 * heatCapacityJKgK);
    timeS += stepS;
  }
  return of.spoutC - bulkC;
}

/**
 * What a stream loses from the spout to the surface, K, nearly all of it by
 * evaporation. The low end: a smooth stream whose skin cools before its core;
 * the high end: one that mixes as it falls; typical: half way.
 * @param flowLMin 0.2 to 12 L/min
 * @param spoutC 40 °C to boiling
 * @param fallM 0.02 to 1 m; default 0.2
 * @throws OutOfRangeError
 * Source: conduction at short times from a cylinder into still air, and from
 * the stream to its skin (Carslaw & Jaeger, 13.5 and 2.5, from memory);
 * evaporation as in steamLoss.
 */
export function jetLoss(of: Fall): { readonly lossK: Band } {
  const boilingC = inRange('boilingC', of.boilingC, 60, 105);
  const spoutC = inRange('spoutC', of.spoutC, 40, boilingC);
  const fallM = inRange('fallM', of.fallM ?? SPOUT_HEIGHT_M, 0.02, 1);
  const fall = { flowLMin: of.flowLMin, spoutC, boilingC, fallM };
  const outK = steamLoss(boilingC);
  const low = lossOf(fall, outK, false);
  const high = lossOf(fall, outK, true);
  return { lossK: band(low, (low + high) / 2, high) };
}
