/** A round step for an axis: 1, 2 or 5 times a power of ten, so that at most `most` steps fit. */
function roundStep(span: number, most: number): number {
  const rough = Math.max(span, 1e-9) / most;
  const power = 10 ** Math.floor(Math.log10(rough));
  const factor = [1, 2, 5, 10].find((one) => one * power >= rough * (1 - 1e-9)) ?? 10;
  return factor * power;
}

/** Round numbers from `from` to `to`, both ends inside. */
export function ticks(from: number, to: number, most: number): readonly number[] {
  const step = roundStep(to - from, most);
  const first = Math.ceil(from / step - 1e-9) * step;
  return Array.from({ length: Math.floor((to - first) / step + 1e-9) + 1 }, (_, i) =>
    Number((first + i * step).toPrecision(12)),
  );
}

/** Steps of time that a cook reads: seconds, minutes, hours. */
const TIME_STEPS_S = [10, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14_400];

export function timeTicks(toS: number, most: number): readonly number[] {
  const step = TIME_STEPS_S.find((one) => toS / one <= most) ?? 28_800;
  return Array.from({ length: Math.floor(toS / step) + 1 }, (_, i) => i * step);
}
