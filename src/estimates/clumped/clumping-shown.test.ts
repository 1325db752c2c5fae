import { expect, test } from 'vitest';
import { negativeBinomialSampler } from '../../maths/negative-binomial-sampler.ts';
import { type SeededRandom, seededRandom } from '../../maths/random.ts';
import { logObservedDensity } from './clumped-posterior.ts';
import { clumpingReader } from './clumping-shown.ts';
import { logSumExp } from './log-sum.ts';
import { LATTICE_STEP_LOG } from './mass-lattice.ts';
import { negativeBinomialLikelihood } from './negative-binomial.ts';
import { createRows } from './posterior-tools.ts';
import type { StationCount } from './station-count.ts';

const ks = Float64Array.from([0.05, 0.2, 0.7, 2.5]);
const rows = createRows(6);

/** A second way: the likelihoods that the posteriors use, read at every fourth lattice point, and nothing remembered. */
function plainly(counts: readonly StationCount[]) {
  const middle = logObservedDensity(counts) / LATTICE_STEP_LOG;
  const indices: number[] = [];
  for (let index = Math.ceil(middle - 320); index <= middle + 320; index++)
    if (index % 4 === 0) indices.push(index);
  const summedOut = (at: (index: number, into: Float64Array) => void, size: number) => {
    const columns = indices.map((index) => {
      const into = new Float64Array(size);
      at(index, into);
      return into;
    });
    return Float64Array.from({ length: size }, (_, j) => logSumExp(columns.map((column) => column[j]!)));
  };
  const negativeBinomial = negativeBinomialLikelihood(counts, ks);
  return {
    ofK: summedOut((index, into) => negativeBinomial(index * LATTICE_STEP_LOG, into), ks.length),
    ofSigma: summedOut(rows.likelihood(counts), rows.sigmas.length),
  };
}

function drawn(random: SeededRandom, mean: number, areasM2: readonly number[]): StationCount[] {
  const draw = negativeBinomialSampler({ mean, clumpingK: 0.4 });
  return Array.from({ length: 12 }, (_, i) => ({
    animals: draw(random),
    areaM2: areasM2[i % areasM2.length]!,
  }));
}

test('strata read one after the other show what each shows alone, to the last digit', () => {
  const read = clumpingReader(ks, rows.sigmas);
  const random = seededRandom(11);
  // Means far apart, so that the tables grow to both sides; equal and unequal areas.
  const strata = [3, 0.4, 60, 900, 0.3, 5].flatMap((mean) => [
    drawn(random, mean, [480]),
    drawn(random, mean, [480, 400, 62.5]),
  ]);
  const speaking = strata.filter((counts) => counts.some(({ animals }) => animals > 0));
  expect(speaking.length).toBeGreaterThan(8);
  for (const counts of speaking) expect(read(counts)).toEqual(plainly(counts));
});

test('two stations, or stations without animals, show nothing of clumping', () => {
  const read = clumpingReader(ks, rows.sigmas);
  expect(read([5, 9].map((animals) => ({ animals, areaM2: 240 })))).toBeNull();
  expect(read([0, 0, 0, 0].map((animals) => ({ animals, areaM2: 240 })))).toBeNull();
});
