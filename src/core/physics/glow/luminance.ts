import { inRange } from '../../units/index.ts';
import { ZERO_C_K } from '../common/constants.ts';

/** Luminous efficacy of light at 540 THz, lm/W. SI by definition (683 at 555.016 nm; 683.002 for the peak of V(λ)). */
const EFFICACY_LMW = 683.002;
/** First and second radiation constants for radiance: 2hc² (W m²/sr) and hc/k (m K). SI 2019. */
const FIRST_WM2SR = 1.191042972e-16;
const SECOND_MK = 1.438776877e-2;
/** Visible range and step of the sum, nm. */
const FROM_NM = 360;
const TO_NM = 830;
const STEP_NM = 1;
const M_NM = 1e-9;

/** Two-lobe fit of the CIE 1931 ȳ(λ): weight, centre (nm), widths below and above (nm). Wyman, Sloan & Shirley 2013. */
const LOBES = [
  [0.821, 568.8, 46.9, 40.5],
  [0.286, 530.9, 16.3, 31.1],
] as const;

function eye(nm: number): number {
  return LOBES.reduce((sum, [weight, centre, below, above]) => {
    const z = (nm - centre) / (nm < centre ? below : above);
    return sum + weight * Math.exp(-(z ** 2) / 2);
  }, 0);
}

/**
 * Luminance of a glowing body, cd/m²: 683·∫ ȳ(λ)·L(λ,T) dλ × emissivity.
 * @param tempC 300 to 3000 °C
 * @param emissivity 0.01 to 1
 * @throws OutOfRangeError
 * Source: Planck's law; CIE ȳ as fitted by Wyman, Sloan & Shirley (2013).
 */
export function luminance(of: { readonly tempC: number; readonly emissivity?: number }): {
  readonly luminanceCdM2: number;
} {
  const kelvin = inRange('tempC', of.tempC, 300, 3000) + ZERO_C_K;
  const emissivity = inRange('emissivity', of.emissivity ?? 1, 0.01, 1);
  let sum = 0;
  for (let nm = FROM_NM; nm <= TO_NM; nm += STEP_NM) {
    const m = nm * M_NM;
    sum += (eye(nm) * FIRST_WM2SR) / (m ** 5 * Math.expm1(SECOND_MK / (m * kelvin)));
  }
  return { luminanceCdM2: EFFICACY_LMW * emissivity * sum * STEP_NM * M_NM };
}

/**
 * Temperature at which a body is that bright, °C.
 * @param luminanceCdM2 1e-6 to 1e5
 * @throws OutOfRangeError
 */
export function tempOfLuminance(of: {
  readonly luminanceCdM2: number;
  readonly emissivity?: number;
}): { readonly tempC: number } {
  inRange('luminanceCdM2', of.luminanceCdM2, 1e-6, 1e5);
  let low = 300;
  let high = 3000;
  for (let i = 0; i < 34; i += 1) {
    const tempC = (low + high) / 2;
    if (luminance({ ...of, tempC }).luminanceCdM2 < of.luminanceCdM2) low = tempC;
    else high = tempC;
  }
  return { tempC: (low + high) / 2 };
}
