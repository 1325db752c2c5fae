/** A belief about a positive number: its logarithm is normal around log(median) with this standard deviation. */
export interface LogNormalPrior {
  readonly median: number;
  readonly sdLog: number;
}

/** Shares of belief in the three models: negative binomial, log-normal-Poisson, and not clumped at all. */
export interface ModelShares {
  readonly nb: number;
  readonly pln: number;
  readonly poisson: number;
}

/**
 * What is believed about the clumping of the animals before this survey's counts are seen.
 *
 * `negativeBinomialK` is k in variance = mean + mean^2 / k: small k, strong clumping. `logRateSd` is
 * the standard deviation between stations of the logarithm of the expected count. `source` says
 * where the belief comes from, and is printed with the result.
 */
export interface ClumpedPriors {
  readonly source: 'default' | 'archive';
  readonly negativeBinomialK: LogNormalPrior;
  readonly logRateSd: LogNormalPrior;
  /** Belief in each model before the counts; the three add up to one. */
  readonly models: ModelShares;
  /** How many earlier surveys speak in an archive prior; 0 for the default. */
  readonly earlierSurveys: number;
}

/** The prior of the house: docs/methods/clumped-interval.md gives the measurements behind it. */
export const DEFAULT_CLUMPED_PRIORS: ClumpedPriors = {
  source: 'default',
  negativeBinomialK: { median: 0.35, sdLog: 0.8 },
  logRateSd: { median: 1.4, sdLog: 0.4 },
  models: { nb: 0.49, pln: 0.49, poisson: 0.02 },
  earlierSurveys: 0,
};

/** A prior laid on a list of values: logarithms of weights that sum to one. */
export interface PriorGrid {
  readonly values: Float64Array;
  readonly logWeights: Float64Array;
}

const REACH_IN_SD = 3.3;
const K_POINTS = 48;

/** The prior of k on equally spaced logarithms over 3.3 prior standard deviations to either side. */
export function kGrid(prior: LogNormalPrior): PriorGrid {
  const values = Float64Array.from({ length: K_POINTS }, (_, j) => {
    const inSd = REACH_IN_SD * ((2 * j) / (K_POINTS - 1) - 1);
    return prior.median * Math.exp(inSd * prior.sdLog);
  });
  return weighted(values, prior);
}

/** The prior on values already chosen, whose logarithms must be equally spaced. */
export function weighted(values: Float64Array, prior: LogNormalPrior): PriorGrid {
  const logWeights = values.map((value) => -0.5 * (Math.log(value / prior.median) / prior.sdLog) ** 2);
  const total = logWeights.reduce((sum, logWeight) => sum + Math.exp(logWeight), 0);
  return { values, logWeights: logWeights.map((logWeight) => logWeight - Math.log(total)) };
}
