import { logObservedDensity } from './clumped-posterior.ts';
import { type ClumpedPriors, DEFAULT_CLUMPED_PRIORS, type LogNormalPrior } from './clumped-priors.ts';
import { logSumExp } from './log-sum.ts';
import { LATTICE_STEP_LOG } from './mass-lattice.ts';
import { type LogLikelihoodAt, negativeBinomialLikelihood } from './negative-binomial.ts';
import { COARSE_SIGMAS, createRows, createTools, type PosteriorTools } from './posterior-tools.ts';
import { requireStationCounts, type StationCount } from './station-count.ts';

/** A prior from an archive is never surer of itself than this, in standard deviations of the logarithm. */
const NARROWEST_SD_LOG_K = 0.6;
const NARROWEST_SD_LOG_SIGMA = 0.3;
/** The medians move at most this far, in standard deviations of the default prior. */
const FURTHEST_IN_SD = 0.5;
const STRIDE = 4;
/** Clumping shows near the observed mean: a factor of 55 to either side is more than enough. */
const REACH_LOG = 4;
const FEWEST_STATIONS = 3;

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
export function priorFromArchive(
  surveys: readonly EarlierCounts[],
  tools: PosteriorTools = createTools(DEFAULT_CLUMPED_PRIORS, createRows(COARSE_SIGMAS)),
): ClumpedPriors {
  const speaking = surveys.filter(
    (survey) => survey.length >= FEWEST_STATIONS && survey.some((station) => station.animals > 0),
  );
  if (speaking.length === 0) return DEFAULT_CLUMPED_PRIORS;
  const overK = Float64Array.from(tools.ks.logWeights);
  const overSigma = Float64Array.from(tools.sigmas.logWeights);
  for (const survey of speaking) {
    requireStationCounts(survey);
    const negativeBinomial = negativeBinomialLikelihood(survey, tools.ks.values);
    const lognormalPoisson = tools.rows.likelihood(survey);
    addDensitySummedOut(overK, survey, (index, into) => negativeBinomial(index * LATTICE_STEP_LOG, into));
    addDensitySummedOut(overSigma, survey, lognormalPoisson);
  }
  const { negativeBinomialK, logRateSd, models } = DEFAULT_CLUMPED_PRIORS;
  return {
    source: 'archive',
    negativeBinomialK: held(summary(tools.ks.values, overK, NARROWEST_SD_LOG_K), negativeBinomialK),
    logRateSd: held(summary(tools.sigmas.values, overSigma, NARROWEST_SD_LOG_SIGMA), logRateSd),
    models,
    earlierSurveys: speaking.length,
  };
}

/** Adds one survey's log likelihood of each clumping value, its density flat in logarithm and summed out. */
function addDensitySummedOut(
  total: Float64Array,
  survey: readonly StationCount[],
  at: LogLikelihoodAt,
): void {
  const centre = logObservedDensity(survey);
  const first = Math.ceil((centre - REACH_LOG) / LATTICE_STEP_LOG / STRIDE) * STRIDE;
  const last = (centre + REACH_LOG) / LATTICE_STEP_LOG;
  const columns: Float64Array[] = [];
  for (let index = first; index <= last; index += STRIDE) {
    const column = new Float64Array(total.length);
    at(index, column);
    columns.push(column);
  }
  for (let j = 0; j < total.length; j++)
    total[j] = total[j]! + logSumExp(columns.map((column) => column[j]!));
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
