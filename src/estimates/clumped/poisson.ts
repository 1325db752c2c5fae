import { logGamma } from '../../maths/distributions.ts';
import { areaGroups } from './negative-binomial.ts';
import type { StationCount } from './station-count.ts';

/**
 * Log likelihood of station counts when the animals are not clumped at all: Poisson around density
 * times searched area, constants kept.
 */
export function poissonLikelihood(counts: readonly StationCount[]): (logDensityPerHa: number) => number {
  const groups = areaGroups(counts);
  const constant = counts.reduce((sum, { animals }) => sum - logGamma(animals + 1), 0);
  return (logDensityPerHa) =>
    groups.reduce((sum, { areaHa, stations, animals }) => {
      const mean = Math.exp(logDensityPerHa) * areaHa;
      return sum + animals * (logDensityPerHa + Math.log(areaHa)) - stations * mean;
    }, constant);
}
