/**
 * The smallest count that a share `probability` of a clumped population does not exceed: the upper bound of what
 * one station may show. Negative binomial with the given mean and clumping k (variance mean + mean^2 / k); k null is
 * Poisson.
 *
 * Sums the shares of 0, 1, 2, …; those of large means are too small for a number at first and are not lost. Stops at `most` and
 * returns it: beyond that the caller does not care. Throws for a negative mean or a k that is not positive.
 * Cost: one step per count up to the answer.
 */
export function negativeBinomialQuantile(
  population: { readonly mean: number; readonly clumpingK: number | null },
  probability: number,
  most = 1_000_000,
): number {
  const { mean, clumpingK } = population;
  if (!(mean >= 0) || (clumpingK !== null && !(clumpingK > 0))) {
    throw new Error('negativeBinomialQuantile requires a mean of at least 0 and a positive k');
  }
  if (mean === 0) return 0;
  const logNone = clumpingK === null ? -mean : -clumpingK * Math.log1p(mean / clumpingK);
  const ratio = clumpingK === null ? mean : mean / (clumpingK + mean);
  // Shares too small for a number are carried as logarithms until they are large enough to count.
  let logShare = logNone;
  let count = 0;
  const stepRatio = () => (ratio * (clumpingK === null ? 1 : clumpingK + count)) / (count + 1);
  while (logShare < smallestLog && count < most) {
    logShare += Math.log(stepRatio());
    count++;
  }
  let share = Math.exp(logShare);
  let total = share;
  while (total < probability && count < most) {
    share *= stepRatio();
    count++;
    total += share;
  }
  return count;
}

const smallestLog = -600;
