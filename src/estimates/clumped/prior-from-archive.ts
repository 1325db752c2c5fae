import {
  type ClumpedPriors,
  DEFAULT_CLUMPED_PRIORS,
  kGrid,
  type LogNormalPrior,
  weighted,
} from './clumped-priors.ts';
import { type ClumpingReader, type ClumpingShown, clumpingReader } from './clumping-shown.ts';
import { logSumExp } from './log-sum.ts';
import { COARSE_SIGMAS, sigmaGrid } from './posterior-tools.ts';
import type { StationCount } from './station-count.ts';

/** A prior from an archive is never surer of itself than this, in standard deviations of the logarithm. */
const NARROWEST_SD_LOG_K = 0.6;
const NARROWEST_SD_LOG_SIGMA = 0.3;
/** The medians move at most this far, in standard deviations of the default prior. */
const FURTHEST_IN_SD = 0.5;

/** Station counts of one stratum in one earlier survey: stations that share one mean density. */
export type EarlierCounts = readonly StationCount[];

/**
 * Priors of clumping as shown by earlier surveys of the same species and method; each list is
 * one stratum of one survey.
 *
 * Every survey has its own density, summed out; clumping is held common. The default prior times what
 * the surveys show gives a belief about k and about sigma; its median and standard deviation make the
 * new prior, never narrower than 0.6 (log k) and 0.3 (log sigma), since another year need not clump
 * alike, and no further than half a default standard deviation from the default median (k from 0.23 to
 * 0.52, sigma from 1.15 to 1.71): docs/methods/clumped-interval.md shows what happens without. Surveys with fewer than three stations or without animals show no clumping and are passed
 * over; when none is left the default comes back, and `source` says so.
 */
export function priorFromArchive(surveys: readonly EarlierCounts[]): ClumpedPriors {
  return priorFromClumping(surveys.map(clumpingShownBy).filter((shown) => shown !== null));
}

const ks = kGrid(DEFAULT_CLUMPED_PRIORS.negativeBinomialK);
const sigmas = weighted(sigmaGrid(COARSE_SIGMAS), DEFAULT_CLUMPED_PRIORS.logRateSd);

/** All that is costly in a prior, and the same for any survey that comes after. */
export const clumpingShownBy: ClumpingReader = clumpingReader(ks.values, sigmas.values);

/** The prior of `priorFromArchive`, from what each stratum of each survey shows. */
export function priorFromClumping(shown: readonly ClumpingShown[]): ClumpedPriors {
  if (shown.length === 0) return DEFAULT_CLUMPED_PRIORS;
  const overK = Float64Array.from(ks.logWeights);
  const overSigma = Float64Array.from(sigmas.logWeights);
  for (const { ofK, ofSigma } of shown) {
    for (let j = 0; j < overK.length; j++) overK[j] = overK[j]! + ofK[j]!;
    for (let j = 0; j < overSigma.length; j++) overSigma[j] = overSigma[j]! + ofSigma[j]!;
  }
  const { negativeBinomialK, logRateSd, models } = DEFAULT_CLUMPED_PRIORS;
  return {
    source: 'archive',
    negativeBinomialK: held(summary(ks.values, overK, NARROWEST_SD_LOG_K), negativeBinomialK),
    logRateSd: held(summary(sigmas.values, overSigma, NARROWEST_SD_LOG_SIGMA), logRateSd),
    models,
    earlierSurveys: shown.length,
  };
}

/** The median shown, but no further from the default's than half a standard deviation of the default. */
function held(shown: LogNormalPrior, usual: LogNormalPrior): LogNormalPrior {
  const most = Math.exp(FURTHEST_IN_SD * usual.sdLog);
  const median = Math.min(usual.median * most, Math.max(usual.median / most, shown.median));
  return { ...shown, median };
}

/** Median and standard deviation of the logarithm of a belief on equally spaced logarithms. */
function summary(values: Float64Array, logWeights: Float64Array, narrowestSdLog: number): LogNormalPrior {
  const all = logSumExp(logWeights);
  const shares = Array.from(logWeights, (logWeight) => Math.exp(logWeight - all));
  const mean = shares.reduce((sum, share, j) => sum + share * Math.log(values[j]!), 0);
  const variance = shares.reduce((sum, share, j) => sum + share * (Math.log(values[j]!) - mean) ** 2, 0);
  return { median: medianOf(values, shares), sdLog: Math.max(narrowestSdLog, Math.sqrt(variance)) };
}

/** Half of each point's share lies to either side of it; between points the median is interpolated in logarithms. */
function medianOf(values: Float64Array, shares: readonly number[]): number {
  let below = 0;
  for (let j = 0; j < shares.length - 1; j++) {
    const here = below + shares[j]! / 2;
    const next = below + shares[j]! + shares[j + 1]! / 2;
    if (next >= 0.5) {
      const part = Math.max(0, (0.5 - here) / (next - here));
      return values[j]! * (values[j + 1]! / values[j]!) ** part;
    }
    below += shares[j]!;
  }
  return values[values.length - 1]!;
}
