import { expect, test } from 'vitest';
import { seededRandom } from '../../maths/random.ts';
import { beliefFromLogHeights, quantilePerHa } from './belief.ts';
import { createClumpedIntervals } from './clumped-intervals.ts';
import { combineStrata, type StratumPosterior } from './combine-strata.ts';

const intervals = createClumpedIntervals();
const counted = (...animals: number[]) =>
  intervals.posterior(animals.map((n) => ({ animals: n, areaM2: 240 })));

const STRATA: readonly StratumPosterior[] = [
  { weight: 420, posterior: counted(0, 0, 3, 1, 20, 4, 0, 2) },
  { weight: 310, posterior: counted(5, 4, 6, 5, 3, 7) },
  { weight: 145, posterior: counted(0, 0, 0, 1, 0) },
];

test('one stratum alone keeps its own interval', () => {
  const posterior = counted(0, 0, 3, 1, 20);
  expect(combineStrata([{ weight: 420, posterior }], 0.95).intervalPerHa).toEqual(posterior.interval(0.95));
});

/** Second algorithm: 400 000 seeded draws from each stratum's tilted belief, written out by its definition. */
function byDrawing(strata: readonly StratumPosterior[]): (p: number) => number {
  const random = seededRandom(20);
  const total = strata.reduce((sum, stratum) => sum + stratum.weight, 0);
  const tilt = -0.4 * (1 - strata.reduce((sum, stratum) => sum + (stratum.weight / total) ** 2, 0));
  const draws = new Float64Array(400_000);
  for (const { weight, posterior } of strata) {
    const { densityOfBelief, stepLog, lowestLogDensityPerHa } = posterior.belief;
    const power = posterior.animalsSeen ? tilt : 0;
    const shares = densityOfBelief.map((height, i) => height * Math.exp(power * i * stepLog));
    const cumulative = shares.map(
      (
        (sum) => (share: number) =>
          (sum += share)
      )(0),
    );
    for (let d = 0; d < draws.length; d++) {
      const target = random.uniform() * cumulative.at(-1)!;
      let i = 0;
      for (let high = cumulative.length - 1; i < high; ) {
        const middle = (i + high) >> 1;
        if (cumulative[middle]! > target) high = middle;
        else i = middle + 1;
      }
      const log = lowestLogDensityPerHa + (i + random.uniform() - 0.5) * stepLog;
      draws[d] = draws[d]! + (weight / total) * Math.exp(log);
    }
  }
  draws.sort();
  return (p) => draws[Math.floor(p * draws.length)]!;
}

test('the sum over strata agrees with drawing from each stratum', () => {
  // Monte Carlo error of the 97.5 % point of 400 000 draws is about 0.4 % of a log standard deviation of 0.6.
  const drawn = byDrawing(STRATA);
  const { belief } = combineStrata(STRATA, 0.95);
  for (const p of [0.025, 0.25, 0.5, 0.75, 0.975]) {
    expect(Math.abs(quantilePerHa(belief, p) / drawn(p) - 1), `quantile ${p}`).toBeLessThan(0.015);
  }
});

test('an empty stratum is summed with its own prior', () => {
  const strata = [STRATA[0]!, { weight: 310, posterior: intervals.zeroStratum(Array(7).fill(240)) }];
  const drawn = byDrawing(strata);
  const { belief } = combineStrata(strata, 0.95);
  for (const p of [0.025, 0.5, 0.975]) {
    expect(Math.abs(quantilePerHa(belief, p) / drawn(p) - 1), `quantile ${p}`).toBeLessThan(0.015);
  }
});

test('sums of narrow beliefs have the mean and spread of the normal sum', () => {
  // By hand: two independent beliefs with log sd 0.02 around 100, weights 3 and 1. Mean 100 and
  // sd 100 * 0.02 * sqrt(0.75^2 + 0.25^2) = 1.58114; 97.5 % at 100 + 1.95996 * 1.58114 = 103.10 (normal limit).
  const step = 0.0025;
  const heights = new Float64Array(121).map((_, i) => -0.5 * (((i - 60) * step) / 0.02) ** 2);
  const narrow = {
    animalsSeen: false,
    belief: beliefFromLogHeights(Math.log(100) - 60 * step, step, heights),
  };
  const combined = combineStrata(
    [
      { weight: 3, posterior: narrow },
      { weight: 1, posterior: narrow },
    ],
    0.95,
  ).intervalPerHa;
  expect(Math.abs(combined[1] - 103.1)).toBeLessThan(0.06);
  expect(Math.abs(combined[0] - 96.9)).toBeLessThan(0.06);
});

test('the order of the strata and the unit of their areas do not matter', () => {
  const [low, high] = combineStrata(STRATA, 0.95).intervalPerHa;
  const others = [
    [...STRATA].reverse(),
    STRATA.map(({ weight, posterior }) => ({ weight: weight * 10_000, posterior })),
  ];
  for (const strata of others) {
    const [otherLow, otherHigh] = combineStrata(strata, 0.95).intervalPerHa;
    expect(otherLow / low).toBeCloseTo(1, 9);
    expect(otherHigh / high).toBeCloseTo(1, 9);
  }
});

test('a stratum without weight adds nothing', () => {
  const with0 = [...STRATA, { weight: 0, posterior: counted(900) }];
  expect(combineStrata(with0, 0.95).intervalPerHa).toEqual(combineStrata(STRATA, 0.95).intervalPerHa);
});

test('the band over strata has a hundred densities in rising order and greatest weight one', () => {
  const { band } = combineStrata(STRATA, 0.95);
  expect(band.densityPerHa).toHaveLength(100);
  expect(Math.max(...band.relativeWeight)).toBe(1);
  for (let i = 1; i < 100; i++) expect(band.densityPerHa[i]!).toBeGreaterThan(band.densityPerHa[i - 1]!);
});

test('strata without any weight are refused', () => {
  expect(() => combineStrata([], 0.95)).toThrow('at least one stratum');
});
