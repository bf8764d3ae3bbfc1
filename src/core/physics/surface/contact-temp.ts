import { inRange } from '../../units/index.ts';

/**
 * Temperature where two thick bodies touch, in the first moment, °C:
 * (e₁T₁ + e₂T₂)/(e₁ + e₂) with e = √(kρc).
 * @param hotEffusivity W·s^½/(m² K), 1 to 50 000
 * @throws OutOfRangeError
 * Source: Incropera & DeWitt, ch. 5.7 (two semi-infinite bodies).
 */
export function contactTemp(of: {
  readonly hotTempC: number;
  readonly hotEffusivity: number;
  readonly bodyTempC: number;
  readonly bodyEffusivity: number;
}): { readonly tempC: number } {
  inRange('hotTempC', of.hotTempC, -100, 1500);
  inRange('bodyTempC', of.bodyTempC, -100, 1500);
  inRange('hotEffusivity', of.hotEffusivity, 1, 50_000);
  inRange('bodyEffusivity', of.bodyEffusivity, 1, 50_000);
  const heat = of.hotEffusivity * of.hotTempC + of.bodyEffusivity * of.bodyTempC;
  return { tempC: heat / (of.hotEffusivity + of.bodyEffusivity) };
}
