/**
 * Does the one-sided 90 % lower limit of a density keep its promise, where animals clump and stations are few?
 * `node bench/lower-limit.ts`: the clumped-count limit, the log-normal one, and the smaller of the two.
 */

import { createClumpedIntervals } from '../src/estimates/clumped/clumped-intervals.ts';
import { lognormalInterval } from '../src/estimates/lognormal-interval.ts';
import { simpleMean } from '../src/estimates/simple-mean.ts';
import { negativeBinomialSampler } from '../src/maths/negative-binomial-sampler.ts';
import { seededRandom } from '../src/maths/random.ts';

const surveys = 1500;
const confidence = 0.9;
const areaM2 = 480;
const intervals = createClumpedIntervals();

for (const { clumpingK, mean } of [
  { clumpingK: 0.25, mean: 6 },
  { clumpingK: 1, mean: 6 },
  { clumpingK: 0.15, mean: 30 },
  { clumpingK: 0.25, mean: 1 },
]) {
  for (const stations of [6, 10, 20]) row(clumpingK, mean, stations);
}

/** How often the limit lies below the truth, and where it lies on average, as a share of the truth. */
function row(clumpingK: number, mean: number, stations: number): void {
  const sample = negativeBinomialSampler({ mean, clumpingK });
  const random = seededRandom(3);
  const truthPerHa = (mean / areaM2) * 10_000;
  const kept = { clumped: 0, lognormal: 0, smaller: 0 };
  const height = { clumped: 0, lognormal: 0, smaller: 0 };
  let seen = 0;
  for (let survey = 0; survey < surveys; survey++) {
    const counts = Array.from({ length: stations }, () => sample(random));
    if (counts.every((animals) => animals === 0)) continue;
    seen++;
    const limits = lowerLimits(counts);
    for (const name of ['clumped', 'lognormal', 'smaller'] as const) {
      if (limits[name] <= truthPerHa) kept[name]++;
      height[name] += limits[name] / truthPerHa;
    }
  }
  const cell = (name: keyof typeof kept) =>
    `${(kept[name] / seen).toFixed(3)} (${(height[name] / seen).toFixed(2)})`;
  process.stdout.write(
    `k ${clumpingK}, mean ${mean}, ${stations} stations: clumped ${cell('clumped')}, log-normal ${cell('lognormal')}, smaller ${cell('smaller')}\n`,
  );
}

function lowerLimits(counts: readonly number[]) {
  const estimate = simpleMean({
    name: 'one',
    values: counts.map((animals) => (animals / areaM2) * 10_000),
    populationUnits: null,
  });
  const twoSided = 2 * confidence - 1;
  const lognormal = lognormalInterval(estimate, twoSided)![0];
  const belief = intervals.posterior(counts.map((animals) => ({ animals, areaM2 })));
  const clumped = Math.min(estimate.value!, belief.quantile(1 - confidence));
  return { clumped, lognormal, smaller: Math.min(clumped, lognormal) };
}
