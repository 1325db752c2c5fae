import { type ClumpedPriors, kGrid, type PriorGrid, weighted } from './clumped-priors.ts';
import { createProbabilityRows, type ProbabilityRows } from './probability-rows.ts';

/** What a posterior needs besides the counts. */
export interface PosteriorTools {
  readonly priors: ClumpedPriors;
  readonly ks: PriorGrid;
  readonly sigmas: PriorGrid;
  readonly rows: ProbabilityRows;
}

const SMALLEST_LOG_RATE_SD = 0.2;
const LARGEST_LOG_RATE_SD = 6.5;
/** Steps of 0.13 in log sigma: no wider than what thirty stations know of it. */
export const COARSE_SIGMAS = 28;
/** Half that step, for surveys of more stations. */
export const FINE_SIGMAS = 2 * COARSE_SIGMAS - 1;

export function createTools(priors: ClumpedPriors, rows: ProbabilityRows): PosteriorTools {
  return {
    priors,
    ks: kGrid(priors.negativeBinomialK),
    sigmas: weighted(rows.sigmas, priors.logRateSd),
    rows,
  };
}

/** An empty memory of rows on one list of sigmas for all priors, so that priors can share it. */
export function createRows(sigmas: number): ProbabilityRows {
  return createProbabilityRows(sigmaGrid(sigmas));
}

/** Standard deviations of the log rate on equally spaced logarithms. */
export function sigmaGrid(sigmas: number): Float64Array {
  const step = Math.log(LARGEST_LOG_RATE_SD / SMALLEST_LOG_RATE_SD) / (sigmas - 1);
  return Float64Array.from({ length: sigmas }, (_, j) => SMALLEST_LOG_RATE_SD * Math.exp(j * step));
}
