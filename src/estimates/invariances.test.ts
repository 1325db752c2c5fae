/** What must not change an estimate, for any survey: order of rows, splitting a belt, the unit of area. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { near } from '../maths/nearness.ts';
import { seededRandom } from '../maths/random.ts';
import { bcaInterval, percentileInterval, resampledMeans } from './bootstrap.ts';
import { lognormalInterval } from './lognormal-interval.ts';
import { prevalence } from './prevalence.ts';
import { raisedMeanLengthMm, raisedShareAtLeast } from './raised-length-estimates.ts';
import { type LengthTally, raiseLengths } from './raised-lengths.ts';
import { ratioOfSumsPerHa } from './ratio-of-sums.ts';
import type { StratumValues } from './shapes.ts';
import { stationDensityPerHa } from './station-density.ts';
import { stationVariatesPerHa } from './station-variates.ts';
import { stratifiedMean } from './stratified-mean.ts';
import { subpopulationMean } from './subpopulation-mean.ts';
import { tInterval } from './t-interval.ts';

const runs = { numRuns: 60 };

const belt = fc.record({
  animals: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 400 })),
  areaCm2: fc.integer({ min: 10_000, max: 1_000_000 }),
});
const station = fc.array(belt, { minLength: 1, maxLength: 6 });
const stratum = fc.record({
  weight: fc.integer({ min: 1, max: 900 }),
  stations: fc.array(station, { minLength: 1, maxLength: 7 }),
});
const survey = fc.array(stratum, { minLength: 1, maxLength: 4 });
type Belt = { animals: number; areaCm2: number };
type Stratum = { weight: number; stations: Belt[][] };

const countOf = (belts: Belt[]) => ({
  animals: belts.reduce((n, one) => n + one.animals, 0),
  searchedAreaCm2: belts.reduce((area, one) => area + one.areaCm2, 0),
});

function strataOf(
  strata: readonly Stratum[],
  choice: 'station mean' | 'ratio of sums' = 'station mean',
): StratumValues[] {
  return strata.map(({ weight, stations }, h) => ({
    name: `stratum ${h}`,
    weight,
    values: stationVariatesPerHa(stations.map(countOf), null, choice).valuesPerHa,
    populationUnits: null,
  }));
}

/** Equal up to rounding; unknown must stay unknown. */
function same(a: number | null, b: number | null, scale: number): void {
  if (b === null) expect(a).toBeNull();
  else expect(Math.abs((a ?? Number.NaN) - b)).toBeLessThanOrEqual(1e-9 * Math.max(scale, Math.abs(b)));
}

function sameEstimates(a: readonly StratumValues[], b: readonly StratumValues[]): void {
  const left = stratifiedMean(a);
  const right = stratifiedMean(b);
  same(left.value, right.value, 0);
  same(left.standardError, right.standardError, right.value ?? 0);
  expect(left.reason?.code).toBe(right.reason?.code);
}

describe.each(['station mean', 'ratio of sums'] as const)('with the %s', (choice) => {
  test('the order of stations and strata does not matter', () => {
    fc.assert(
      fc.property(survey, (strata) => {
        const turned = strata.toReversed().map((s) => ({ ...s, stations: s.stations.toReversed() }));
        sameEstimates(strataOf(turned, choice), strataOf(strata, choice));
      }),
      runs,
    );
  });

  test('splitting a belt in two does not matter', () => {
    fc.assert(
      fc.property(survey, fc.double({ min: 0, max: 1, noNaN: true }), (strata, share) => {
        const split = (one: Belt): Belt[] => {
          const animals = Math.round(one.animals * share);
          const areaCm2 = Math.round((one.areaCm2 - 2) * share) + 1;
          return [
            { animals, areaCm2 },
            { animals: one.animals - animals, areaCm2: one.areaCm2 - areaCm2 },
          ];
        };
        const halved = strata.map((s) => ({
          ...s,
          stations: s.stations.map((belts) => belts.flatMap(split)),
        }));
        sameEstimates(strataOf(halved, choice), strataOf(strata, choice));
      }),
      runs,
    );
  });

  test('areas a thousand times as large give densities a thousand times smaller, and the weights any unit', () => {
    fc.assert(
      fc.property(survey, (strata) => {
        const scaled = strata.map(({ weight, stations }) => ({
          weight: weight * 2.59,
          stations: stations.map((belts) => belts.map((one) => ({ ...one, areaCm2: one.areaCm2 * 1000 }))),
        }));
        const small = stratifiedMean(strataOf(scaled, choice));
        const large = stratifiedMean(strataOf(strata, choice));
        same(small.value! * 1000, large.value, 0);
        same(
          small.standardError === null ? null : small.standardError * 1000,
          large.standardError,
          large.value!,
        );
      }),
      runs,
    );
  });
});

/** Every number anywhere in a result is a finite one. */
function everyNumberIsFinite(result: unknown): void {
  if (typeof result === 'number') expect(Number.isFinite(result)).toBe(true);
  else if (result !== null && typeof result === 'object') Object.values(result).forEach(everyNumberIsFinite);
}

