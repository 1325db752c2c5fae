import { mean, sampleVariance } from '../maths/variance.ts';

export interface DeltaLognormalMean {
  readonly value: number;
  readonly standardError: number;
}

/**
 * Mean of station values with many zeros, assuming that the values above zero are log-normal; in the unit
 * of the values. A check of sensitivity beside the plain mean, never the answer: biased when they are not.
 *
 * Null with two or fewer values above zero, where the formula has no footing, and when the variance comes
 * out negative. Source: Pennington 1983 (series read in a general fisheries package).
 */
export function deltaLognormalMean(values: readonly number[]): DeltaLognormalMean | null {
  const logs = values.filter((value) => value > 0).map(Math.log);
  const n = values.length;
  const m = logs.length;
  if (m <= 2) return null;
  const centre = mean(logs);
  const variance = sampleVariance(logs)!;
  const share = m / n;
  const half = penningtonSeries(m, variance / 2);
  const value = share * Math.exp(centre) * half;
  const bracket =
    share * half ** 2 - ((m - 1) / (n - 1)) * penningtonSeries(m, ((m - 2) / (m - 1)) * variance);
  const squared = share * Math.exp(2 * centre) * bracket;
  return squared >= 0 && Number.isFinite(value) ? { value, standardError: Math.sqrt(squared) } : null;
}

/**
 * Pennington's G_m(t): what makes exp(mean of logs) unbiased for m values. Grows like exp(t) for large m.
 * Source: Pennington 1983; Aitchison and Brown 1957 (from memory).
 */
export function penningtonSeries(m: number, t: number): number {
  let total = 1 + ((m - 1) / m) * t;
  let term = ((m - 1) / m) * t;
  for (let j = 2; j < 1000; j++) {
    term *= ((m - 1) ** 2 * t) / (m * (m + 2 * j - 3) * j);
    total += term;
    if (Math.abs(term) <= 1e-17 * Math.abs(total)) break;
  }
  return total;
}
