/**
 * Posteriors by the very counts and priors they came from: a room that opens by survey after it was open by stratum,
 * and tonight's sheet in one stratum of five, ask again for what is known.
 */

import type { ClumpedPosterior } from './clumped-posterior.ts';
import type { ClumpedPriors } from './clumped-priors.ts';
import type { StationCount } from './station-count.ts';

/** About 10 MB; then everything is forgotten and the memory starts anew. */
const mostKept = 2000;

export interface PosteriorMemory {
  find(
    counts: readonly StationCount[],
    priors: ClumpedPriors,
    workOut: () => ClumpedPosterior,
  ): ClumpedPosterior;
}

export function posteriorMemory(): PosteriorMemory {
  const known = new Map<string, ClumpedPosterior>();
  return {
    find: (counts, priors, workOut) => {
      // In the order given, so that the same sums are added in the same order to the last digit.
      const key = `${JSON.stringify(priors)} ${counts.map(({ animals, areaM2 }) => `${animals}/${areaM2}`).join(' ')}`;
      const before = known.get(key);
      if (before !== undefined) return before;
      const posterior = workOut();
      if (known.size >= mostKept) known.clear();
      known.set(key, posterior);
      return posterior;
    },
  };
}
