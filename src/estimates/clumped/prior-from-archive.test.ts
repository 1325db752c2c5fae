import { expect, test } from 'vitest';
import { negativeBinomialSampler } from '../../maths/negative-binomial-sampler.ts';
import { seededRandom } from '../../maths/random.ts';
import { createClumpedIntervals } from './clumped-intervals.ts';
import { DEFAULT_CLUMPED_PRIORS } from './clumped-priors.ts';
import { priorFromArchive } from './prior-from-archive.ts';

function surveys(count: number, stations: number, k: number) {
  const random = seededRandom(7);
  const draw = negativeBinomialSampler({ mean: 8, clumpingK: k });
  return Array.from({ length: count }, () =>
    Array.from({ length: stations }, () => ({ animals: draw(random), areaM2: 240 })),
  );
}

test('an archive shows the k of its surveys', () => {
  // Drawn with known k; 8 surveys of 25 stations tell log k within about 0.12 (two standard errors 0.24).
  const priors = priorFromArchive(surveys(8, 25, 0.4));
  expect(Math.abs(Math.log(priors.negativeBinomialK.median / 0.4))).toBeLessThan(0.24);
  expect(priors.source).toBe('archive');
  expect(priors.earlierSurveys).toBe(8);
});

test('an archive moves k and sigma at most half a default standard deviation', () => {
  // By hand: 0.35 exp(-0.4) = 0.2346, 0.35 exp(0.4) = 0.5221; 1.4 exp(0.2) = 1.7100, 1.4 exp(-0.2) = 1.1462.
  const clumped = priorFromArchive(surveys(8, 25, 0.08));
  expect(clumped.negativeBinomialK.median).toBeCloseTo(0.2346, 4);
  expect(clumped.logRateSd.median).toBeCloseTo(1.71, 4);
  const even = priorFromArchive(surveys(8, 25, 4));
  expect(even.negativeBinomialK.median).toBeCloseTo(0.5221, 4);
  expect(even.logRateSd.median).toBeCloseTo(1.1462, 4);
});

test('however large the archive, its prior stays as wide as another year may differ', () => {
  const priors = priorFromArchive(surveys(8, 25, 0.3));
  expect(priors.negativeBinomialK.sdLog).toBe(0.6);
  expect(priors.logRateSd.sdLog).toBe(0.3);
});

test('one small survey moves the default prior only a little', () => {
  const priors = priorFromArchive([[0, 1, 3].map((animals) => ({ animals, areaM2: 240 }))]);
  expect(Math.abs(Math.log(priors.negativeBinomialK.median / 0.35))).toBeLessThan(0.8);
  expect(priors.negativeBinomialK.sdLog).toBeGreaterThan(0.6);
});

test('surveys without animals or with two stations say nothing, and the default prior is named', () => {
  const empty = [0, 0, 0, 0].map((animals) => ({ animals, areaM2: 240 }));
  const two = [5, 9].map((animals) => ({ animals, areaM2: 240 }));
  expect(priorFromArchive([])).toBe(DEFAULT_CLUMPED_PRIORS);
  expect(priorFromArchive([empty, two, []])).toBe(DEFAULT_CLUMPED_PRIORS);
});

test('the order of the earlier surveys does not matter', () => {
  const earlier = surveys(3, 8, 0.5);
  const forth = priorFromArchive(earlier);
  const back = priorFromArchive([...earlier].reverse());
  expect(back.negativeBinomialK.median).toBeCloseTo(forth.negativeBinomialK.median, 9);
  expect(back.logRateSd.median).toBeCloseTo(forth.logRateSd.median, 9);
});

test('an archive of hardly clumped animals narrows the interval of the next survey', () => {
  const intervals = createClumpedIntervals();
  const priors = priorFromArchive(surveys(6, 20, 3));
  const counts = [3, 9, 0, 14, 6].map((animals) => ({ animals, areaM2: 240 }));
  const [low, high] = intervals.posterior(counts).interval(0.95);
  const informed = intervals.withPriors(priors).posterior(counts);
  expect(informed.priors.source).toBe('archive');
  const [informedLow, informedHigh] = informed.interval(0.95);
  expect(informedHigh / informedLow).toBeLessThan(high / low);
});