test('no survey, however small or empty, gives anything that is not a number', () => {
  fc.assert(
    fc.property(survey, (strata) => {
      for (const choice of ['station mean', 'ratio of sums'] as const) {
        const values = strataOf(strata, choice);
        const estimate = stratifiedMean(values);
        const means = resampledMeans(values, seededRandom(1), 49);
        const marked = values.map((s) => ({
          ...s,
          stations: s.values.map((value, i) => ({ value, within: i % 2 === 0 })),
        }));
        everyNumberIsFinite([
          estimate,
          tInterval(estimate),
          lognormalInterval(estimate),
          percentileInterval(means),
          bcaInterval({ means, value: estimate.value!, strata: values }),
          subpopulationMean({ name: 'zone', strata: marked }),
          prevalence(values.map((s) => ({ ...s, present: s.values.map((value) => value > 0) }))),
          strata.map((s) =>
            ratioOfSumsPerHa({ name: 'reef', counts: s.stations.map(countOf), populationUnits: null }),
          ),
        ]);
      }
    }),
    runs,
  );
});

test('a lone station never has a standard error, and a known one never has a reason', () => {
  fc.assert(
    fc.property(survey, (strata) => {
      const estimate = stratifiedMean(strataOf(strata));
      const hasLone = strata.some((s) => s.stations.length === 1);
      expect(estimate.standardError === null).toBe(hasLone);
      expect(estimate.reason?.code === 'lone-station').toBe(hasLone);
    }),
    runs,
  );
});

test('the interval of a positive density and that of a prevalence hold their estimate', () => {
  fc.assert(
    fc.property(survey, (strata) => {
      const values = strataOf(strata);
      const estimate = stratifiedMean(values);
      const interval = lognormalInterval(estimate);
      if (interval !== null) {
        expect(interval[0]).toBeLessThanOrEqual(estimate.value!);
        expect(interval[1]).toBeGreaterThanOrEqual(estimate.value!);
      }
      const share = prevalence(values.map((s) => ({ ...s, present: s.values.map((value) => value > 0) })));
      if (share.interval !== null) {
        expect(share.interval[0]).toBeLessThanOrEqual(share.value! + 1e-12);
        expect(share.interval[1]).toBeGreaterThanOrEqual(share.value! - 1e-12);
      }
    }),
    runs,
  );
});

describe('lengths', () => {
  const tally = fc
    .record({
      more: fc.integer({ min: 0, max: 50 }),
      lengths: fc.array(
        fc.record({ lengthMm: fc.integer({ min: 20, max: 500 }), n: fc.integer({ min: 1, max: 3 }) }),
        {
          maxLength: 5,
        },
      ),
    })
    .map(
      ({ more, lengths }): LengthTally => ({
        lengths,
        count: more + lengths.reduce((n, length) => n + length.n, 0),
      }),
    );
  const lengthStation = fc.record({
    searchedAreaM2: fc.integer({ min: 1, max: 600 }),
    tallies: fc.array(tally, { maxLength: 4 }),
  });
  const lengthStrata = fc.array(
    fc.record({
      name: fc.constantFrom('reef', 'flat', 'pass'),
      weight: fc.integer({ min: 1, max: 900 }),
      stations: fc.array(lengthStation, { minLength: 1, maxLength: 5 }),
    }),
    { minLength: 1, maxLength: 3 },
  );

  test('the order of rows does not matter and every counted animal is stood for', () => {
    fc.assert(
      fc.property(lengthStrata, (strata) => {
        const raised = raiseLengths(strata);
        const turned = strata.toReversed().map((s) => ({
          ...s,
          stations: s.stations.toReversed().map((one) => ({ ...one, tallies: one.tallies.toReversed() })),
        }));
        const other = raiseLengths(turned);
        if (raised === null || other === null) {
          expect(raised).toBe(other);
          return;
        }
        const stoodFor = raised.strata
          .flatMap((s) => s.stations.flat())
          .reduce((n, length) => n + length.animals, 0);
        near(stoodFor, raised.animals, 1e-9);
        const mean = raisedMeanLengthMm(raised);
        everyNumberIsFinite([raised, mean, raisedShareAtLeast(raised, 180)]);
        same(raisedMeanLengthMm(other).value, mean.value, 0);
        same(raisedMeanLengthMm(other).standardError, mean.standardError, mean.value!);
      }),
      runs,
    );
  });

  test('writing two animals of one length in two rows does not matter', () => {
    fc.assert(
      fc.property(lengthStrata, (strata) => {
        const single = strata.map((s) => ({
          ...s,
          stations: s.stations.map((one) => ({
            ...one,
            tallies: one.tallies.map((t) => ({
              ...t,
              lengths: t.lengths.flatMap(({ lengthMm, n }) =>
                Array.from({ length: n }, () => ({ lengthMm, n: 1 })),
              ),
            })),
          })),
        }));
        const [joined, split] = [raiseLengths(strata), raiseLengths(single)];
        if (joined === null || split === null) expect(joined).toBe(split);
        else same(raisedMeanLengthMm(split).value, raisedMeanLengthMm(joined).value, 0);
      }),
      runs,
    );
  });
});

test('station density does not depend on how its belts were written down', () => {
  fc.assert(
    fc.property(station, (belts) => {
      const perHa = stationDensityPerHa(countOf(belts));
      const merged = stationDensityPerHa(
        countOf([countOf(belts)].map((c) => ({ animals: c.animals, areaCm2: c.searchedAreaCm2 }))),
      );
      expect(perHa).toBe(merged);
    }),
    runs,
  );
});
