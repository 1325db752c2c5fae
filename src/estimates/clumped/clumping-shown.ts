/**
 * What the counts of one stratum in one earlier survey show about clumping: a log likelihood for each k of the
 * negative binomial and for each sigma of the log-normal-Poisson, the density flat in logarithm and summed out.
 *
 * An archive of twenty surveys, five strata and thirty species asks three thousand times. Much of what the two models
 * need does not depend on the stratum (its logarithms, gamma functions and rows of probabilities), and is tabulated
 * as it is met; the sums are those of the models themselves, to the last digit, and the test holds them together.
 */

import { logGamma } from '../../maths/distributions.ts';
import { logObservedDensity } from './clumped-posterior.ts';
import { distinctCounts } from './distinct-counts.ts';
import { logSumExp } from './log-sum.ts';
import { type LogProbabilitiesAt, lognormalPoisson } from './lognormal-poisson.ts';
import { LATTICE_STEP_LOG } from './mass-lattice.ts';
import { areaGroups } from './negative-binomial.ts';
import { requireStationCounts, SQUARE_METRES_PER_HA, type StationCount } from './station-count.ts';

const STRIDE = 4;
/** Clumping shows near the observed mean: a factor of 55 to either side is more than enough. */
const REACH_LOG = 4;
const FEWEST_STATIONS = 3;
/** About 50 MB of columns; then everything is forgotten and the tables start anew. */
const MOST_COLUMNS = 150_000;

export interface ClumpingShown {
  readonly ofK: Float64Array;
  readonly ofSigma: Float64Array;
}

/** Null where too few stations or no animals show nothing. */
export type ClumpingReader = (counts: readonly StationCount[]) => ClumpingShown | null;

export function clumpingReader(ks: Float64Array, sigmas: Float64Array): ClumpingReader {
  let tables = makeTables(ks, sigmas);
  return (counts) => {
    if (counts.length < FEWEST_STATIONS || counts.every((count) => count.animals === 0)) return null;
    requireStationCounts(counts);
    if (tables.columns() > MOST_COLUMNS) tables = makeTables(ks, sigmas);
    const range = rangeOf(counts);
    return {
      ofK: densitySummedOut(negativeBinomialColumns(counts, range, { ks, tables }), ks.length),
      ofSigma: densitySummedOut(lognormalColumns(counts, range, { sigmas, tables }), sigmas.length),
    };
  };
}

/** Columns of log density: lattice points STRIDE apart, `first` and `last` counted in strides. */
interface Range {
  readonly first: number;
  readonly last: number;
}

function rangeOf(counts: readonly StationCount[]): Range {
  const centre = logObservedDensity(counts);
  return {
    first: Math.ceil((centre - REACH_LOG) / LATTICE_STEP_LOG / STRIDE),
    last: Math.floor((centre + REACH_LOG) / LATTICE_STEP_LOG / STRIDE),
  };
}

function logDensityOf(column: number): number {
  return column * STRIDE * LATTICE_STEP_LOG;
}

/** The log likelihood of `negativeBinomialLikelihood`, column by column. */
function negativeBinomialColumns(
  counts: readonly StationCount[],
  { first, last }: Range,
  { ks, tables }: { readonly ks: Float64Array; readonly tables: Tables },
): Float64Array {
  const constants = new Float64Array(ks.length);
  for (const { animals } of counts) {
    if (animals === 0) continue;
    const terms = tables.countTerms(animals);
    for (let j = 0; j < ks.length; j++) constants[j] = constants[j]! + terms[j]!;
  }
  const groups = areaGroups(counts).map((group) => ({
    ...group,
    logArea: Math.log(group.areaHa),
    totals: tables.logTotals(group.areaHa, first, last),
  }));
  const logKs = tables.logKs;
  const into = new Float64Array((last - first + 1) * ks.length);
  for (let column = first; column <= last; column++) {
    const at = (column - first) * ks.length;
    into.set(constants, at);
    for (const { stations, animals, logArea, totals } of groups) {
      const logMean = logDensityOf(column) + logArea;
      const from = (column - totals.first) * ks.length;
      for (let j = 0; j < ks.length; j++) {
        const logTotal = totals.values[from + j]!;
        into[at + j] =
          into[at + j]! + stations * ks[j]! * (logKs[j]! - logTotal) + animals * (logMean - logTotal);
      }
    }
  }
  return into;
}

