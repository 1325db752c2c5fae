import { mean, sum } from '../../maths/variance.ts';

/** One place counted in both surveys. */
export type CountsOfPlace = readonly [from: number, to: number];

const mostAlike = 0.95;

/**
 * How alike two surveys of one stratum are in their errors because places were worked twice, from 0 to 0.95.
 *
 * The correlation of log(count + 1/2) over the m places worked twice, drawn towards zero (Fisher's z times
 * (m - 3) / (m - 2)), since few places tell little of it, times the share of such places, m / sqrt(n1 n2). Never
 * negative: places do not take turns. The benchmark chose the logarithm and the shrinkage (docs/methods/change.md).
 */
export function placeCorrelation(
  pairs: readonly CountsOfPlace[],
  stations: { readonly from: number; readonly to: number },
): number {
  if (pairs.length <= 3) return 0;
  const known = pairs.length - 3;
  const r = correlationOf(
    pairs.map(([from]) => Math.log(from + 0.5)),
    pairs.map(([, to]) => Math.log(to + 0.5)),
  );
  const z = Math.atanh(Math.min(0.99, Math.max(0, r)));
  const alike = Math.tanh((known / (known + 1)) * z);
  return Math.min(mostAlike, (alike * pairs.length) / Math.sqrt(stations.from * stations.to));
}

function correlationOf(x: readonly number[], y: readonly number[]): number {
  const [meanX, meanY] = [mean(x), mean(y)];
  const squares = sum(x.map((v) => (v - meanX) ** 2)) * sum(y.map((v) => (v - meanY) ** 2));
  if (squares === 0) return 0;
  return sum(x.map((v, i) => (v - meanX) * (y[i]! - meanY))) / Math.sqrt(squares);
}
