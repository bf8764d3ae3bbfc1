import { inRange } from '../../units/index.ts';

/** Resistance between a room (its air and its other walls) and an inside surface, m² K/W. CIBSE Guide A. */
const SURFACE_RESISTANCE_M2KW = 0.12;

/**
 * Admittance of a thick layer for a swing of that period, W/(m² K):
 * |1/(Rsi + 1/(e·√(2π/P)·e^(iπ/4)))|.
 * @param effusivity √(kρc) of the layer, W·s^½/(m² K)
 * @param periodS 60 to 604 800 s
 * @throws OutOfRangeError
 * Source: CIBSE Guide A, ch. 5 (from memory).
 */
export function admittance(of: { readonly effusivity: number; readonly periodS: number }): {
  readonly admittanceWM2K: number;
} {
  const e = inRange('effusivity', of.effusivity, 10, 10_000);
  const period = inRange('periodS', of.periodS, 60, 604_800);
  const layer = e * Math.sqrt((2 * Math.PI) / period);
  // 1/(layer·e^(iπ/4)) has equal real and (negative) imaginary parts.
  const part = Math.SQRT1_2 / layer;
  return { admittanceWM2K: 1 / Math.hypot(SURFACE_RESISTANCE_M2KW + part, part) };
}