/** The log likelihood of `ProbabilityRows`, column by column. */
function lognormalColumns(
  counts: readonly StationCount[],
  { first, last }: Range,
  { sigmas, tables }: { readonly sigmas: Float64Array; readonly tables: Tables },
): Float64Array {
  const into = new Float64Array((last - first + 1) * sigmas.length);
  for (const { animals, areaM2, stations } of distinctCounts(counts)) {
    const { first: start, values } = tables.logProbabilities(animals, areaM2, first, last);
    const from = (first - start) * sigmas.length;
    for (let i = 0; i < into.length; i++) into[i] = into[i]! + stations * values[from + i]!;
  }
  return into;
}

function densitySummedOut(columns: Float64Array, values: number): Float64Array {
  const one = new Float64Array(columns.length / values);
  return Float64Array.from({ length: values }, (_, j) => {
    for (let i = 0; i < one.length; i++) one[i] = columns[i * values + j]!;
    return logSumExp(one);
  });
}

/** Columns of numbers one after the other, as many as were ever asked for without a gap. */
interface Block {
  readonly first: number;
  readonly last: number;
  readonly values: Float64Array;
}

type Tables = ReturnType<typeof makeTables>;

function makeTables(ks: Float64Array, sigmas: Float64Array) {
  const terms = new Map<number, Float64Array>();
  const totals = new Map<number, Block>();
  const probabilities = new Map<string, Block>();
  const mixtures = new Map<number, LogProbabilitiesAt>();
  const logGammaKs = ks.map(logGamma);
  let columns = 0;

  function grown(known: Block | undefined, range: Range, width: number, columnAt: ColumnAt): Block {
    if (known !== undefined && known.first <= range.first && known.last >= range.last) return known;
    const first = Math.min(range.first, known?.first ?? range.first);
    const last = Math.max(range.last, known?.last ?? range.last);
    const values = new Float64Array((last - first + 1) * width);
    if (known !== undefined) values.set(known.values, (known.first - first) * width);
    for (let column = first; column <= last; column++) {
      if (known !== undefined && column >= known.first && column <= known.last) continue;
      values.set(columnAt(column), (column - first) * width);
      columns += 1;
    }
    return { first, last, values };
  }

  return {
    logKs: ks.map(Math.log),
    /** How many are held. */
    columns: () => columns + terms.size,
    /** log[ gamma(k + x) / (gamma(k) x!) ] of one count, for each k. */
    countTerms: (animals: number): Float64Array => {
      const known = terms.get(animals);
      if (known !== undefined) return known;
      const logFactorial = logGamma(animals + 1);
      const made = ks.map((k, j) => logGamma(k + animals) - logGammaKs[j]! - logFactorial);
      terms.set(animals, made);
      return made;
    },
    /** log(k + mean) for each k. */
    logTotals: (areaHa: number, first: number, last: number): Block => {
      const columnAt = (column: number) => {
        const mean = Math.exp(logDensityOf(column)) * areaHa;
        return ks.map((k) => Math.log(k + mean));
      };
      const block = grown(totals.get(areaHa), { first, last }, ks.length, columnAt);
      totals.set(areaHa, block);
      return block;
    },
    /** Log probability of one count on one area, for each sigma. */
    logProbabilities: (animals: number, areaM2: number, first: number, last: number): Block => {
      const key = `${animals} ${areaM2}`;
      const logAreaHa = Math.log(areaM2 / SQUARE_METRES_PER_HA);
      const mixture = mixtures.get(animals) ?? lognormalPoisson(animals, sigmas);
      mixtures.set(animals, mixture);
      const columnAt = (column: number) => mixture(logDensityOf(column) + logAreaHa);
      const block = grown(probabilities.get(key), { first, last }, sigmas.length, columnAt);
      probabilities.set(key, block);
      return block;
    },
  };
}

type ColumnAt = (column: number) => Float64Array;
