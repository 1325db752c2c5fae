import { mean, sampleVariance, sum } from '../maths/variance.ts';
import { neighbourWeights } from './neighbour-weights.ts';

export interface SpreadStations {
  /** One value per station, zeros included. */
  readonly values: readonly number[];
  /** Inclusion probability of each station, in any common unit (stations per hectare will do). */
  readonly inclusion: readonly number[];
  /** Metres (or any length) between stations i and j. */
  readonly distance: (i: number, j: number) => number;
}

export interface SpreadVariance {
  /** Variance of the total, sum of values over inclusion; null for fewer than two stations. */
  readonly varianceOfTotal: number | null;
  readonly total: number;
  /** 'simple' where a neighbourhood could not be made: the usual formula, which is rather too large. */
  readonly method: 'local mean' | 'simple' | 'none';
}

/**
 * Variance of a total from spatially balanced stations: each compared with the weighted mean of its neighbours.
 *
 * The usual formula compares every station with the mean of all and so counts the trend over the reef as chance,
 * though a spread sample catches that trend. Fewer than four stations have no neighbourhood: the usual formula then
 * (conservative). Never for hand-picked stations, and not for a simple random draw.
 * Source: Stevens and Olsen 2003 (algorithm read as a published script; re-implemented); computed with R.
 */
export function localMeanVariance(stations: SpreadStations): SpreadVariance {
  const { values, inclusion } = stations;
  if (values.length !== inclusion.length || inclusion.some((p) => !(p > 0))) {
    throw new Error('localMeanVariance requires a positive inclusion for each value');
  }
  const expanded = values.map((value, i) => value / inclusion[i]!);
  const total = sum(expanded);
  const count = values.length;
  const simple = sampleVariance(expanded);
  if (simple === null) return { varianceOfTotal: null, total, method: 'none' };
  const weights = count < fewestForNeighbours ? null : neighbourWeights(stations);
  if (weights === null) return { varianceOfTotal: simple * count, total, method: 'simple' };
  const localMeans = new Float64Array(count);
  for (const { of, neighbour, weight } of weights)
    localMeans[of] = localMeans[of]! + weight * expanded[neighbour]!;
  const squares = weights.map(
    ({ of, neighbour, weight }) => weight * (expanded[neighbour]! - localMeans[of]!) ** 2,
  );
  return { varianceOfTotal: sum(squares), total, method: 'local mean' };
}

const fewestForNeighbours = 4;

export interface SpreadStratum {
  readonly name: string;
  /** Relative weight of the stratum, usually its area in hectares. */
  readonly weight: number;
  readonly values: readonly number[];
  readonly distance: (i: number, j: number) => number;
}

export interface SpreadMean {
  readonly value: number | null;
  readonly standardError: number | null;
  /** Stations minus strata: a convention, as no better is known for this estimator. */
  readonly degreesOfFreedom: number | null;
  readonly strata: readonly { readonly name: string; readonly method: SpreadVariance['method'] }[];
}

/**
 * Area-weighted mean of well-spread stations with equal chances inside each stratum, with its local-mean error.
 *
 * The value equals `stratifiedMean`; only the standard error differs. A stratum without stations leaves the mean
 * unknown, one with a single station leaves the error unknown. Throws without strata.
 */
export function spreadMean(strata: readonly SpreadStratum[]): SpreadMean {
  if (strata.length === 0) throw new Error('spreadMean requires at least one stratum');
  const whole = sum(strata.map((stratum) => stratum.weight));
  const parts = strata.map((stratum) => {
    const inclusion = stratum.values.map(() => stratum.values.length);
    const { varianceOfTotal, method } = localMeanVariance({ ...stratum, inclusion });
    return { name: stratum.name, method, share: stratum.weight / whole, variance: varianceOfTotal };
  });
  const methods = parts.map(({ name, method }) => ({ name, method }));
  if (strata.some((stratum) => stratum.values.length === 0)) {
    return { value: null, standardError: null, degreesOfFreedom: null, strata: methods };
  }
  const value = sum(strata.map((stratum, h) => parts[h]!.share * mean(stratum.values)));
  const variances = parts.map(({ share, variance }) => (variance === null ? null : share ** 2 * variance));
  const known = variances.filter((variance) => variance !== null);
  if (known.length < variances.length)
    return { value, standardError: null, degreesOfFreedom: null, strata: methods };
  const stations = sum(strata.map((stratum) => stratum.values.length));
  return {
    value,
    standardError: Math.sqrt(sum(known)),
    degreesOfFreedom: stations - strata.length,
    strata: methods,
  };
}
