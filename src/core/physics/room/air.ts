import { inRange, OutOfRangeError } from '../../units/index.ts';

export type AirInput = {
  readonly volumeM3: number;
  readonly airChangesPerH: number;
  readonly emissionMgH: number;
  readonly outdoorMgM3: number;
  readonly startMgM3: number;
  readonly depositionPerH: number;
  readonly timeH: number;
};

/**
 * Concentration in one well-mixed room after a time, and where it tends to, mg/m³.
 * @throws OutOfRangeError also when nothing removes the substance
 * Source: mass balance of one zone, C = Css + (C0 − Css)·e^(−λt),
 * λ = N + k, Css = (N·Cout + G/V)/λ.
 */
export function air(of: AirInput): {
  readonly concentrationMgM3: number;
  readonly steadyMgM3: number;
} {
  const volume = inRange('volumeM3', of.volumeM3, 1, 10_000);
  const changes = inRange('airChangesPerH', of.airChangesPerH, 0, 500);
  const emission = inRange('emissionMgH', of.emissionMgH, 0, 1e9);
  const outdoor = inRange('outdoorMgM3', of.outdoorMgM3, 0, 1e5);
  const start = inRange('startMgM3', of.startMgM3, 0, 1e6);
  const deposition = inRange('depositionPerH', of.depositionPerH, 0, 100);
  const hours = inRange('timeH', of.timeH, 0, 1e4);
  const removal = changes + deposition;
  if (removal === 0) {
    throw new OutOfRangeError(
      'airChangesPerH',
      0,
      'more than 0, or depositionPerH more than 0',
      'Every room leaks: enter about 0.3.',
    );
  }
  const steady = (changes * outdoor + emission / volume) / removal;
  return {
    concentrationMgM3: steady + (start - steady) * Math.exp(-removal * hours),
    steadyMgM3: steady,
  };
}
