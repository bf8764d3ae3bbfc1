/** Below this the series is short and exact, above it the continued fraction is. */
const CROSSOVER = 2;
const SERIES_TERMS = 200;
const FRACTION_TERMS = 120;

/** erf by its all-positive series e^(−x²)·Σ 2ⁿx^(2n+1)/(2n+1)!!; no cancellation. Abramowitz & Stegun 7.1.6. */
function series(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; n < SERIES_TERMS && term > sum * 1e-17; n += 1) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}

/** e^(x²)·erfc(x) for x ≥ 2 by its continued fraction from the tail. Abramowitz & Stegun 7.1.14. */
function fraction(x: number): number {
  let tail = x;
  for (let n = FRACTION_TERMS; n >= 1; n -= 1) tail = x + n / 2 / tail;
  return 1 / (Math.sqrt(Math.PI) * tail);
}

/** Error function. */
export function erf(x: number): number {
  if (x < 0) return -erf(-x);
  return x < CROSSOVER ? series(x) : 1 - Math.exp(-x * x) * fraction(x);
}

/** Complementary error function, to full relative precision for large x. */
export function erfc(x: number): number {
  if (x < CROSSOVER) return 1 - erf(x);
  return Math.exp(-x * x) * fraction(x);
}

/** e^(x²)·erfc(x) for x ≥ 0, which neither overflows nor underflows. */
export function erfcScaled(x: number): number {
  return x < CROSSOVER ? Math.exp(x * x) * erfc(x) : fraction(x);
}
