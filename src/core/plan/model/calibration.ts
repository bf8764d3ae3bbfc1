/** One number that runs taught: its mean, its relative spread, and from how many reports. */
export type CalibrationFactor = {
  readonly mean: number;
  readonly spread: number;
  readonly n: number;
};

/**
 * What the runs of one kitchen taught about its hardware and the person's hand.
 * Plain data: kept by the host, read by the next plan, carried inside it.
 * Factors are measured over estimated; what is not there was not taught.
 */
export type Calibration = {
  /** Seconds to the boil, by vessel id. */
  readonly boil?: Readonly<Record<string, CalibrationFactor>>;
  /** Seconds from lighting to a visible glow, by burner id. */
  readonly glow?: Readonly<Record<string, CalibrationFactor>>;
  /** Seconds until an oven is at its highest, by oven id. */
  readonly heatUp?: Readonly<Record<string, CalibrationFactor>>;
  /** Seconds until it may be touched, by burner or oven id; only ever longer than estimated. */
  readonly cool?: Readonly<Record<string, CalibrationFactor>>;
  /** Stream of the person's pour, L/min. */
  readonly flowLMin?: CalibrationFactor;
  /** How far one kettle reached over how far it was estimated to. */
  readonly reach?: CalibrationFactor;
};
