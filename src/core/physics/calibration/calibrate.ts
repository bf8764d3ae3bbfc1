import { inRange, OutOfRangeError } from '../../units/index.ts';

/**
 * What is known of one number of one household's hardware (a factor on the
 * boil time of a kettle, the flow of a pour, the seconds to a glow). It is
 * positive, so its logarithm is what is estimated.
 */
export type Estimate = {
  readonly mean: number;
  /** Standard deviation relative to the mean: 0.1 is ±10 %. */
  readonly spread: number;
  /** Observations that were used. */
  readonly n: number;
  /** Observations set apart: too far from all that is known. */
  readonly outliers: readonly number[];
  /** All observations, in the order they came, for undoing. */
  readonly observations: readonly number[];
  readonly prior: Prior;
};

export type Prior = {
  readonly mean: number;
  readonly spread: number;
  /** Physical range that the mean never leaves. */
  readonly min: number;
  readonly max: number;
  /** Relative scatter of one measurement by a person. */
  readonly noise: number;
};

/** Hardware changes slowly (scale in a kettle): relative drift for each observation. */
const DRIFT = 0.01;
/** An observation further than so many standard deviations is set apart. */
const GATE = 3;
/** So many outliers in a row that agree with each other are the new truth: the hardware was changed. */
const AGREEING = 3;

/** State of the filter on the logarithm. */
type Filter = {
  readonly log: number;
  readonly variance: number;
  readonly n: number;
  readonly outliers: readonly number[];
  /** Outliers since the last accepted observation. */
  readonly suspects: readonly number[];
};

/** The least spread that is claimed: a person's clock is no better. */
const LEAST_SPREAD = 0.005;

function absorb(filter: Filter, value: number, noise: number): Filter {
  const variance = filter.variance + DRIFT ** 2;
  const gain = variance / (variance + noise ** 2);
  return {
    log: filter.log + gain * (Math.log(value) - filter.log),
    variance: (1 - gain) * variance,
    n: filter.n + 1,
    outliers: filter.outliers,
    suspects: [],
  };
}

/** Takes the suspects for the new truth when they agree among themselves. */
function reconsider(filter: Filter, prior: Prior): Filter {
  const { suspects } = filter;
  if (suspects.length < AGREEING) return filter;
  const recent = suspects.slice(-AGREEING);
  const logs = recent.map(Math.log);
  const centre = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  if (logs.some((log) => Math.abs(log - centre) > GATE * prior.noise)) return filter;
  return {
    log: centre,
    variance: prior.noise ** 2 / logs.length,
    n: logs.length,
    outliers: filter.outliers.slice(0, filter.outliers.length - recent.length),
    suspects: [],
  };
}

function take(filter: Filter, value: number, prior: Prior): Filter {
  if (value < prior.min || value > prior.max) {
    return { ...filter, outliers: [...filter.outliers, value] };
  }
  const distance = Math.abs(Math.log(value) - filter.log);
  if (distance <= GATE * Math.hypot(Math.sqrt(filter.variance), prior.noise, DRIFT)) {
    return absorb(filter, value, prior.noise);
  }
  return reconsider(
    {
      ...filter,
      outliers: [...filter.outliers, value],
      suspects: [...filter.suspects, value],
    },
    prior,
  );
}

function replay(prior: Prior, observations: readonly number[]): Estimate {
  const start: Filter = {
    log: Math.log(prior.mean),
    variance: prior.spread ** 2,
    n: 0,
    outliers: [],
    suspects: [],
  };
  const end = observations.reduce((filter, value) => take(filter, value, prior), start);
  return {
    mean: Math.min(prior.max, Math.max(prior.min, Math.exp(end.log))),
    spread: Math.max(LEAST_SPREAD, Math.sqrt(end.variance)),
    n: end.n,
    outliers: end.outliers,
    observations,
    prior,
  };
}

/**
 * What is assumed before anything was measured.
 * @throws OutOfRangeError
 */
export function startEstimate(prior: Prior): Estimate {
  if (!(prior.min > 0 && prior.max > prior.min)) {
    throw new OutOfRangeError('min', prior.min, 'more than 0 and less than max');
  }
  inRange('mean', prior.mean, prior.min, prior.max);
  inRange('spread', prior.spread, 0.001, 3);
  inRange('noise', prior.noise, 0.001, 1);
  return replay(prior, []);
}

/**
 * The estimate after one more observation. An observation far from all that
 * is known is kept apart; three such in a row that agree are believed.
 * @param observation finite and positive, in the unit of the mean
 * @throws OutOfRangeError
 * Source: recursive Bayesian estimate of a logarithmic normal quantity with a gate.
 */
export function learn(estimate: Estimate, observation: number): Estimate {
  if (!Number.isFinite(observation) || observation <= 0) {
    throw new OutOfRangeError('observation', observation, 'a number more than 0');
  }
  return replay(estimate.prior, [...estimate.observations, observation]);
}

/**
 * The estimate as if the observation at that place (from 0) had never been made.
 * @throws OutOfRangeError
 */
export function unlearn(estimate: Estimate, at: number): Estimate {
  if (!Number.isInteger(at) || at < 0 || at >= estimate.observations.length) {
    throw new OutOfRangeError(
      'at',
      at,
      `a whole number from 0 to ${estimate.observations.length - 1}`,
    );
  }
  return replay(estimate.prior, estimate.observations.toSpliced(at, 1));
}
