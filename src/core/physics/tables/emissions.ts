import table from '../../../../shared/air/emissions.json';
import type { Band } from '../../units/index.ts';

export type Pollutant = 'NO2' | 'CO' | 'CO2' | 'H2O';

export type EmissionFactor = {
  readonly pollutant: Pollutant;
  /** Given off for each joule of gas, ng/J. */
  readonly ngJ: Band;
  readonly depositionPerH: Band;
  readonly outdoorMgM3: number;
  readonly source: string;
};

export type AirLimit = {
  readonly pollutant: Pollutant;
  readonly id: string;
  readonly mgM3: number;
  readonly averagingH: number;
  readonly source: string;
};

type HoodKind = 'none' | 'unknown' | 'recirculating' | 'vented';

export const AIR_LIMITS = table.limits as readonly AirLimit[];

const FACTORS = table.factors as readonly EmissionFactor[];

/** What a gas flame gives off. */
export function emissionFactor(pollutant: Pollutant): EmissionFactor {
  const row = FACTORS.find((found) => found.pollutant === pollutant);
  if (!row) throw new RangeError(`no emission factor for ${pollutant}`);
  return row;
}

/**
 * Share of the plume over a front burner that the hood takes away; a hood that
 * is not told takes nothing.
 * @param flowLS of a vented hood, L/s: too little never reaches the best
 * Source: Singer, Delp et al.; see captureMeasured in the table for what was measured.
 */
export function hoodCapture(kind: HoodKind, flowLS?: number): Band {
  // A flow that is not told counts as no hood.
  if (flowLS === 0) return table.capture.none;
  const capture = table.capture[kind];
  const { leastLS, captureMost } = table.frontCaptureFlow;
  if (kind !== 'vented' || flowLS === undefined || flowLS >= leastLS) return capture;
  return { ...capture, high: Math.min(capture.high, captureMost) };
}
